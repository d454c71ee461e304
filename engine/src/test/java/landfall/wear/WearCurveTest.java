// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import landfall.history.Happening;
import landfall.material.Materials;
import landfall.quantity.Length;
import landfall.thread.callout.CallOuts;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The wear of one tap over its holes")
class WearCurveTest {
    private static final Prior M8 = Prior.practice(
            CallOuts.read("M8x1.25-6H").orThrow().thread(),
            Materials.find("material", "C45").orThrow());

    private static Run run(Run.End end, List<Run.Land> lands, int... holes) {
        List<Happening.Tapped> cuts = new ArrayList<>();
        for (int count : holes) {
            cuts.add(new Happening.Tapped(
                    new Happening.Holes(count, false),
                    new Happening.Work(M8.subject().material().id(), Length.ofMm(12)),
                    new Happening.Felt(null, null, null)));
        }
        return new Run("T1", new Run.Span(Run.Start.NEW, end, null), cuts, lands);
    }

    @Test
    void atTheEndsOfItsLifeTheTapIsDue() {
        Run open = run(Run.End.OPEN, List.of(), 40);
        WearLaw law = WearLaw.of(List.of(open), M8);
        WearCurve curve = law.curve(open).value();
        Due due = law.dueIn(open).value();
        assertThat(curve.due()).isEqualTo(due);
        for (WearCurve.Point point : curve.points()) {
            double w = curve.limit().mm() * point.holes();
            assertThat(point.low().mm()).isEqualTo(w / due.life().high(), within(1e-12));
            assertThat(point.expected().mm()).isEqualTo(w / due.life().expected(), within(1e-12));
            assertThat(point.high().mm()).isEqualTo(w / due.life().low(), within(1e-12));
        }
        assertThat(curve.points().get(0).high().mm()).isZero();
        assertThat(curve.points().get(curve.points().size() - 1).holes())
                .isGreaterThanOrEqualTo(due.life().high());
    }

    /** A land of half the limit after 40 holes says a life of about 80; practice alone says 300. */
    @Test
    void aMeasuredLandBendsTheCurveToItselfAndStandsOnIt() {
        Run unseen = run(Run.End.OPEN, List.of(), 40);
        Run seen = run(Run.End.OPEN, List.of(new Run.Land(1, Length.ofMm(0.1))), 40);
        WearCurve before = WearLaw.of(List.of(unseen), M8).curve(unseen).value();
        WearCurve after = WearLaw.of(List.of(seen), M8).curve(seen).value();
        assertThat(after.due().life().expected()).isBetween(70.0, 110.0);
        assertThat(before.due().life().expected()).isGreaterThan(200);
        assertThat(after.seen()).hasSize(1);
        assertThat(after.seen().get(0).holes()).isEqualTo(40, within(1e-9));
        double low = 0.2 * 40 / after.due().life().high();
        double high = 0.2 * 40 / after.due().life().low();
        assertThat(after.seen().get(0).land().mm()).isBetween(low, high);
        assertThat(high - low)
                .isLessThan(0.2 * 40 / before.due().life().low()
                        - 0.2 * 40 / before.due().life().high()
                        + 0.1);
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        Run open = run(Run.End.OPEN, List.of(new Run.Land(1, Length.ofMm(0.08))), 40, 20);
        WorkingCheck.everyFormulaGivesItsFigure(
                WearLaw.of(List.of(open), M8).curve(open).steps());
    }
}
