// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import landfall.fault.Caution;
import landfall.history.Price;
import landfall.material.Materials;
import landfall.quantity.Length;
import landfall.quantity.Money;
import landfall.quantity.TimeSpan;
import landfall.thread.callout.CallOuts;
import landfall.wear.Hazard;
import landfall.wear.Prior;
import landfall.wear.WearLaw;
import landfall.working.Pen;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.Test;

class LimitChoiceTest {
    /** Due at 0.2 mm; 300 holes from sharp to due, by practice. */
    static final WearLaw LAW = WearLaw.of(
            List.of(),
            Prior.practice(
                    CallOuts.read("M8x1.25-6H").orThrow().thread(),
                    Materials.find("material", "C45").orThrow()));
    /** 11 mm to lose; 0.1345 mm of stock for a land of 0.2 mm and 0.05 mm below it. */
    static final SharpeningsAt SHARPENINGS =
            SharpeningsAt.of(Length.ofMm(11), Length.ofMm(0.1345), Length.ofMm(0.2), Length.ofMm(0.05));

    private static final LimitPoint.Basis BASIS = new LimitPoint.Basis(300, 0.04, Length.ofMm(0.2));

    /** The example of docs/methods/cost-per-hole.md. */
    @Test
    void aHoleAtTheUsualLimitAsTheNoteWorksItByHand() {
        Bench bench = bench(20, 6, 40);
        var point = LimitPoint.at(Length.ofMm(0.2), 59, BASIS, bench, Pen.NONE);
        assertThat(SHARPENINGS.count(Length.ofMm(0.2))).isEqualTo(59);
        assertThat(point.risk()).isCloseTo(0.03921, within(5e-6));
        assertThat(point.holes().aRun()).isCloseTo(295.57, within(0.01));
        assertThat(point.holes().aTap()).isCloseTo(6854, within(0.5));
        assertThat(point.perHole().amount()).isCloseTo(0.02765, within(5e-6));
        assertThat(point.spoilt().amount()).isCloseTo(0.00531, within(5e-6));
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        LimitChoice choice = LimitChoice.of(LAW, bench(20, 6, 40), SHARPENINGS);
        for (LimitPoint point : choice.curve()) {
            var worked = LimitChoice.working(LAW, bench(20, 6, 40), point);
            WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
            assertThat(worked.value().perHole().amount())
                    .isCloseTo(point.perHole().amount(), within(1e-12));
        }
    }

    @Test
    void theBestLimitIsTheLeastOfTheCurveAndItsNeighboursAreAlike() {
        LimitChoice choice = LimitChoice.of(LAW, bench(20, 6, 40), SHARPENINGS);
        double least = choice.best().perHole().amount();
        assertThat(choice.curve())
                .allSatisfy(point -> assertThat(point.perHole().amount()).isGreaterThanOrEqualTo(least));
        assertThat(choice.alike().holds(choice.best().limit())).isTrue();
        assertThat(choice.perHole().low()).isLessThan(least);
        assertThat(choice.perHole().high()).isGreaterThan(least);
        assertThat(choice.curve().get(choice.curve().size() - 1).limit().mm()).isCloseTo(0.3, within(1e-9));
    }

    @Test
    void aDearerPartSharpensEarlierAndADearerSharpeningLater() {
        double before = Double.POSITIVE_INFINITY;
        for (double part : new double[] {0, 10, 40, 160, 640, 2560}) {
            double limit = best(bench(20, 6, part));
            assertThat(limit).isLessThanOrEqualTo(before);
            before = limit;
        }
        assertThat(before).isLessThan(0.15);
        double later = 0;
        for (double sharpening : new double[] {0.5, 2, 8, 32}) {
            double limit = best(bench(20, sharpening, 100));
            assertThat(limit).isGreaterThanOrEqualTo(later);
            later = limit;
        }
    }

    @Test
    void whereThePartIsDearItDecidesAndThatIsSaid() {
        assertThat(LimitChoice.of(LAW, bench(20, 6, 4000), SHARPENINGS).cautions())
                .extracting(Caution::code)
                .contains("partDecides", "priorOnly");
        assertThat(LimitChoice.of(LAW, bench(20, 100, 0), SHARPENINGS).cautions())
                .extracting(Caution::code)
                .contains("limitAtEnd")
                .doesNotContain("partDecides");
    }

    /** Taps lived through one by one, with nothing of the closed form in it. */
    @Test
    void agreesWithTapsLivedThroughOneByOne() {
        Random chance = new Random(3);
        Bench bench = bench(20, 6, 40);
        for (double limit : new double[] {0.1, 0.2, 0.3}) {
            LimitPoint point = LimitPoint.at(
                    Length.ofMm(limit), 12, new LimitPoint.Basis(300, 0.2, Length.ofMm(0.2)), bench, Pen.NONE);
            double holes = 0;
            double paid = 0;
            for (int tap = 0; tap < 20_000; tap++) {
                paid += 20;
                for (int run = 0; run <= 12; run++) {
                    paid += run > 0 ? 6 : 0;
                    double breaksAt = -Math.log(1 - chance.nextDouble()) / 0.2;
                    double share = limit / 0.2;
                    if (breaksAt < Hazard.at(share)) {
                        holes += 300 * worn(breaksAt);
                        paid += 40;
                        break;
                    }
                    holes += 300 * share;
                }
            }
            assertThat(point.perHole().amount() / (paid / holes)).isCloseTo(1, within(0.02));
        }
    }

    /** The wear at which so much danger has been gone through. */
    private static double worn(double danger) {
        double low = 0;
        double high = 2;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            low = Hazard.at(middle) < danger ? middle : low;
            high = Hazard.at(middle) < danger ? high : middle;
        }
        return low;
    }

    @Test
    void twoCurrenciesAreRefusedAndNothingIsConverted() {
        assertThatThrownBy(() -> new Bench(eur(20), new Money(6, "USD"), eur(40)))
                .hasMessage("currency of sharpening: \"6.00 USD\" must be that of the tap, 20.00 EUR."
                        + " To mend: give all money in one currency; none is converted.");
        assertThatThrownBy(() -> new Bench(eur(0), eur(6), eur(40)))
                .hasMessage("price of a tap: \"0.00 EUR\" must be more than 0. To mend: give what a new tap costs.");
    }

    @Test
    void sharpeningIsTimeAtTheBench() {
        Bench bench = Bench.of(price("20"), TimeSpan.ofSeconds(600), price("54"), price("40"));
        assertThat(bench.sharpening().amount()).isCloseTo(9, within(1e-12));
    }

    static double best(Bench bench) {
        return LimitChoice.of(LAW, bench, SHARPENINGS).best().limit().mm();
    }

    static Bench bench(double tap, double sharpening, double breakage) {
        return new Bench(eur(tap), eur(sharpening), eur(breakage));
    }

    static Money eur(double amount) {
        return new Money(amount, "EUR");
    }

    private static Price price(String amount) {
        return new Price(new BigDecimal(amount), "EUR");
    }
}
