// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.history.Happening;
import landfall.material.Materials;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.thread.callout.CallOuts;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.Test;

class WearLawTest {
    /** The example of docs/methods/wear-law.md. */
    private static final int[] TEN = {90, 100, 105, 110, 120, 120, 130, 140, 150, 170};

    @Test
    void tenRunsAsTheNoteWorksThemByHand() {
        WearLaw law = WearLaw.of(sharpenedAfter(TEN), Shop.PRACTICE);
        double s0 = Math.log(9) / (2 * 1.6449);
        double one = Math.hypot(0.35, 0.3);
        double mean = Arrays.stream(TEN).mapToDouble(Math::log).average().orElseThrow();
        double practice = 1 / (s0 * s0);
        double records = 10 / (one * one);
        double byHand = Math.exp((practice * Math.log(300) + records * mean) / (practice + records));
        assertThat(s0).isCloseTo(0.6679, within(1e-4));
        assertThat(byHand).isCloseTo(126.49, within(0.01));
        Learned learned = law.learned().value();
        assertThat(learned.middle().expected() / byHand).isCloseTo(1, within(0.03));
        assertThat(learned.records()).isEqualTo(new Records(10, 10, 0, 0, 0, 0));
        isBand(learned.middle(), 106.7, 125.3, 147.1);
        isBand(learned.life(), 87.1, 125.1, 180.5);
        assertThat(learned.breaks().expected()).isCloseTo(0.0284, within(5e-5));
        Run open = Shop.run("T1", Run.End.OPEN, 60, null);
        isBand(law.dueIn(open).value().left(), 30.5, 66.7, 121.9);
        Survival survival = law.survival(open, new Job(40, null)).value();
        assertThat(survival.breaks()).isCloseTo(0.014, within(5e-4));
        assertThat(survival.due()).isCloseTo(0.182, within(5e-4));
        assertThat(survival.lasts()).isCloseTo(0.790, within(5e-4));
    }

    private static void isBand(Band band, double low, double expected, double high) {
        assertThat(band.low()).isCloseTo(low, within(0.05));
        assertThat(band.expected()).isCloseTo(expected, within(0.05));
        assertThat(band.high()).isCloseTo(high, within(0.05));
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        List<Run> runs = new ArrayList<>(sharpenedAfter(TEN));
        Run guessed = guessed(60);
        runs.add(guessed);
        runs.add(Shop.run("B", Run.End.BROKEN, 40, null));
        for (WearLaw law : List.of(
                WearLaw.of(List.of(), Shop.PRACTICE),
                WearLaw.of(runs, Shop.PRACTICE),
                WearLaw.of(runs, Shop.PRACTICE.lasting(new Band(80, 160, 320))))) {
            WorkingCheck.everyFormulaGivesItsFigure(law.learned().steps());
            WorkingCheck.everyFormulaGivesItsFigure(law.dueIn(guessed).steps());
            WorkingCheck.everyFormulaGivesItsFigure(law.dueIn(Shop.fresh("F")).steps());
            WorkingCheck.everyFormulaGivesItsFigure(
                    law.survival(guessed, new Job(25, Length.ofMm(16))).steps());
        }
    }

    @Test
    void withoutRecordsTheLawIsPracticeAndSaysSo() {
        WearLaw law = WearLaw.of(List.of(), Shop.PRACTICE);
        Learned learned = law.learned().value();
        assertThat(learned.middle().expected()).isCloseTo(300, within(0.5));
        assertThat(learned.depth()).isEqualTo(Length.ofMm(12));
        assertThat(learned.breaks().expected()).isCloseTo(0.04, within(1e-12));
        assertThat(law.cautions()).extracting(Caution::code).containsExactly("priorOnly", "depthAssumed");
    }

    @Test
    void aPriorOfTheShopsOwnTakesThePlaceOfPractice() {
        WearLaw law = WearLaw.of(List.of(), Shop.PRACTICE.lasting(new Band(75, 150, 300)));
        assertThat(law.learned().value().middle().expected()).isCloseTo(100, within(0.2));
    }

    @Test
    void manyRecordsFindTheLawOfTheShop() {
        for (double middle : new double[] {20, 120, 900}) {
            for (double scatter : new double[] {0.15, 0.35, 0.7}) {
                Shop shop = new Shop(7, middle, scatter);
                List<Run> runs = new ArrayList<>(shop.judged(300));
                runs.addAll(shop.measured(100, (int) (1.5 * middle)));
                Learned learned = WearLaw.of(runs, Shop.PRACTICE).learned().value();
                assertThat(learned.middle().expected() / middle).isCloseTo(1, within(0.12));
                double spread = Math.log(learned.life().high() / learned.life().low()) / (2 * 1.28155);
                assertThat(spread / scatter).isCloseTo(1, within(0.25));
            }
        }
    }

    @Test
    void measuredWearLandsFindTheLawFromTapsThatNobodyWoreOut() {
        Shop shop = new Shop(11, 200, 0.3);
        Learned learned =
                WearLaw.of(shop.measured(60, 160), Shop.PRACTICE).learned().value();
        assertThat(learned.middle().expected() / 200).isCloseTo(1, within(0.12));
    }

    @Test
    void moreRecordsNarrowTheMiddle() {
        double before = Double.POSITIVE_INFINITY;
        for (int count : new int[] {0, 3, 10, 30, 100, 1000}) {
            Band middle = WearLaw.of(new Shop(3, 150, 0.3).judged(count), Shop.PRACTICE)
                    .learned()
                    .value()
                    .middle();
            double width = Math.log(middle.high() / middle.low());
            assertThat(width).isLessThan(before);
            before = width;
        }
    }

    @Test
    void aRunStillGoingLengthensTheLawAndNeverShortensIt() {
        List<Run> runs = sharpenedAfter(TEN);
        double before = middle(runs);
        for (int holes : new int[] {1, 60, 120, 240, 480}) {
            List<Run> more = new ArrayList<>(runs);
            more.add(Shop.run("open", Run.End.OPEN, holes, null));
            double after = middle(more);
            assertThat(after).isGreaterThanOrEqualTo(before * (1 - 1e-6));
            before = after;
        }
    }

    /** To a little past the middle: a tap that nobody has found due long after that is one of the lasting ones. */
    @Test
    void moreHolesMeanLessLeftAndMoreRisk() {
        WearLaw law = WearLaw.of(sharpenedAfter(TEN), Shop.PRACTICE);
        Job job = new Job(20, null);
        Due due = law.dueIn(Shop.fresh("F")).value();
        Survival survival = law.survival(Shop.fresh("F"), job).value();
        for (int holes = 10; holes <= 150; holes += 10) {
            Run run = Shop.run("open", Run.End.OPEN, holes, null);
            Due next = law.dueIn(run).value();
            Survival later = law.survival(run, job).value();
            assertThat(next.left().expected()).isLessThan(due.left().expected());
            assertThat(later.lasts()).isLessThan(survival.lasts());
            assertThat(later.due()).isGreaterThan(survival.due());
            due = next;
            survival = later;
        }
    }

    @Test
    void aWiderWearLandMeansLessLeftAndMoreRisk() {
        WearLaw law = WearLaw.of(sharpenedAfter(TEN), Shop.PRACTICE);
        Survival before = new Survival(0, 0, 1);
        double left = Double.POSITIVE_INFINITY;
        for (double land = 0.06; land <= 0.3; land += 0.03) {
            Run run = Shop.run("open", Run.End.OPEN, 60, Length.ofMm(land));
            Survival after = law.survival(run, new Job(30, null)).value();
            double now = law.dueIn(run).value().left().expected();
            assertThat(now).isLessThan(left);
            assertThat(after.breaks()).isGreaterThan(before.breaks());
            assertThat(after.lasts()).isLessThan(before.lasts());
            before = after;
            left = now;
        }
        assertThat(law.dueIn(Shop.run("open", Run.End.OPEN, 60, Length.ofMm(0.3)))
                        .value()
                        .when())
                .isEqualTo(Due.When.NOW);
    }

    @Test
    void aJobTwiceAsDeepIsTwiceAsLong() {
        WearLaw law = WearLaw.of(sharpenedAfter(TEN), Shop.PRACTICE);
        assertThat(law.survival(new Job(20, Length.ofMm(24))).value())
                .isEqualTo(law.survival(new Job(40, null)).value());
    }

    @Test
    void aTapsOwnRunDoesNotCountTwice() {
        List<Run> runs = sharpenedAfter(TEN);
        Run own = Shop.run("own", Run.End.OPEN, 200, null);
        List<Run> with = new ArrayList<>(runs);
        with.add(own);
        Band known = WearLaw.of(with, Shop.PRACTICE).dueIn(own).value().life();
        Band stranger = WearLaw.of(runs, Shop.PRACTICE).dueIn(own).value().life();
        assertThat(known.expected() / stranger.expected()).isCloseTo(1, within(0.01));
    }

    @Test
    void brokenTapsRaiseTheDangerAndWholeRunsLowerIt() {
        List<Run> runs = sharpenedAfter(TEN);
        double sound = breaks(runs);
        List<Run> broken = new ArrayList<>(runs);
        broken.add(Shop.run("B1", Run.End.BROKEN, 50, null));
        broken.add(Shop.run("B2", Run.End.BROKEN, 90, null));
        assertThat(breaks(List.of())).isEqualTo(0.04);
        assertThat(sound).isLessThan(0.04);
        assertThat(breaks(broken)).isGreaterThan(0.04);
    }

    @Test
    void guessedCountsWidenAndAreSaid() {
        List<Run> guessed = new ArrayList<>();
        for (int holes : TEN) {
            guessed.add(guessed(holes));
        }
        WearLaw law = WearLaw.of(guessed, Shop.PRACTICE);
        Band rough = law.learned().value().middle();
        Band exact =
                WearLaw.of(sharpenedAfter(TEN), Shop.PRACTICE).learned().value().middle();
        assertThat(rough.high() / rough.low()).isGreaterThan(exact.high() / exact.low());
        assertThat(law.cautions())
                .extracting(Caution::text)
                .contains("Guesses are among the counts of 10 of 10 runs: the bands are wider for it.");
    }

    @Test
    void holesInAnotherMaterialCountByWhatTheyWear() {
        String stainless = Materials.find("material", "304").orThrow().id();
        Happening.Felt felt = new Happening.Felt(null, null, null);
        Run mixed = new Run(
                "X",
                new Run.Span(Run.Start.SHARPENED, Run.End.OPEN, null),
                List.of(Shop.cut(40, false, Shop.C45.id(), felt), Shop.cut(20, false, stainless, felt)),
                List.of());
        WearLaw law = WearLaw.of(sharpenedAfter(TEN), Shop.PRACTICE);
        assertThat(law.dueIn(mixed).value().used().expected()).isCloseTo(40 + 20 * 450.0 / 150, within(1e-9));
    }

    @Test
    void runsOfAnotherMaterialAreRefusedWithTheMend() {
        Prior aluminium = Prior.practice(
                CallOuts.read("M8x1.25-6H").orThrow().thread(),
                Materials.find("material", "6061-T6").orThrow());
        assertThatThrownBy(() -> WearLaw.of(sharpenedAfter(TEN), aluminium))
                .isInstanceOf(OutOfRange.class)
                .hasMessage("material of R0: \"" + Shop.C45.id() + "\" must be "
                        + aluminium.subject().material().id()
                        + ", as the law's is. To mend: part the runs by material first.");
    }

    @Test
    void aJobWithoutHolesIsRefused() {
        assertThatThrownBy(() -> new Job(0, null))
                .hasMessage("holes: \"0\" must be 1 or more. To mend: give the count of the job.");
    }

    private static double middle(List<Run> runs) {
        return WearLaw.of(runs, Shop.PRACTICE).learned().value().middle().expected();
    }

    private static double breaks(List<Run> runs) {
        return WearLaw.of(runs, Shop.PRACTICE).learned().value().breaks().expected();
    }

    private static Run guessed(int holes) {
        Happening.Tapped cut = Shop.cut(holes, true, Shop.C45.id(), new Happening.Felt(null, null, null));
        return new Run(
                "A" + holes, new Run.Span(Run.Start.SHARPENED, Run.End.SHARPENED, null), List.of(cut), List.of());
    }

    private static List<Run> sharpenedAfter(int... holes) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < holes.length; i++) {
            runs.add(Shop.run("R" + i, Run.End.SHARPENED, holes[i], null));
        }
        return runs;
    }
}
