// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import landfall.chip.Evenness;
import landfall.cut.CutWish.How;
import landfall.cut.CutWish.Opening;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.Make;
import landfall.tap.TapMaterial;
import landfall.tap.Wear;
import landfall.working.Pen;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Speed, time, bars")
class PaceTest {
    private static final Band TORQUE = new Band(4, 6.4, 9);

    /** By hand: C45 6 to 12 m/min on M8: 9 m/min, 358.1 rev/min, 5.968 rev/s, ramp .1194 s; way 3 + 8 + 4.042 mm. */
    @Test
    void spindleAndTimeByHand() {
        Pace pace = Pace.of(Bench.m8(), Bench.wish("C45", 6.8, 8), TORQUE, null, Pen.NONE);
        double perSecond = 9000 / (Math.PI * 8) / 60;
        double way = 3 + 8 + 0.8 / Math.tan(Math.toRadians(9));
        assertThat(pace.spindle().revPerMin()).isCloseTo(358.1, within(0.05));
        assertThat(pace.time().s()).isCloseTo(2 * (way / 1.25 / perSecond + perSecond / 50), within(1e-9));
        assertThat(pace.power().expected()).isCloseTo(6.4 * 2 * Math.PI * perSecond, within(1e-9));
    }

    /**
     * A fast spindle and a short way: half of the way is one ramp. M3 in zinc at 32 m/min turns 56 rev/s if it could.
     */
    @Test
    void aShortHoleAtHighSpeedIsAllRamp() {
        Pace pace = Pace.of(
                Bench.oneArc("M3x0.5-6H", 3, 0.45, 0.5, 4), Bench.wish("Zamak 3", 2.6, 0.5), TORQUE, null, Pen.NONE);
        double perSecond = pace.spindle().revPerMin() / 60;
        double turns = (3 + 0.5 + 4 * 0.5) / 0.5;
        assertThat(turns).isLessThan(perSecond * perSecond / 50);
        assertThat(pace.time().s()).isCloseTo(4 * Math.sqrt(turns / 50), within(1e-9));
    }

    @Test
    void shortChamfersSpiralsDepthAndCarbonSteelGoSlower() {
        double plain = speed(FluteKind.STRAIGHT, Make.PLAIN_HSS, 8);
        assertThat(speed(FluteKind.SPIRAL_RIGHT, Make.PLAIN_HSS, 8)).isCloseTo(0.75 * plain, within(1e-12));
        assertThat(speed(FluteKind.STRAIGHT, Make.PLAIN_HSS, 13)).isCloseTo(0.75 * plain, within(1e-12));
        assertThat(speed(FluteKind.STRAIGHT, new Make(TapMaterial.CARBON, null, false), 8))
                .isCloseTo(0.5 * plain, within(1e-12));
    }

    @Test
    void aBlindHoleSaysHowFarAnUnheldSpindleRunsOn() {
        How blind = new How(null, Opening.BLIND, Driven.UNTOLD, How.USUAL.holding(), Evenness.ALIKE);
        Pace pace = Pace.of(Bench.m8(), Bench.wish("C45", 6.8, 8, Wear.FRESH, blind), TORQUE, null, Pen.NONE);
        Length overrun = pace.overrun();
        assertThat(overrun).isNotNull();
        assertThat(overrun.mm()).isCloseTo(0.5 * pace.spindle().revPerMin() / 60 * 0.2 * 1.25, within(1e-12));
        assertThat(Pace.of(Bench.m8(), Bench.wish("C45", 6.8, 8), TORQUE, null, Pen.NONE)
                        .overrun())
                .isNull();
    }

    /** M3 breaks at 1.29 N m by expectation: fingers of 25 N on .35 of it, 18 mm of bar; M8 at 23.4: 327 mm. */
    @Test
    void theSafeBarIsThatOfTheShopsHabit() {
        HandTurning m3 = HandTurning.of(new Band(1, 1.29, 2), new Band(0.2, 0.3, 0.5), null, Pen.NONE);
        HandTurning m8 = HandTurning.of(new Band(15, 23.4, 30), new Band(2, 3, 4.4), null, Pen.NONE);
        assertThat(m3.safe().mm()).isCloseTo(18.06, within(0.01));
        assertThat(m8.safe().mm()).isCloseTo(327.6, within(0.1));
        assertThat(m8.needed().mm()).isCloseTo(44, within(1e-9));
    }

    private static double speed(FluteKind kind, Make make, double depth) {
        return Pace.of(Bench.m8(kind, "M8x1.25-6H", make), Bench.wish("C45", 6.8, depth), TORQUE, null, Pen.NONE)
                .speed()
                .expected();
    }
}
