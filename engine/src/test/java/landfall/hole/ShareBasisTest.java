// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.CallOut;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The share of thread that a hole leaves")
class ShareBasisTest {
    private static double percent(CallOut callOut, Length hole) {
        return 100 * ShareBasis.FULL_DEPTH.share(callOut.thread(), hole);
    }

    /**
     * Rows printed with a percentage: within 1 % but for 0-80 .0492 (68 printed, a misprint) and 1-64 .0571 (77
     * printed).
     */
    @ParameterizedTest(name = "{0} {3} in leaves {5} %, {9}")
    @CsvFileSource(resources = "/reference/tap-drills-inch.csv")
    void agreesWithTheListsOfInchDrills(
            String designation,
            double major,
            double tpi,
            double drill,
            @Nullable Double printed,
            double computed,
            @Nullable Double min,
            @Nullable Double max,
            @Nullable String inside,
            String list) {
        CallOut callOut = CallOuts.read(inch(designation)).orThrow();
        double here = percent(callOut, Length.ofInch(drill));
        assertThat(here).isCloseTo(computed, within(0.0501));
        boolean misprint =
                designation.equals("0-80") && drill == 0.0492 || designation.equals("1-64") && drill == 0.0571;
        if (printed != null && !misprint) {
            assertThat(here).isCloseTo(printed, within(1.0));
        }
        if (min != null && max != null) {
            Limits minor = callOut.limits(Side.INTERNAL, Pen.NONE).orElseThrow().minor();
            assertThat(minor.holds(Length.ofInch(drill)) ? "yes" : "no")
                    .as(list)
                    .isEqualTo(inside);
        }
    }

    /**
     * A call-out of the standard pair, or of a special one where the list names such: 4-36, 6-40 and others are in
     * series.
     */
    private static String inch(String designation) {
        String standard = designation + " UN";
        for (String series : new String[] {"C", "F", "EF", "", "S"}) {
            if (CallOuts.read(standard + series + "-2B").findings().isEmpty()) {
                return standard + series + "-2B";
            }
        }
        throw new AssertionError("no series takes " + designation);
    }

    @ParameterizedTest(name = "{0} {3} mm leaves {7} %")
    @CsvFileSource(resources = "/reference/tap-drills-metric.csv")
    void agreesWithTheListOfMetricDrills(
            String thread,
            double major,
            double pitch,
            double drill,
            String zone,
            double min,
            double max,
            double percent,
            String read) {
        CallOut callOut = CallOuts.read(thread + "-" + zone).orThrow();
        assertThat(percent(callOut, Length.ofMm(drill))).isCloseTo(percent, within(0.0501));
        Limits minor = callOut.limits(Side.INTERNAL, Pen.NONE).orElseThrow().minor();
        assertThat(minor).isEqualTo(Limits.ofMm(min, max));
        assertThat(minor.holds(Length.ofMm(drill))).isTrue();
    }

    @Test
    void theBasicInternalThreadIsFiveSixthsOfTheFullDepth() {
        ScrewThread thread = CallOuts.read("M10x1.5").orThrow().thread();
        assertThat(ShareBasis.FULL_DEPTH.share(thread, thread.minorDiameter())).isCloseTo(5.0 / 6, within(1e-12));
    }

    @Test
    void holeForUndoesShare() {
        Random random = new Random(7);
        ScrewThread thread = CallOuts.read("1/2-13 UNC").orThrow().thread();
        for (ShareBasis basis : ShareBasis.values()) {
            for (int i = 0; i < 50; i++) {
                double share = random.nextDouble();
                assertThat(basis.share(thread, basis.holeFor(thread, share)))
                        .as("%s", basis)
                        .isCloseTo(share, within(1e-12));
            }
        }
    }

    @Test
    void aLargerHoleLeavesLessThread() {
        ScrewThread thread = CallOuts.read("M8x1.25").orThrow().thread();
        double before = 2;
        for (double hole = 6; hole < 8; hole += 0.05) {
            double share = ShareBasis.FULL_DEPTH.share(thread, Length.ofMm(hole));
            assertThat(share).isLessThan(before);
            before = share;
        }
    }
}
