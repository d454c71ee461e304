// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rounding half away from zero in decimal, whatever the binary figure. */
class RoundingTest {
    private static double byDecimal(double value, int places) {
        return Rounding.decimal(value).setScale(places, RoundingMode.HALF_UP).doubleValue();
    }

    @Test
    void halvesGoAwayFromZeroThoughTheBinaryFigureIsUnderThem() {
        assertThat(Rounding.halfUp(1.0005, 3)).isEqualTo(1.001);
        assertThat(Rounding.halfUp(-1.0005, 3)).isEqualTo(-1.001);
        assertThat(Rounding.halfUp(2.675, 2)).isEqualTo(2.68);
        assertThat(Rounding.halfUp(0.1 + 0.2 - 0.25, 2)).isEqualTo(0.05);
        assertThat(1 / Rounding.halfUp(-0.0001, 2)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void theShortWayAgreesWithTheDecimalBitForBit() {
        Random random = new Random(4);
        for (int i = 0; i < 200_000; i++) {
            int places = random.nextInt(9);
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(8));
            if (random.nextInt(3) == 0) {
                // on a half of the last place, and a hair beside it
                double half = (random.nextInt(100_000) + 0.5) / Math.pow(10, places);
                value = random.nextBoolean() ? half : half * (1 + (random.nextInt(5) - 2) * 1e-13);
            }
            assertThat(Double.doubleToLongBits(Rounding.halfUp(value, places) + 0.0))
                    .as("%s to %d places", value, places)
                    .isEqualTo(Double.doubleToLongBits(byDecimal(value, places) + 0.0));
        }
    }
}
