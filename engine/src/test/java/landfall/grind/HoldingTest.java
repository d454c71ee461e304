// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import static org.assertj.core.api.Assertions.assertThat;

import landfall.quantity.Angle;
import landfall.quantity.Length;
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
        assertThat(Holding.of(tap(Bench.metric(6, 1))).words(tap(Bench.metric(6, 1))))
                .isEqualTo("Collet on the shank. The point's centre is usually male and goes with the end.");
    }

    @Test
    void aLargeTapStandsBetweenDriverAndCentre() {
        assertThat(Holding.of(tap(Bench.metric(36, 4))).words(tap(Bench.metric(36, 4))))
                .isEqualTo("Over 1 in: driver on the square, spring tail centre."
                        + " Its centres are usually female: use them only if sound.");
    }
}
