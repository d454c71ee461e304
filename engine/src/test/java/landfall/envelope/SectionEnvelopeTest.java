// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import landfall.grind.CamCurve;
import landfall.grind.Lobe;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The envelope in one plane")
class SectionEnvelopeTest {
    private static final int PLACES = 61;
    private static final double APART = Math.toRadians(1.3);

    /**
     * Against a search that looks at every degree of the spindle, for cams of all forms and wheels of all sizes. The
     * search may miss the deeper of two close marks of a cam measured place by place; it never finds one that is not
     * there. So what it finds deeper counts in nanometres, what it misses in tenths of a micrometre.
     */
    @Test
    void itIsWhatASearchOverTheWholeTurnFinds() {
        Random random = new Random(2026);
        double higher = 0;
        double deeper = 0;
        for (int i = 0; i < 400; i++) {
            Case one = Case.of(random);
            double[] places = new double[PLACES];
            double first = 2 * Math.PI * random.nextDouble();
            one.fast.fill(places, first, APART);
            for (int k = 0; k < PLACES; k++) {
                double off = places[k] - one.slow.radius(first + k * APART);
                higher = Math.max(higher, off);
                deeper = Math.max(deeper, -off);
            }
        }
        assertThat(higher).as("left too high, mm").isLessThan(3e-6);
        assertThat(deeper).as("too deep, or missed by the search, mm").isLessThan(1e-4);
    }

    /** A place asked for alone is ground as it is among others, and its contact lies where the radius is that of it. */
    @Test
    void onePlaceAloneIsWhatItIsAmongOthers() {
        Random random = new Random(7);
        for (int i = 0; i < 100; i++) {
            Case one = Case.of(random);
            double[] places = new double[PLACES];
            one.fast.fill(places, 0.3, APART);
            for (int k = 0; k < PLACES; k += 7) {
                double theta = 0.3 + k * APART;
                assertThat(one.fast.radius(theta)).isCloseTo(places[k], within(1e-6));
                assertThat(one.slow.at(theta, one.fast.contact(theta))).isCloseTo(places[k], within(1e-5));
            }
        }
    }

    private record Case(SectionEnvelope fast, SectionScan slow) {
        static Case of(Random random) {
            double r = 1.5 + 10 * random.nextDouble();
            int lobes = 2 + random.nextInt(4);
            double pitch = 360.0 / lobes;
            double rise = pitch * (0.4 + 0.4 * random.nextDouble());
            double back = (pitch - rise) * random.nextDouble();
            List<Angle> index = new ArrayList<>();
            for (int i = 0; i < lobes; i++) {
                index.add(Angle.ofDeg(random.nextInt(3) == 0 ? random.nextGaussian() : 0));
            }
            CamCurve curve = curve(random, rise);
            Lobe lobe = new Lobe(Angle.ofDeg(10 * random.nextGaussian()), Angle.ofDeg(rise), Angle.ofDeg(back));
            CamMotion cam = new CamMotion(curve, lobe, lobes, index);
            double wheel = 8 + 90 * random.nextDouble();
            WheelPass pass = new WheelPass(
                    Length.ofMm(wheel),
                    Angle.ofDeg(30 * random.nextDouble()),
                    Length.ofMm(r * (0.02 + 0.12 * random.nextDouble()) * Math.toRadians(rise)),
                    Length.ofMm(random.nextInt(3) == 0 ? 0.05 * wheel * random.nextGaussian() : 0));
            double drop = random.nextInt(4) == 0 ? 0.05 * random.nextDouble() : 0;
            return new Case(new SectionEnvelope(pass, cam, r, drop), new SectionScan(pass, cam, r, drop));
        }

        private static CamCurve curve(Random random, double rise) {
            return switch (random.nextInt(3)) {
                case 0 -> new CamCurve.Straight();
                case 1 -> new CamCurve.Circle(Angle.ofDeg(20 + (150 - rise - 20) * random.nextDouble()));
                default -> table(random, rise);
            };
        }

        private static CamCurve table(Random random, double rise) {
            int rows = 3 + random.nextInt(30);
            double[] shares = new double[rows];
            double sum = 0;
            for (int i = 1; i < rows; i++) {
                sum += 0.2 + random.nextDouble();
                shares[i] = sum;
            }
            List<CamCurve.Point> table = new ArrayList<>();
            for (int i = 0; i < rows; i++) {
                table.add(new CamCurve.Point(Angle.ofDeg(rise * i / (rows - 1)), shares[i] / sum));
            }
            return new CamCurve.Points(table);
        }
    }
}
