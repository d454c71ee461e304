// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CoordinateTest {
    @Test
    void isRoundedToAHundredthWithoutTrailingZerosOrMinusNought() {
        assertThat(Coordinate.text(12)).isEqualTo("12");
        assertThat(Coordinate.text(1.5)).isEqualTo("1.5");
        assertThat(Coordinate.text(0.05)).isEqualTo("0.05");
        assertThat(Coordinate.text(-0.004)).isEqualTo("0");
        assertThat(Coordinate.text(-0.126)).isEqualTo("-0.13");
        assertThat(Coordinate.text(99.999)).isEqualTo("100");
    }

    @Test
    void doesNotKnowTheLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Coordinate.text(1234.56)).isEqualTo("1234.56");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void readBackIsWithinHalfAHundredth() {
        Random random = new Random(3);
        for (int i = 0; i < 2000; i++) {
            double value = (random.nextDouble() - 0.5) * 500;
            assertThat(Math.abs(Double.parseDouble(Coordinate.text(value)) - value))
                    .isLessThan(0.00501);
        }
    }
}
