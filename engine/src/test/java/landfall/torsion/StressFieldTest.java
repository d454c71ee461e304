// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Stress all over a section")
class StressFieldTest {
    private static final Length TWO = Length.ofMm(2);

    /**
     * On the rim the polygon of the nodes cuts off a sliver, which is given the stress of the rim: 0.005 there.
     *
     * <p>Closed solution: an ellipse of half-axes a and b has tau = 2 hypot(b² x, a² y)/(a² + b²) for one twist.
     */
    @Test
    void agreesWithTheClosedSolutionOfTheEllipseUpToItsOutline() {
        double a = 1;
        double b = 0.6;
        StressField field = StressField.of(Shapes.ellipse(a, b), TWO);
        Random random = new Random(11);
        for (int i = 0; i < 300; i++) {
            double angle = 2 * Math.PI * random.nextDouble();
            boolean rim = i < 50;
            double share = rim ? 0.999 : 0.99 * Math.sqrt(random.nextDouble());
            double x = share * a * Math.cos(angle);
            double y = share * b * Math.sin(angle);
            double exact = 2 * Math.hypot(a * a * y, b * b * x) / (a * a + b * b);
            assertThat(field.at(Place.ofMm(x, y))).isCloseTo(exact, within(rim ? 0.005 : 2e-4));
        }
    }

    /**
     * Closed solution: a circle with a round groove of radius b on its rim has Φ = ½(r² − b²)(2a·cos φ/r − 1), r from
     * the groove's centre.
     */
    @Test
    void agreesWithTheClosedSolutionOfTheGroovedCircle() {
        double b = 0.5;
        StressField field = StressField.of(Shapes.keyway(b), TWO);
        Random random = new Random(12);
        int looked = 0;
        while (looked < 300) {
            double x = 2 * random.nextDouble() - 1;
            double y = 2 * random.nextDouble() - 1;
            double dx = 1 - x;
            double r = Math.hypot(dx, y);
            if (Math.hypot(x, y) > 0.995 || r < b + 0.005) {
                continue;
            }
            looked++;
            double step = 1e-6;
            double slopeX = (grooved(dx + step, y, b) - grooved(dx - step, y, b)) / (2 * step);
            double slopeY = (grooved(dx, y + step, b) - grooved(dx, y - step, b)) / (2 * step);
            assertThat(field.at(Place.ofMm(x, y)))
                    .as("at %s, %s", x, y)
                    .isCloseTo(Math.hypot(slopeX, slopeY), within(1e-3));
        }
    }

    /** Prandtl's function, from the groove's centre towards the axis. */
    private static double grooved(double x, double y, double b) {
        double squared = x * x + y * y;
        return (squared - b * b) * (2 * x / squared - 1) / 2;
    }

    @Test
    void isGreatestWhereTheSectionPeaksAndTheSameInEveryRepeat() {
        Outline outline = Shapes.fluted(3, 0.45, 0.5);
        Section section = Section.of(outline, TWO);
        StressField field = StressField.of(outline, TWO);
        Place peak = section.peak();
        assertThat(field.at(peak)).isCloseTo(section.stress(), within(1e-3));
        Random random = new Random(13);
        for (int i = 0; i < 200; i++) {
            double radius = random.nextDouble();
            double angle = 2 * Math.PI * random.nextDouble();
            Place here = place(radius, angle);
            double stress = field.at(here);
            assertThat(stress).isLessThanOrEqualTo(section.stress() * 1.001);
            assertThat(field.holds(here)).isEqualTo(field.holds(place(radius, angle + 2 * Math.PI / 3)));
            assertThat(field.at(place(radius, angle + 2 * Math.PI / 3))).isCloseTo(stress, within(1e-9));
        }
        assertThat(field.at(Place.AXIS)).isCloseTo(0, within(1e-9));
    }

    private static Place place(double radius, double angle) {
        return Place.ofMm(radius * Math.cos(angle), radius * Math.sin(angle));
    }

    @Test
    void itsPolygonEnclosesTheAreaOfTheSection() {
        Outline outline = Shapes.fluted(4, 0.5, 0.35);
        double twice = 0;
        var polygon = StressField.of(outline, TWO).polygon();
        for (int i = 0; i < polygon.size(); i++) {
            Place a = polygon.get(i);
            Place b = polygon.get((i + 1) % polygon.size());
            twice += a.x().mm() * b.y().mm() - b.x().mm() * a.y().mm();
        }
        assertThat(twice / 2).isCloseTo(outline.area().mm2(), within(0.003));
    }
}
