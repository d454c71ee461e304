// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.hole.HoleWish.Place;
import landfall.hole.HoleWish.Tools;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.thread.callout.CallOuts;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The hole for a taper pipe thread")
class TaperHoleTest {
    private static HoleWish wish(String thread) {
        return HoleWish.of(CallOuts.read(thread).orThrow());
    }

    private static TaperHole hole(String thread) {
        return TaperHole.of(wish(thread)).orThrow().value();
    }

    /** By hand in inches, with the planes of ASME B1.20.1: see docs/methods/tap-drill.md. */
    @Test
    void halfInchNptByHand() {
        TaperHole half = hole("1/2-14 NPT");
        assertThat(half.face().minor().inch()).isCloseTo(0.72129, within(1e-9));
        assertThat(half.depths().fullThread().inch()).isCloseTo(0.53429, within(1e-9));
        assertThat(half.face().end().inch()).isCloseTo(0.68790, within(1e-5));
        assertThat(requireNonNull(half.reamed()).drill().called()).isEqualTo("11/16");
        assertThat(half.straight().name()).isEqualTo("23/32");
        assertThat(half.straight().atFace()).isCloseTo(1.021, within(0.001));
        assertThat(half.straight().atEnd()).isCloseTo(0.729, within(0.001));
    }

    /** Where no chart is held, the drill that the derived rule gives is the one that shops use (from memory). */
    @ParameterizedTest
    @CsvSource({"3/8-18 NPT, 37/64"})
    void aSizeWithoutAChartIsDrilledHalfWay(String thread, String drill) {
        TaperHole hole = hole(thread);
        assertThat(hole.straight().name()).isEqualTo(drill);
        assertThat(hole.straight().charted()).isFalse();
        assertThat(hole.cautions()).extracting(Caution::code).contains("drillDerived", "stopAtGauge");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1/8-27 NPT", "3/8-18 NPT", "1-11.5 NPT", "1/8-27 NPTF", "R 1/2", "Rc 1", "Rc 1/2-LH"})
    void everyPrintedFormulaGivesItsFigureAndTheThreadGrowsThinnerInwards(String thread) {
        var worked = TaperHole.of(wish(thread)).orThrow();
        WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
        TaperHole hole = worked.value();
        assertThat(hole.face().end()).isLessThan(hole.face().minor());
        assertThat(hole.straight().atEnd()).isLessThan(hole.straight().atFace());
        assertThat(hole.depths().handTight()).isLessThan(hole.depths().fullThread());
        assertThat(requireNonNull(hole.reamed()).drill().diameter())
                .isLessThanOrEqualTo(hole.face().end());
        assertThat(hole.cautions()).extracting(Caution::code).contains("pressureJoint", "noStrength");
    }

    @Test
    void aDepthIsSaidToBeThatOfTheStandard() {
        HoleWish deep = wish("Rc 1/2").at(new Place(Length.ofMm(10), HoleEnd.THROUGH, null));
        assertThat(TaperHole.of(deep).orThrow().value().cautions())
                .extracting(Caution::code)
                .contains("depthOfStandard");
    }

    @Test
    void whatDoesNotGoWithATaperThreadIsRefusedAtOnce() {
        HoleWish odd = wish("R 1").with(new Tools(List.of(), 0.7, null, FluteKind.FORMING));
        assertThat(TaperHole.of(odd).findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "forming: \"yes\" does not go with the taper thread R 1. To mend: use a cutting tap.",
                        "share: \"70 %\" does not go with the taper thread R 1. To mend: leave it out: the hole follows"
                                + " from the thread's planes.",
                        "drills: \"\" names no drill. To mend: name a drawer: number, letter, fraction, metric.");
    }
}
