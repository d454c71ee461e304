// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import landfall.cards.Cards;
import landfall.fault.Answer;
import landfall.history.Event;
import landfall.history.Happening;
import landfall.history.History;
import landfall.route.GaugeOnHand;
import landfall.route.Route;
import landfall.working.Worked;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A job as it is typed")
class JobCardTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 30);

    private static List<String> amiss(String text) {
        return ((JobCard.Bad) JobCard.of(JobText.read(text)))
                .amiss().stream().map(one -> one.placed().sentence()).toList();
    }

    private static JobCard good(String text) {
        JobCard.Read read = JobCard.of(JobText.read(text));
        assertThat(read).isInstanceOf(JobCard.Good.class);
        return ((JobCard.Good) read).card();
    }

    @Test
    void theExampleIsRead() {
        JobCard card = good(Cards.text("job-bearing-block.csv"));
        assertThat(card.holes()).hasSize(5);
        assertThat(card.holes().get(1).get("note")).isEqualTo("from the far side, after milling");
        assertThat(card.lines().get(2).place().depth().inch()).isEqualTo(0.5);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "commas|callout,material,depth,kind,count,note\\nM8,C45,16,blind,4,\"say \"\"oil\"\"\"",
                "semicolons|Count;KIND;depth;material;callout;note\\n4;blind;16;C45;M8;say \"oil\"",
                "tabs|callout\\tmaterial\\tdepth\\tkind\\tcount\\tnote\\r\\nM8\\tC45\\t16\\tblind\\t4\\tsay \"oil\"",
                "a mark of order and remarks|BOM# holes\\n\\ncallout,material,depth,kind,count,note\\nM8,C45,16,blind,4,\"say \"\"oil\"\"\"\\n"
            })
    void aTableIsReadAsPeopleKeepIt(String how, String text) {
        JobCard card = good(text.translateEscapes().replace("BOM", "\uFEFF"));
        assertThat(card.holes())
                .as(how)
                .containsExactly(Map.of(
                        "callout",
                        "M8",
                        "material",
                        "C45",
                        "depth",
                        "16 mm",
                        "kind",
                        "blind",
                        "count",
                        "4",
                        "note",
                        "say \"oil\""));
    }

    @Test
    void everyCellOfEveryLineIsJudged() {
        assertThat(
                        amiss(
                                "callout,material,depth,kind,count\nM8 by hand,C45,,through,4\nM8,kryptonite,1e9 mm,sideways,many\n"))
                .hasSize(6)
                .anySatisfy(said -> assertThat(said)
                        .isEqualTo("line 2, depth: \"\" is needed: depth of full thread, from the face. To mend: give a"
                                + " length: 11.5 mm, 27/64, .4375, 6 thou, such as 16 mm."))
                .anySatisfy(said -> assertThat(said).startsWith("line 2, callout: \"M8 by hand\""))
                .anySatisfy(said -> assertThat(said).startsWith("line 3, material: \"kryptonite\""))
                .anySatisfy(said -> assertThat(said)
                        .isEqualTo("line 3, kind: \"sideways\" must be one of blind, through. To mend: write blind, the"
                                + " nearest, or another of them."))
                .anySatisfy(said -> assertThat(said)
                        .isEqualTo(
                                "line 3, count: \"many\" is not a whole number. To mend: write a whole number from 1 to"
                                        + " 100000."));
    }

    @Test
    void columnsThatAreNotUnderstoodAreToldBeforeAnyLine() {
        assertThat(amiss("callout,matrial,depth,kind,depth\nM8,C45,16,blind,4"))
                .containsExactly(
                        "columns: \"matrial\" is not a column of holes. To mend: did you mean material? Begin with"
                                + " callout,material,depth,kind,count,label,note.",
                        "columns: \"depth\" stands twice. To mend: leave one of the two out.",
                        "columns: \"callout,matrial,depth,kind,depth\" have no material. To mend: begin with"
                                + " callout,material,depth,kind,count,label,note.",
                        "columns: \"callout,matrial,depth,kind,depth\" have no count. To mend: begin with"
                                + " callout,material,depth,kind,count,label,note.");
    }

    @Test
    void aTextThatIsNothingIsRefused() {
        assertThat(amiss("")).hasSize(1);
        assertThat(amiss("# only a remark\n")).hasSize(1);
        assertThat(amiss("callout,material,depth,kind,count\n").get(0)).contains("a job has one line at least");
        assertThat(amiss("{\"holes\":[]}").get(0)).contains("a job has one line at least");
        assertThat(amiss("{\"name\":\"x\"}").get(0)).contains("has no list of holes");
        assertThat(amiss("{\"holes\":[{\"callout\":\"M8\",\"callout\":\"M6\"}]}")
                        .get(0))
                .contains("is not JSON");
        assertThat(amiss("{\"holes\":[7,{\"callout\":{\"a\":1}}]}"))
                .anySatisfy(said -> assertThat(said).startsWith("line 1, holes: \"7\" is no line of holes"))
                .anySatisfy(said -> assertThat(said).startsWith("line 2, callout: \"{..}\" must be one value"));
        assertThat(amiss("callout,material,depth,kind,count\nM8,C45,\"16,blind,4")
                        .get(0))
                .contains("has a quotation mark that is not closed");
    }

    @Test
    void moreLinesThanADrawingHasAreRefused() {
        String table = "callout,material,depth,kind,count\n" + "M8,C45,16,blind,4\n".repeat(501);
        assertThat(amiss(table))
                .containsExactly(
                        "holes: \"501 lines\" are more than 500. To mend: part the drawing into several jobs.");
    }

    @Test
    void whatHasNoRouteIsToldByTheLineOfTheFile() {
        JobGiven given = JobText.read("callout,material,depth,kind,count\n\n1/8-27 NPT,C45,.4,blind,1\n");
        JobCard card = ((JobCard.Good) JobCard.of(given)).card();
        Answer<Worked<Route>> route = JobPlan.of(card, JobPlan.Holds.NOTHING, TODAY);
        assertThat(JobPlan.amiss(route, given))
                .extracting(one -> one.at() + " " + one.finding().field())
                .containsExactly("3 callout");
    }

    @Test
    void gaugesOfTheShopsCardCountWhereTheCribHasNoneOfTheKind() {
        JobCard card = ((JobCard.Good)
                        JobCard.of(JobText.read("callout,material,depth,kind,count\nM8x1.25-6H,C45,16,blind,4\n")
                                .with(Map.of("gauges", "M8x1.25-6H GO plug, M8x1.25-6H NOT GO plug, M8 ring"))))
                .card();
        Route named = JobPlan.of(card, JobPlan.Holds.NOTHING, TODAY).orThrow().value();
        assertThat(named.holes().get(0).gauge().lack()).isEmpty();
        GaugeOnHand late = ShopGauges.of(
                        "G-8",
                        Map.of("gauge", "GO / NOT GO plug", "thread", "M8x1.25-6H"),
                        History.of(List.of(new Event(
                                1,
                                java.time.Instant.EPOCH,
                                "Ida",
                                new Happening.Calibrated(true, LocalDate.of(2026, 11, 29))))))
                .orElseThrow();
        Route kept = JobPlan.of(card, new JobPlan.Holds(landfall.route.TapShelf.BARE, List.of(late)), TODAY)
                .orThrow()
                .value();
        assertThat(kept.holes().get(0).gauge().lack())
                .extracting(lack -> lack.says())
                .containsExactly("G-8 was due for calibration on 2026-11-29");
        assertThat(ShopGauges.of("R", Map.of("gauge", "GO ring", "thread", "M8"), History.of(List.of())))
                .isEmpty();
        assertThat(ShopGauges.of(List.of("a feeler")).findings().get(0).why()).isEqualTo("is no gauge of a thread");
    }

    @Test
    void theCardReadsBackToItself() {
        JobCard card = good(Cards.text("job-bearing-block.csv"));
        assertThat(JobCard.of(card.given())).isEqualTo(new JobCard.Good(card));
    }
}
