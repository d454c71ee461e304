// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import static landfall.quantity.UnitSystem.INCH;
import static landfall.quantity.UnitSystem.METRIC;
import static org.assertj.core.api.Assertions.assertThat;

import landfall.cards.answer.Unit;
import org.junit.jupiter.api.Test;

class DigitsTest {
    @Test
    void metricLengthsHaveThreePlacesAndInchLengthsFour() {
        assertThat(Digits.shown(12.7, Unit.LENGTH, METRIC)).isEqualTo("12.700");
        assertThat(Digits.shown(12.7, Unit.LENGTH, INCH)).isEqualTo("0.5000");
    }

    @Test
    void aFigureThatRoundsToNothingHasNoSign() {
        assertThat(Digits.shown(-0.0004, Unit.LENGTH, METRIC)).isEqualTo("0.000");
        assertThat(Digits.signed(0.0004, Unit.LENGTH, METRIC)).isEqualTo("0.000");
        assertThat(Digits.signed(0.25, Unit.LENGTH, METRIC)).isEqualTo("+0.250");
        assertThat(Digits.signed(-0.25, Unit.LENGTH, METRIC)).isEqualTo("−0.250");
    }

    @Test
    void anglesLoseTheirIdleNoughts() {
        assertThat(Digits.shortAngle(35)).isEqualTo("35°");
        assertThat(Digits.shortAngle(37.2434)).isEqualTo("37.24°");
        assertThat(Digits.shortAngle(0)).isEqualTo("0°");
    }

    @Test
    void workingShowsNoBinaryNoise() {
        assertThat(Digits.plain(0.1 + 0.2)).isEqualTo("0.3");
        assertThat(Digits.plain(123456789)).isEqualTo("123456800");
    }
}
