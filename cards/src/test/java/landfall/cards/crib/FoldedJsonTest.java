// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import landfall.history.Happening;
import landfall.history.Standing;
import landfall.history.Status;
import landfall.history.Uses;
import landfall.quantity.Length;
import landfall.quantity.Torque;
import landfall.wear.Brief;
import landfall.wear.Run;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class FoldedJsonTest {
    private static final Instant FROM = Instant.parse("2026-01-05T07:00:00.123Z");

    @Test
    void aRunReadsBackAsItWas() {
        for (Run.End end : Run.End.values()) {
            for (List<Happening.Tapped> cuts : List.of(
                    List.<Happening.Tapped>of(),
                    List.of(cut(3, "1045", 12.7, null, null)),
                    List.of(cut(3, "1045", 12.7, 5.9, null), cut(40, "", 1 / 3.0, 2.0, Happening.Feel.HEAVY)),
                    List.of(cut(3, "", 9, 5.9, null), cut(40, "", 9, 0.1 + 0.2, Happening.Feel.FRESH)))) {
                Brief run = Brief.of(new Run(
                        "T-1",
                        new Run.Span(Run.Start.SHARPENED, end, FROM),
                        cuts,
                        List.of(new Run.Land(cuts.size(), Length.ofMm(0.1 + 0.2)))));
                assertThat(FoldedJson.run("T-1", end, FoldedJson.run(run))).isEqualTo(run);
            }
        }
        Brief untouched =
                Brief.of(new Run("T-1", new Run.Span(Run.Start.UNKNOWN, Run.End.OPEN, null), List.of(), List.of()));
        assertThat(FoldedJson.run(untouched)).isEqualTo("{\"start\":\"UNKNOWN\"}");
    }

    @Test
    void howAThingStandsReadsBackAsItWas() {
        LocalDate due = LocalDate.parse("2027-03-01");
        Standing.Condition all = new Standing.Condition(
                new Happening.Sizes(Length.ofMm(0.2), Length.ofMm(7.21), Length.ofInch(0.7), Length.ofMm(2.6)),
                false,
                true,
                due);
        Standing.Condition none =
                new Standing.Condition(new Happening.Sizes(null, null, null, null), null, false, null);
        for (Standing.Condition condition : List.of(all, none)) {
            Standing standing = new Standing(
                    Status.ON_HAND, "", new Uses(3, 2, condition == all, 1), condition, new Standing.Last(1, FROM));
            String text = FoldedJson.standing(standing);
            assertThat(FoldedJson.condition(text, condition.calibrationDue())).isEqualTo(condition);
            assertThat(FoldedJson.about(text)).isEqualTo(condition == all);
        }
    }

    private static Happening.Tapped cut(
            int holes, String material, double mm, @Nullable Double nm, Happening.@Nullable Feel feel) {
        return new Happening.Tapped(
                new Happening.Holes(holes, holes == 40),
                new Happening.Work(material.isEmpty() ? null : material, Length.ofMm(mm)),
                new Happening.Felt(nm == null ? null : Torque.ofNm(nm), feel, null));
    }
}
