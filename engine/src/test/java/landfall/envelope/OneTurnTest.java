// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import landfall.grind.Envelopes;
import landfall.grind.GrindSetup;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("One turn of the tap in its fixture")
class OneTurnTest {
    private static final GrindSetup SETUP = Envelopes.m10Both();

    private static OneTurn turn(Errors errors) {
        return OneTurn.of(SETUP, errors, ChamferGround.of(SETUP, errors));
    }

    /** The same readings that the sheet says, at every land angle that both name. */
    @Test
    void theSlideDialsReadWhatTheSheetSays() {
        List<OneTurn.Moment> moments = turn(Errors.NONE).moments();
        var targets = SETUP.motion().dial();
        assertThat(moments).hasSize(181);
        for (OneTurn.Moment moment : moments.subList(0, 20)) {
            targets.stream()
                    .filter(target ->
                            Math.abs(target.land().deg() - moment.spindle().deg()) < 1e-9)
                    .forEach(target -> {
                        if (target.place() == Place.END) {
                            assertThat(moment.end().mm())
                                    .isCloseTo(target.reading().mm(), within(1e-9));
                        } else if (target.place() == Place.SHANK) {
                            assertThat(moment.shank().mm())
                                    .isCloseTo(target.reading().mm(), within(1e-9));
                        }
                    });
        }
    }

    /**
     * Square to the chamfer with the cam at work a dial stands still over a land that this cam has ground, within the
     * 1.5 % of the fall by which the envelope parts from the cam.
     */
    @Test
    void inTheWheelsPlaceTheDialStandsStillOverTheLandsAndReadsNothingOverAFlute() {
        for (OneTurn.Moment moment : turn(Errors.NONE).moments()) {
            double land = moment.spindle().deg() % 90;
            if (land > 40.001) {
                assertThat(moment.land()).isZero();
                assertThat(moment.chamfer()).isNull();
            } else {
                assertThat(moment.land()).isEqualTo((int) (moment.spindle().deg() / 90) % 4 + 1);
                assertThat(Objects.requireNonNull(moment.chamfer()).mm()).isCloseTo(0, within(0.006));
            }
        }
    }

    /** A thread that runs out does not move it: chamfer and dial know the spindle only. */
    @Test
    void runOutIsNotSeenInTheChuckingItWasGroundIn() {
        Errors out = new Errors(Length.ofMm(0.02), Angle.ofDeg(70), List.of(), Length.ZERO, WheelFace.TRUE);
        List<OneTurn.Moment> with = turn(out).moments();
        List<OneTurn.Moment> without = turn(Errors.NONE).moments();
        for (int i = 0; i < with.size(); i++) {
            Length chamfer = with.get(i).chamfer();
            if (chamfer != null) {
                assertThat(chamfer.mm())
                        .isCloseTo(
                                Objects.requireNonNull(without.get(i).chamfer()).mm(), within(1e-5));
            }
        }
    }
}
