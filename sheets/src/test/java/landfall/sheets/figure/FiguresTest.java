// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.figure;

import static org.assertj.core.api.Assertions.assertThat;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Speed;
import landfall.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class FiguresTest {
    private static final Figures MM = new Figures(UnitSystem.METRIC);
    private static final Figures INCH = new Figures(UnitSystem.INCH);

    @Test
    void inchHasFourPlacesAndMetricThree() {
        assertThat(INCH.length(Length.ofMm(2.783))).isEqualTo("0.1096 in");
        assertThat(MM.length(Length.ofInch(0.1096))).isEqualTo("2.784 mm");
        assertThat(MM.other().length(Length.ofInch(0.5))).isEqualTo("0.5000 in");
    }

    @Test
    void aSignStandsUnlessTheFigureRoundsToNothing() {
        assertThat(MM.signed(Length.ofMm(0.27))).isEqualTo("+0.270");
        assertThat(MM.signed(Length.ofMm(-0.27))).isEqualTo("\u22120.270");
        assertThat(MM.signed(Length.ofMm(-0.0004))).isEqualTo("0.000");
    }

    @Test
    void halvesRoundAwayFromNought() {
        assertThat(Figures.number(1.0005, 3)).isEqualTo("1.001");
        assertThat(Figures.number(-1.0005, 3)).isEqualTo("\u22121.001");
    }

    @Test
    void anglesAreToATenthOrAsSet() {
        assertThat(MM.angle(Angle.ofDeg(37.24))).isEqualTo("37.2\u00b0");
        assertThat(MM.plainAngle(Angle.ofDeg(9))).isEqualTo("9\u00b0");
        assertThat(MM.plainAngle(Angle.ofDeg(9.25))).isEqualTo("9.25\u00b0");
    }

    @Test
    void wheelsAndSpeedsAreAsTheShopSpeaksOfThem() {
        assertThat(INCH.plainDiameter(Length.ofInch(6))).isEqualTo("\u00d86 in");
        assertThat(MM.speed(Speed.ofMPerS(25.1))).isEqualTo("25.1 m/s");
        assertThat(INCH.speed(Speed.ofFtPerMin(6500))).isEqualTo("6500 ft/min");
    }
}
