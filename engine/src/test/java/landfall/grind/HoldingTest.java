// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import static org.assertj.core.api.Assertions.assertThat;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Body;
import landfall.tap.Centres;
import landfall.tap.ChamferGiven;
import landfall.tap.Flutes;
import landfall.tap.Tap;
import landfall.thread.ScrewThread;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("How a tap is held")
class HoldingTest {
    private static Tap tap(ScrewThread thread) {
        Length point = Length.ofMm(thread.major().mm() * 0.8);
        return Bench.tap(thread, Flutes.straight(4), Angle.ofDeg(35), new ChamferGiven(Angle.ofDeg(15), point, null));
    }

    /** Common practice: a collet up to 1 in, a driver and a tail centre above. */
    @ParameterizedTest(name = "{0} in is held by {1}")
    @CsvSource({"0.25, COLLET", "1, COLLET", "1.125, CENTRES"})
    void uptoAnInchInAColletAndAboveBetweenDriverAndCentre(double inch, Holding.Way way) {
        assertThat(Holding.of(tap(Bench.inch(inch, 8))).way()).isEqualTo(way);
    }

    @Test
    void aSmallTapLosesItsCentreWithItsEnd() {
        assertThat(Holding.of(tap(Bench.metric(6, 1))).words())
                .isEqualTo("Collet on the shank. The point's centre is usually male and goes with the end.");
    }

    @Test
    void aLargeTapStandsBetweenDriverAndCentre() {
        assertThat(Holding.of(tap(Bench.metric(36, 4))).words())
                .isEqualTo("Over 1 in: driver on the square, spring tail centre."
                        + " Its centres are usually female: use them only if sound.");
    }

    private static Tap held(double thread, double shankMm, Centres centres) {
        Tap tap = tap(Bench.metric(thread, 3));
        Body body = new Body(null, null, Length.ofMm(shankMm), null, null, centres);
        return new Tap(tap.callOut(), tap.cutting(), body, tap.pitch(), tap.make());
    }

    /** M27 has a shank of 20 mm (DIN 376), which a 0.8 in collet takes; M30 has 22. */
    @Test
    void theShankDecidesWhereItIsKnown() {
        assertThat(Holding.of(held(27, 20, null)).way()).isEqualTo(Holding.Way.COLLET);
        assertThat(Holding.of(held(30, 22, null)).way()).isEqualTo(Holding.Way.CENTRES);
        assertThat(Holding.of(held(24, 24, Centres.HOLES)).words())
                .isEqualTo("Shank over 0.8 in, 24.000 mm (0.9449 in): driver on the square, spring tail centre."
                        + " Clean its centre holes; they serve for checking between centres afterwards.");
    }

    @Test
    void aTapWithoutCentresIsHeldByItsShankHoweverThick() {
        Holding holding = Holding.of(held(36, 28, Centres.NONE));
        assertThat(holding.way()).isEqualTo(Holding.Way.COLLET);
        assertThat(holding.words())
                .isEqualTo(
                        "No centre to turn on: collet or chuck on the shank, 28.000 mm (1.1024 in), trued to the full"
                                + " thread. Without centres it is checked in a V on its full thread.");
        assertThat(holding.checkedOn()).isEqualTo("turning in a V on its full thread");
    }

    /** The order of work: what turns on its point keeps it; a male centre goes with the end. */
    @Test
    void theLastStepFollowsTheHolding() {
        assertThat(lastButOne(held(30, 22, Centres.HOLES))).startsWith("Leave the end alone: it turns on its centre.");
        assertThat(lastButOne(held(8, 8, Centres.MALE))).contains("its male centre goes with it");
        assertThat(lastButOne(held(8, 8, Centres.NONE)))
                .isEqualTo("Grind the end last, if it is to be shortened or the point cleaned.");
    }

    private static String lastButOne(Tap tap) {
        Fixture fixture = Bench.fixture(Bench.cam(4, 50, 20));
        return Bench.setup(tap, fixture, Bench.working(6)).work().procedure().stream()
                .filter(step -> step.code().equals("end"))
                .findFirst()
                .orElseThrow()
                .text();
    }
}
