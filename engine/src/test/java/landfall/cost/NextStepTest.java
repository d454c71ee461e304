// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import landfall.cost.NextStep.DueNow;
import landfall.cost.NextStep.Verdict;
import landfall.history.Happening;
import landfall.quantity.Length;
import landfall.quantity.Money;
import landfall.wear.Run;
import landfall.working.Worked;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.Test;

class NextStepTest {
    private static final Length LIMIT = Length.ofMm(0.2);

    @Test
    void aCheapSharpeningIsWorthItAndItsMoneyIsTold() {
        var worked = step(LimitChoiceTest.bench(20, 2, 40), new DueNow(5, 1, true));
        NextStep step = worked.value();
        assertThat(step.verdict()).isEqualTo(Verdict.SHARPEN);
        Money gain = Objects.requireNonNull(step.gain());
        Money next = Objects.requireNonNull(step.perHoleNext());
        assertThat(gain.amount()).isPositive();
        assertThat(gain.amount()).isCloseTo((step.perHoleNew().amount() - next.amount()) * 295.5656, within(1e-3));
        WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
    }

    @Test
    void aTapDearToSharpenIsReplacedOrScrapped() {
        Bench dear = LimitChoiceTest.bench(5, 30, 10);
        assertThat(step(dear, new DueNow(5, 1, true)).value().verdict()).isEqualTo(Verdict.REPLACE);
        assertThat(step(dear, new DueNow(5, 1, false)).value().verdict()).isEqualTo(Verdict.SCRAP);
    }

    @Test
    void noSharpeningLeftLeavesNoChoice() {
        NextStep step =
                step(LimitChoiceTest.bench(20, 2, 40), new DueNow(0, 1, true)).value();
        assertThat(step.verdict()).isEqualTo(Verdict.REPLACE);
        assertThat(step.gain()).isNull();
    }

    @Test
    void aRegroundTapThatLastsHalfIsWorthLess() {
        Bench bench = LimitChoiceTest.bench(20, 6, 40);
        double whole = gain(bench, 1);
        assertThat(gain(bench, 0.5)).isLessThan(whole);
        assertThat(gain(bench, 0.1)).isNegative();
        assertThatThrownBy(() -> new DueNow(3, 0, true))
                .hasMessage("holes of a reground tap: \"0.0 of a new one's\" must be over 0 and at most 2."
                        + " To mend: give the holes after a sharpening over the holes of a new tap, such as 0.9.");
    }

    @Test
    void whatSharpeningSavedIsNewTapsNotBoughtLessTheGrinding() {
        Instant spring = Instant.parse("2026-03-01T07:00:00Z");
        List<Run> runs = List.of(
                run(Run.Start.NEW, spring, 300),
                run(Run.Start.SHARPENED, spring, 240),
                run(Run.Start.SHARPENED, spring.plusSeconds(86400), 360),
                run(Run.Start.SHARPENED, Instant.parse("2025-12-31T07:00:00Z"), 500));
        var year = new Saved.Period(Instant.parse("2026-01-01T00:00:00Z"), Instant.parse("2027-01-01T00:00:00Z"));
        var worked = Saved.of(runs, year, LimitChoiceTest.LAW, LimitChoiceTest.bench(20, 6, 40));
        assertThat(worked.value().sharpenings()).isEqualTo(2);
        assertThat(worked.value().holes()).isEqualTo(600);
        assertThat(worked.value().money().amount()).isCloseTo(20 * 600 / 300.0 - 6 * 2, within(1e-9));
        WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
        assertThatThrownBy(() -> new Saved.Period(spring, spring))
                .hasMessageContaining("must be from an earlier to a later moment. To mend: swap the two.");
    }

    private static Run run(Run.Start start, Instant from, int holes) {
        return new Run(
                "T",
                new Run.Span(start, Run.End.SHARPENED, from),
                List.of(new Happening.Tapped(
                        new Happening.Holes(holes, false),
                        new Happening.Work(null, null),
                        new Happening.Felt(null, null, null))),
                List.of());
    }

    private static double gain(Bench bench, double reground) {
        return Objects.requireNonNull(
                        step(bench, new DueNow(5, reground, true)).value().gain())
                .amount();
    }

    private static Worked<NextStep> step(Bench bench, DueNow tap) {
        return NextStep.of(LimitChoiceTest.LAW, bench, LimitChoiceTest.SHARPENINGS, LIMIT, tap);
    }
}
