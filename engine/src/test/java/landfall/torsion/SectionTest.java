// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Random;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Torsion of a section")
class SectionTest {
    private static final Length TWO = Length.ofMm(2);

    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvFileSource(resources = "/reference/torsion/exact.csv", delimiter = ';')
    void agreesWithTheClosedSolutions(String shape, double a, double b, double J, double peak) {
        Section section = Section.of(shape(shape, a, b), TWO);
        assertThat(section.stiffness() * Math.PI / 2).isCloseTo(J, withinPercentage(0.01));
        assertThat(section.stress()).isCloseTo(peak, withinPercentage(0.01));
    }

    @ParameterizedTest(name = "{0} flutes, core {1}, radius {2}")
    @CsvFileSource(resources = "/reference/torsion/tap-like.csv", delimiter = ';')
    void agreesWithTheGridOnSectionsLikeTaps(int flutes, double core, double rho, double J, double peak) {
        Section section = Section.of(Shapes.fluted(flutes, core, rho), TWO);
        assertThat(section.stiffness()).isCloseTo(J, withinPercentage(0.05));
        assertThat(section.stress()).isCloseTo(peak, withinPercentage(0.05));
        assertThat(section.peak().radius().mm()).as("at the flute's floor").isCloseTo(core, within(1e-3));
    }

    /** Four ways of dividing the outline close in on one figure, the usual one within 0.01 % of the finest. */
    @Test
    void closesInAsTheOutlineIsDividedFiner() {
        Outline outline = Shapes.fluted(4, 0.5, 0.35);
        Section finest = Section.of(outline, TWO, Fineness.of(12, 4, 8));
        double before = Double.POSITIVE_INFINITY;
        for (Fineness fineness : List.of(Fineness.of(3, 0.8, 1), Fineness.of(4, 1.6, 2), Fineness.of(6, 2.4, 4))) {
            Section section = Section.of(outline, TWO, fineness);
            double off = Math.abs(section.stiffness() / finest.stiffness() - 1)
                    + Math.abs(section.stress() / finest.stress() - 1);
            assertThat(off).isLessThan(before / 2);
            before = off;
        }
        Section usual = Section.of(outline, TWO);
        assertThat(usual.stiffness()).isCloseTo(finest.stiffness(), withinPercentage(0.01));
        assertThat(usual.stress()).isCloseTo(finest.stress(), withinPercentage(0.01));
    }

    @Test
    void aSectionSolvedOnOneRepeatIsThatOfTheWholeOutline() {
        Section once = Section.of(Shapes.triangle(1), TWO);
        Outline whole = Outline.from(Place.ofMm(-0.5, -Math.sqrt(3) / 6))
                .lineTo(Place.ofMm(0.5, -Math.sqrt(3) / 6))
                .lineTo(Place.ofMm(0, Math.sqrt(3) / 3))
                .lineTo(Place.ofMm(-0.5, -Math.sqrt(3) / 6))
                .repeated(1);
        Section all = Section.of(whole, TWO);
        assertThat(all.stiffness()).isCloseTo(once.stiffness(), withinPercentage(0.001));
        assertThat(all.stress()).isCloseTo(once.stress(), withinPercentage(0.001));
    }

    @Test
    void theFiguresAreOfTheShapeNotOfItsSize() {
        Section small = Section.of(Shapes.rectangle(1.4, 1), Length.ofMm(1.4));
        Section large = Section.of(Shapes.rectangle(14, 10), Length.ofMm(14));
        assertThat(large.stiffness()).isCloseTo(small.stiffness(), withinPercentage(1e-6));
        assertThat(large.stress()).isCloseTo(small.stress(), withinPercentage(1e-6));
        assertThat(large.strength()).isEqualTo(large.stiffness() / large.stress());
    }

    /** Moving the axis of reference changes neither stiffness nor stress: a property of the torsion problem. */
    @Test
    void whereTheAxisIsDrawnDoesNotMatter() {
        Outline centred = Shapes.rectangle(1, 0.6);
        Outline moved = Outline.from(Place.ofMm(-0.3, -0.4))
                .lineTo(Place.ofMm(0.7, -0.4))
                .lineTo(Place.ofMm(0.7, 0.2))
                .lineTo(Place.ofMm(-0.3, 0.2))
                .lineTo(Place.ofMm(-0.3, -0.4))
                .repeated(1);
        assertThat(Section.of(moved, TWO).stiffness())
                .isCloseTo(Section.of(centred, TWO).stiffness(), withinPercentage(0.005));
        assertThat(Section.of(moved, TWO).stress())
                .isCloseTo(Section.of(centred, TWO).stress(), withinPercentage(0.005));
    }

    /** Of all sections of one area the circle is the stiffest (de Saint-Venant's conjecture, proved by Polya). */
    @Test
    void noSectionIsStifferThanTheCircleOfItsArea() {
        Random random = new Random(20261125);
        for (int i = 0; i < 25; i++) {
            int flutes = 2 + random.nextInt(3);
            double core = 0.5 + 0.1 * random.nextDouble();
            double rho = (1.05 + 0.15 * random.nextDouble() - core) / 2;
            Outline outline = Shapes.fluted(flutes, core, rho);
            double area = outline.area().mm2();
            Section section = Section.of(outline, Length.ofMm(2 * Math.sqrt(area / Math.PI)));
            assertThat(section.stiffness()).isLessThan(1).isPositive();
        }
    }

    @Test
    void aThickerCoreIsStifferAndStronger() {
        double stiffness = 0;
        double strength = 0;
        for (double core = 0.40; core < 0.61; core += 0.05) {
            Section section = Section.of(Shapes.fluted(3, core, 0.5), TWO);
            assertThat(section.stiffness()).isGreaterThan(stiffness);
            assertThat(section.strength()).isGreaterThan(strength);
            stiffness = section.stiffness();
            strength = section.strength();
        }
    }

    @Test
    void areaIsThatOfTheShape() {
        assertThat(Shapes.circle(2).area().mm2()).isCloseTo(4 * Math.PI, within(1e-12));
        assertThat(Shapes.triangle(2).area().mm2()).isCloseTo(Math.sqrt(3), within(1e-12));
    }

    @Test
    void aSharpInnerCornerIsRefused() {
        Outline corner = Outline.from(Place.ofMm(-1, -1))
                .lineTo(Place.ofMm(1, -1))
                .lineTo(Place.ofMm(1, 0))
                .lineTo(Place.ofMm(0, 0))
                .lineTo(Place.ofMm(0, 1))
                .lineTo(Place.ofMm(-1, 1))
                .lineTo(Place.ofMm(-1, -1))
                .repeated(1);
        assertThatThrownBy(() -> Section.of(corner, TWO))
                .hasMessage(
                        "outline: \"a sharp inner corner of 90.0 deg\" must be round at inner corners, where the stress"
                                + " of a sharp one has no bound. To mend: give the corner its radius.");
    }

    @Test
    void anOpenOrClockwiseOutlineIsRefused() {
        assertThatThrownBy(() -> Outline.from(Place.ofMm(0, 0))
                        .lineTo(Place.ofMm(1, 0))
                        .lineTo(Place.ofMm(0, 1))
                        .repeated(1))
                .hasMessage(
                        "outline: \"1.0 mm open\" must be closed. To mend: let each edge begin where the last ended.");
        assertThatThrownBy(() -> Outline.from(Place.ofMm(1, 0))
                        .arc(Place.ofMm(0, 0), Angle.ofDeg(-360))
                        .repeated(1))
                .hasMessage(
                        "outline: \"clockwise\" must be counterclockwise. To mend: run round it with the metal on the"
                                + " left.");
    }

    private static Outline shape(String name, double a, double b) {
        return switch (name) {
            case "circle" -> Shapes.circle(a);
            case "ellipse" -> Shapes.ellipse(a, b);
            case "square" -> Shapes.rectangle(a, a);
            case "rectangle" -> Shapes.rectangle(a, b);
            case "triangle" -> Shapes.triangle(a);
            case "keyway" -> Shapes.keyway(a);
            default -> throw new IllegalArgumentException(name);
        };
    }
}
