// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Chips of unequal teeth")
class ChipsTest {
    @ParameterizedTest(name = "h0 {0}, {1} flutes, eccentricity {2}")
    @CsvFileSource(resources = "/reference/chip-shares.csv")
    void agreeWithTheReference(
            double h0, int flutes, double e, double first, double second, double third, double room) {
        double[] chips = Chips.of(h0, eccentric(flutes, e, 0));
        assertThat(chips[0] / (flutes * h0)).isEqualTo(first, within(room));
        assertThat(chips[1] / (flutes * h0)).isEqualTo(second, within(room));
        assertThat(chips[2] / (flutes * h0)).isEqualTo(third, within(room));
    }

    /** M3x0.5, three flutes, 9 degrees: a tooth idles from 0.01524 mm on (own brute-force model). */
    @Test
    void aToothOfAnM3IdlesFromFifteenMicrometresOfEccentricity() {
        double h0 = 0.5 / 3 * Math.tan(Math.toRadians(9));
        double threshold = h0 / (2 * Math.sin(Math.PI / 3));
        assertThat(threshold).isEqualTo(0.01524, within(0.000005));
        // the worst direction stands square between two teeth
        double worst = Math.toRadians(60 + 270);
        assertThat(least(Chips.of(h0, eccentric(3, threshold * 0.999, worst)))).isPositive();
        assertThat(least(Chips.of(h0, eccentric(3, threshold * 1.001, worst)))).isZero();
    }

    @Test
    void areWhatTeethPassingOneAfterTheOtherTakeOff() {
        Random random = new Random(11);
        for (int trial = 0; trial < 2000; trial++) {
            int flutes = 2 + random.nextInt(5);
            double h0 = 0.01 + 0.1 * random.nextDouble();
            double[] e = random.doubles(flutes, -0.15, 0.15).toArray();
            assertThat(Chips.of(h0, e)).containsExactly(passing(h0, e), within(1e-12));
        }
    }

    @Test
    void addUpToTheAdvanceOfATurnWhateverTheTeethDo() {
        Random random = new Random(12);
        for (int trial = 0; trial < 2000; trial++) {
            int flutes = 2 + random.nextInt(5);
            double[] e = random.doubles(flutes, -0.3, 0.3).toArray();
            assertThat(Arrays.stream(Chips.of(0.04, e)).sum()).isEqualTo(flutes * 0.04, within(1e-12));
        }
    }

    /** Turn after turn on one meridian, until the first turns are forgotten: nothing of the closed form. */
    private static double[] passing(double h0, double[] e) {
        int flutes = e.length;
        double surface = Double.NEGATIVE_INFINITY;
        double[] chips = new double[flutes];
        for (int pass = 0; pass < 20 * flutes; pass++) {
            double depth = pass * h0 + e[pass % flutes];
            chips[pass % flutes] = Math.max(0, depth - surface);
            surface = Math.max(surface, depth);
        }
        return chips;
    }

    private static double[] eccentric(int flutes, double e, double direction) {
        double[] proud = new double[flutes];
        for (int i = 0; i < flutes; i++) {
            proud[i] = e * Math.cos(2 * Math.PI * i / flutes - direction);
        }
        return proud;
    }

    private static double least(double[] chips) {
        return Arrays.stream(chips).min().orElseThrow();
    }
}
