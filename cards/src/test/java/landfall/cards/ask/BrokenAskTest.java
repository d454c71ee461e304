// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.answer.TextAnswer;
import landfall.fault.Finding;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("broken: a broken tap in its hole")
class BrokenAskTest {
    @Test
    void waysComeWithHowCostAndRiskAndEveryFigureHasItsStep() {
        Document document = new BrokenAsk()
                .answer(Map.of(
                        "thread",
                        "1/4-20 UNC-2B",
                        "material",
                        "6061-T6",
                        "depth",
                        ".5",
                        "blind",
                        "yes",
                        "flutes",
                        "4",
                        "proud",
                        "0",
                        "worth",
                        "high"))
                .orThrow();
        Walk.through(document);
        WorkingCheck.everyFormulaGivesItsFigure(document.working());
        assertThat(JsonAnswer.line(document, false))
                .contains("\"ways\":[{\"way\":\"Spark erosion\",\"fits\":true,\"how\":", "\"cost\":", "\"risk\":")
                .contains("\"core\":{\"min\":0.1125,", "\"tool\":{\"min\":0.1375,\"max\":0.19587")
                .contains("\"insert\":{\"callout\":\"STI 1/4-20 UNC\",\"minor\":{\"min\":0.2608");
        assertThat(TextAnswer.write(document, false)).contains("Stop after one careful try by hand");
    }

    @Test
    void everyBadFieldIsRefused() {
        assertThat(new BrokenAsk()
                        .answer(Map.of("thread", "M8x1.25-6H", "worth", "dear", "flutes", "0"))
                        .findings())
                .extracting(Finding::field)
                .containsExactlyInAnyOrder("worth", "flutes");
        assertThat(new BrokenAsk()
                        .answer(Map.of("thread", "M8x1.25-6H", "blind", "yes", "through", "yes"))
                        .findings())
                .extracting(Finding::sentence)
                .containsExactly("through: \"blind and through\" cannot both be. To mend: leave one of the two out.");
    }
}
