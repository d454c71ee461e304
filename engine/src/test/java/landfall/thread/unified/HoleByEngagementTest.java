// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.CallOut;
import landfall.thread.Side;
import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import landfall.working.Recorded;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Hole limits by length of engagement")
class HoleByEngagementTest {
    private static Limits hole(String callOut, double depthInch) {
        return CallOuts.read(callOut)
                .orThrow()
                .hole(Length.ofInch(depthInch), Pen.NONE)
                .orElseThrow();
    }

    /** Recommended hole sizes of the handbook for 1/4-20 class 2B, from memory; half the last digit. */
    @ParameterizedTest(name = "1/4-20 over {0} in: {1} to {2}")
    @CsvSource({
        "0.08, .196, .202",
        "0.1, .199, .204",
        "0.16, .199, .204",
        "0.17, .202, .207",
        "0.25, .202, .207",
        "0.374, .202, .207",
        "0.375, .204, .210",
        "0.6, .204, .210"
    })
    void theRowsOfAQuarterTwenty(double depth, double min, double max) {
        Limits hole = hole("1/4-20 UNC-2B", depth);
        assertThat(mm(hole.min()) / 25.4).isCloseTo(min, within(1e-9));
        assertThat(mm(hole.max()) / 25.4).isCloseTo(max, within(1e-9));
    }

    private static double mm(@org.jspecify.annotations.Nullable Length length) {
        return java.util.Objects.requireNonNull(length).mm();
    }

    @Test
    void aBorderBelongsToTheLongerRow() {
        assertThat(hole("3/8-16 UNC-2B", 0.125)).isEqualTo(hole("3/8-16 UNC-2B", 0.2));
        assertThat(hole("3/8-16 UNC-2B", 0.25)).isEqualTo(hole("3/8-16 UNC-2B", 0.5));
        assertThat(hole("3/8-16 UNC-2B", 0.5625)).isEqualTo(hole("3/8-16 UNC-2B", 1.0));
    }

    @Test
    void theThirdRowEndsAtTheThreadsOwnGreatestMinor() {
        for (String callOut : UnifiedPairs.callOuts()) {
            CallOut thread = CallOuts.read(callOut + "-2B").orThrow();
            Limits hole = thread.hole(thread.thread().major(), Pen.NONE).orElseThrow();
            Limits minor = thread.limits(Side.INTERNAL, Pen.NONE).orElseThrow().minor();
            assertThat(hole.max()).as(callOut).isEqualTo(minor.max());
            assertThat(mm(hole.min())).as(callOut).isGreaterThan(mm(minor.min()));
        }
    }

    @Test
    void aLongerThreadAsksForALargerHole() {
        Limits before = hole("5/8-11 UNC-3B", 0.01);
        for (double depth = 0.05; depth < 2; depth += 0.05) {
            Limits here = hole("5/8-11 UNC-3B", depth);
            assertThat(mm(here.min())).isGreaterThanOrEqualTo(mm(before.min()));
            assertThat(mm(here.max())).isGreaterThanOrEqualTo(mm(before.max()));
            before = here;
        }
    }

    @Test
    void fromAQuarterInchUpTheLimitsAreFourThousandthsApart() {
        for (String callOut : List.of("1/4-32 UNEF-3B", "1/2-28 UNEF-3B", "1-20 UNEF-2B")) {
            Limits hole = hole(
                    callOut, CallOuts.read(callOut).orThrow().thread().major().inch());
            assertThat(mm(hole.max()) - mm(hole.min())).isGreaterThanOrEqualTo(0.004 * 25.4 - 1e-9);
        }
    }

    @Test
    void metricLimitsDoNotMove() {
        CallOut m8 = CallOuts.read("M8x1.25-6H").orThrow();
        assertThat(m8.hole(Length.ofMm(20), Pen.NONE))
                .isEqualTo(m8.limits(Side.INTERNAL, Pen.NONE).map(side -> side.minor()));
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        List<String> callOuts = new ArrayList<>(List.of("1/4-32 UNEF-3B", "4-40 UNC-2B"));
        callOuts.add("1 1/2-6 UNC-2B");
        for (String callOut : callOuts) {
            for (double depth : new double[] {0.03, 0.1, 0.2, 0.4, 3}) {
                Recorded pen = new Recorded();
                assertThat(CallOuts.read(callOut).orThrow().hole(Length.ofInch(depth), pen))
                        .isPresent();
                WorkingCheck.everyFormulaGivesItsFigure(pen.steps());
            }
        }
    }
}
