// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import landfall.history.Happening;
import landfall.history.Happening.Feel;
import landfall.history.Happening.Felt;
import landfall.quantity.Length;
import landfall.quantity.Torque;
import landfall.wear.Run.End;
import landfall.wear.Run.Start;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** M8 taps, 12 mm deep: a hole is 1.5 diameters; due at a land of 0.2 mm. */
class EvidenceTest {
    @Test
    void halfTheWearLandMeansHalfTheLife() {
        Evidence half = of(Shop.run("A", End.OPEN, 60, Length.ofMm(0.1)));
        assertThat(holes(half)).isCloseTo(120, within(1e-9));
        assertThat(half.known()).isTrue();
        assertThat(half.noise()).isCloseTo(Math.hypot(0.2, 0.1), within(1e-12));
    }

    @Test
    void aLandTooNarrowToReadSaysOnlyThatTheTapLastsLong() {
        Evidence narrow = of(Shop.run("A", End.OPEN, 60, Length.ofMm(0.01)));
        assertThat(narrow.known()).isFalse();
        assertThat(holes(narrow)).isCloseTo(240, within(1e-9));
    }

    @Test
    void sharpenedUnmeasuredMeansThatSomebodyFoundItDue() {
        Evidence judged = of(Shop.run("A", End.SHARPENED, 60, null));
        assertThat(judged).isEqualTo(new Evidence(Math.log(90), 0.3, true));
        assertThat(of(Shop.run("A", End.BROKEN, 60, null)).known()).isFalse();
        assertThat(of(Shop.run("A", End.OPEN, 60, null)).known()).isFalse();
        assertThat(of(Shop.run("A", End.SCRAPPED, 60, null)).known()).isFalse();
    }

    @Test
    void aRunThatBeganBeforeTheRecordsLastedAtLeastSoLong() {
        Happening.Tapped cut = Shop.cut(60, false, Shop.C45.id(), new Felt(null, null, null));
        Run run = new Run("A", new Run.Span(Start.UNKNOWN, End.SHARPENED, null), List.of(cut), List.of());
        assertThat(of(run).known()).isFalse();
    }

    @Test
    void aHandTellsTheWear() {
        assertThat(holes(felt(null, Feel.HEAVIER))).isCloseTo(60 / 0.75, within(1e-9));
        assertThat(holes(felt(null, Feel.HEAVY))).isCloseTo(60 / 1.25, within(1e-9));
        assertThat(felt(null, Feel.FRESH).known()).isFalse();
    }

    @Test
    void torqueOfOneAndAHalfTimesThatOfTheFirstHolesMeansDue() {
        assertThat(holes(felt(9.0, null))).isCloseTo(60, within(1e-9));
        assertThat(holes(felt(15.0, null))).isCloseTo(60 / 1.5, within(1e-6));
        assertThat(felt(6.5, null).known()).isFalse();
    }

    @Test
    void aTapThatHasCutNothingSaysNothing() {
        assertThat(of(Shop.fresh("F")).isNone()).isTrue();
    }

    private static Evidence felt(@Nullable Double nm, @Nullable Feel feel) {
        Torque now = nm == null ? null : Torque.ofNm(nm);
        return of(new Run(
                "A",
                new Run.Span(Start.NEW, End.OPEN, null),
                List.of(
                        Shop.cut(5, false, Shop.C45.id(), new Felt(Torque.ofNm(6), null, null)),
                        Shop.cut(55, false, Shop.C45.id(), new Felt(now, feel, null))),
                List.of()));
    }

    private static Evidence of(Run run) {
        return Evidence.of(Brief.of(run), Shop.PRACTICE, Work.of(List.of(Brief.of(run)), Shop.PRACTICE));
    }

    private static double holes(Evidence evidence) {
        return Math.exp(evidence.lnLife()) / 1.5;
    }
}
