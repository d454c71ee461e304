// SPDX-License-Identifier: Apache-2.0
package landfall.feedback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import landfall.fault.Caution;
import landfall.feedback.TorqueFeedback.Compared;
import landfall.history.Happening;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Torque;
import landfall.wear.Run;
import landfall.working.WorkingCheck;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class FeedbackTest {
    private static final double STEEL = 1.4;
    private static final Band FORECAST = new Band(10 / STEEL, 10, 10 * STEEL);

    /** The example of docs/methods/feedback.md. */
    @Test
    void fiveTorquesAsTheNoteWorksThemByHand() {
        var worked = TorqueFeedback.of(cuts(11.5, 12.0, 12.2, 11.0, 12.6), STEEL);
        TorqueFeedback feedback = worked.value();
        WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
        assertThat(feedback.factor().expected()).isCloseTo(1.163, within(5e-4));
        assertThat(feedback.factor().low()).isCloseTo(1.076, within(5e-4));
        assertThat(feedback.factor().high()).isCloseTo(1.258, within(5e-4));
        assertThat(feedback.band()).isCloseTo(1.221, within(5e-4));
        Band narrowed = feedback.narrowed(FORECAST);
        assertThat(narrowed.expected()).isCloseTo(11.63, within(5e-3));
        assertThat(narrowed.high() - narrowed.low()).isLessThan(FORECAST.high() - FORECAST.low());
    }

    @Test
    void withoutATorqueTheBandIsAsForecast() {
        TorqueFeedback none = TorqueFeedback.of(List.of(), STEEL).value();
        Band same = none.narrowed(FORECAST);
        assertThat(same.low()).isCloseTo(FORECAST.low(), within(1e-12));
        assertThat(same.high()).isCloseTo(FORECAST.high(), within(1e-12));
        assertThat(none.cautions()).extracting(Caution::code).containsExactly("priorOnly");
    }

    @Test
    void moreTorquesThatAgreeNarrowTheBandAndMoveItTheWholeWay() {
        double before = STEEL;
        for (int n = 1; n < 200; n *= 2) {
            double[] all = new double[n];
            Arrays.fill(all, 12);
            TorqueFeedback feedback = TorqueFeedback.of(cuts(all), STEEL).value();
            assertThat(feedback.band()).isLessThan(before);
            before = feedback.band();
        }
        double[] many = new double[400];
        Arrays.fill(many, 12);
        assertThat(TorqueFeedback.of(cuts(many), STEEL).value().factor().expected())
                .isCloseTo(1.2, within(0.002));
    }

    @Test
    void torquesThatScatterWidenTheBandAndAreSaid() {
        TorqueFeedback wild =
                TorqueFeedback.of(cuts(4, 25, 5, 20, 3, 30), STEEL).value();
        assertThat(wild.band()).isGreaterThan(STEEL);
        assertThat(wild.cautions()).extracting(Caution::code).contains("scatterWide");
        TorqueFeedback off =
                TorqueFeedback.of(cuts(22, 23, 22, 23, 22, 23), STEEL).value();
        assertThat(off.cautions()).extracting(Caution::code).containsExactly("outsideForecast");
    }

    /**
     * Of 2,000 shops 1,900 are expected inside, with a standard deviation of 10; scatter learned from few costs some.
     */
    @Test
    void theNarrowedBandHoldsTheNextTorqueInNineteenOfTwentyShops() {
        Random chance = new Random(9);
        double half = Math.log(STEEL) / 2 / Math.sqrt(2);
        for (int n : new int[] {1, 3, 10}) {
            int inside = 0;
            for (int shop = 0; shop < 2000; shop++) {
                double own = half * chance.nextGaussian();
                double[] all = new double[n];
                for (int i = 0; i < n; i++) {
                    all[i] = 10 * Math.exp(own + half * chance.nextGaussian());
                }
                Band band = TorqueFeedback.of(cuts(all), STEEL).value().narrowed(FORECAST);
                double next = 10 * Math.exp(own + half * chance.nextGaussian());
                inside += band.low() <= next && next <= band.high() ? 1 : 0;
            }
            assertThat(inside).isBetween(1850, 1960);
        }
    }

    @Test
    void torquesOfTwoBandsAreRefusedWithTheMend() {
        assertThatThrownBy(() -> TorqueFeedback.of(List.of(new Compared(Torque.ofNm(9), new Band(5, 10, 20))), STEEL))
                .hasMessage("band of a cut: \"2.000\" must be 1.400, as the material's is."
                        + " To mend: part the cuts by material first.");
        assertThatThrownBy(() -> new Compared(Torque.ofNm(0), FORECAST))
                .hasMessage("torque: \"0.0 N·m\" must be more than 0."
                        + " To mend: correct the event in which it was measured.");
    }

    @Test
    void goByTurnsCountsFirstHolesThatWentAllTheWay() {
        Run run = new Run(
                "T1",
                new Run.Span(Run.Start.NEW, Run.End.OPEN, null),
                List.of(cut(12.0, 8.6), cut(12.0, 9.6), cut(12.0, 5.0), cut(12.0, null), cut(null, 9.6)),
                List.of());
        var worked = GoByTurns.of(List.of(run), Length.ofMm(1.25));
        assertThat(worked.value().gauged()).isEqualTo(3);
        assertThat(worked.value().went()).isEqualTo(2);
        assertThat(worked.value().chance().expected()).isCloseTo(3.9 / 5, within(1e-12));
        WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
    }

    @Test
    void goByTurnsMovesFromPracticeToTheShop() {
        assertThat(GoByTurns.of(0, 0).value().chance().expected()).isCloseTo(0.95, within(1e-12));
        assertThat(GoByTurns.of(0, 0).value().cautions())
                .extracting(Caution::code)
                .containsExactly("priorOnly");
        Band many = GoByTurns.of(1000, 700).value().chance();
        assertThat(many.low()).isBetween(0.67, 0.70);
        assertThat(many.high()).isBetween(0.70, 0.73);
        assertThatThrownBy(() -> GoByTurns.of(3, 4))
                .hasMessage("holes that gauged GO: \"4 of 3\" must be from 0 to all. To mend: count again.");
    }

    @Test
    void goBySizeAgreesWithItsWorkingAndWithTheNote() {
        var worked = GoBySize.of(over(0.022, 0.030, 0.026, 0.018, 0.034), Length.ofMm(7.22), Limits.ofMm(7.188, 7.348));
        WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
        assertThat(worked.value().over().mm()).isCloseTo(0.02509, within(1e-5));
        assertThat(worked.value().spread().mm()).isCloseTo(0.00794, within(5e-6));
        assertThat(worked.value().good()).isGreaterThan(0.99);
    }

    @Test
    void aTapNearerTheGreatestHoleGaugesGoodLessOften() {
        double before = 1;
        for (double tap = 7.27; tap < 7.35; tap += 0.01) {
            double good = GoBySize.of(over(0.02, 0.03, 0.025), Length.ofMm(tap), Limits.ofMm(7.188, 7.348))
                    .value()
                    .good();
            assertThat(good).isLessThan(before);
            before = good;
        }
    }

    /** Shops as practice thinks of them: what is said must come true as often. */
    @Test
    void chancesOfGoodHolesComeTrueAsOftenAsTheySay() {
        Random chance = new Random(12);
        double said = 0;
        int came = 0;
        for (int shop = 0; shop < 3000; shop++) {
            double squares = 0;
            for (int i = 0; i < 3; i++) {
                double z = chance.nextGaussian();
                squares += z * z;
            }
            double spread = 0.008 * Math.sqrt(3 / squares);
            double mean = 0.01 + spread / Math.sqrt(0.3) * chance.nextGaussian();
            double[] all = new double[5];
            for (int i = 0; i < all.length; i++) {
                all[i] = mean + spread * chance.nextGaussian();
            }
            said += GoBySize.of(over(all), Length.ofMm(7.2), Limits.ofMm(7.2, 7.225))
                    .value()
                    .good();
            double next = mean + spread * chance.nextGaussian();
            came += next >= 0 && next <= 0.025 ? 1 : 0;
        }
        assertThat((double) came).isCloseTo(said, within(4 * Math.sqrt(3000) / 2));
    }

    private static List<Length> over(double... mm) {
        List<Length> all = new ArrayList<>();
        for (double one : mm) {
            all.add(Length.ofMm(one));
        }
        return all;
    }

    private static Happening.Tapped cut(@Nullable Double depth, @Nullable Double turns) {
        return new Happening.Tapped(
                new Happening.Holes(5, false),
                new Happening.Work("1045", depth == null ? null : Length.ofMm(depth)),
                new Happening.Felt(null, null, turns));
    }

    private static List<Compared> cuts(double... nm) {
        List<Compared> all = new ArrayList<>();
        for (double one : nm) {
            all.add(new Compared(Torque.ofNm(one), FORECAST));
        }
        return all;
    }
}
