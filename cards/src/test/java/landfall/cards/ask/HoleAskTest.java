// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("hole: drill, depths and strength")
class HoleAskTest {
    private static Answer<Document> answer(String... typed) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < typed.length; i += 2) {
            map.put(typed[i], typed[i + 1]);
        }
        return new HoleAsk().answer(map);
    }

    private static String json(String... typed) {
        return JsonAnswer.line(answer(typed).orThrow(), false);
    }

    @Test
    void everyFigureHasItsStepAndEveryItemItsWords() {
        for (Document document : WorkSamples.documents()) {
            if (!document.noun().equals("hole")) {
                continue;
            }
            Walk.through(document);
            WorkingCheck.everyFormulaGivesItsFigure(document.working());
        }
    }

    @Test
    void anInchHoleAnswersUnderTheKeysOfTheContract() {
        String json = json("thread", "1/4-20 UNC-2B", "depth", "0.25", "blind", "yes");
        assertThat(json)
                .contains("\"minor\":{\"min\":0.202,\"max\":0.207,\"unit\":\"in\"")
                .contains("\"drill\":{\"name\":\"#7\",\"diameter\":{\"value\":0.201,\"unit\":\"in\"")
                .contains("\"share\":{\"value\":75.4404351741,\"unit\":\"%\"")
                .contains("\"expectedHole\":{\"low\":")
                .contains("\"depth\":{\"fullThread\":{\"value\":0.25,\"unit\":\"in\"")
                .contains("\"tapPoint\":{\"value\":0.35,\"unit\":\"in\"")
                .contains("\"tensileStressArea\":{\"value\":0.0318")
                .contains("\"unit\":\"in²/in\"")
                .contains("against the old full depth of 0.6495 P a side");
    }

    @Test
    void aMetricHoleIsInsideItsLimits() {
        assertThat(json("thread", "M8x1.25-6H"))
                .contains("\"minor\":{\"min\":6.647,\"max\":6.912,\"unit\":\"mm\"")
                .contains("\"name\":\"6.8 mm\"")
                .contains("\"inside\":true")
                .doesNotContain("\"depth\":");
    }

    @Test
    void aShopsOwnDrillsAreChosenFrom() {
        assertThat(json("thread", "1/4-20 UNC-2B", "drills", "13/64, #8, 5.1 mm, 5.05 mm"))
                .contains("\"drill\":{\"name\":\"5.1 mm\"");
        assertThat(json("thread", "M8x1.25-6H", "drills", "inch")).contains("\"drill\":{\"name\":\"H\"");
    }

    @Test
    void whatCannotBeIsRefusedAllAtOnce() {
        assertThat(answer("thread", "M8", "blind", "yes", "through", "yes", "forming", "yes", "tap", "straight")
                        .findings())
                .extracting(Finding::field)
                .containsExactly("through", "tap");
        assertThat(answer("thread", "M8", "drills", "metric, sevenish", "material", "cheese", "share", "0.7")
                        .findings())
                .extracting(Finding::field)
                .containsExactly("material", "drills", "share");
    }

    @Test
    void anExternalClassHasNoHole() {
        assertThat(answer("thread", "M8x1.25-6g").findings().get(0).why()).isEqualTo("names the external thread only");
    }

    /** M8 out of letter drills only: H is .266 in, 6.756 mm, 76.6 %. */
    @Test
    void aShopCardsDrawersAndUnitsAreTaken() {
        String shop = "{\"drills\":[\"letter\"],\"units\":\"inch\"}";
        Document document = new HoleAsk()
                .answer(Map.of("thread", "M8x1.25-6H", "shop", shop))
                .orThrow();
        assertThat(JsonAnswer.line(document, false))
                .contains("\"drill\":{\"name\":\"H\",\"diameter\":{\"value\":0.266,\"unit\":\"in\"");
        Document named = new HoleAsk()
                .answer(Map.of("thread", "M8x1.25-6H", "shop", shop, "drills", "metric"))
                .orThrow();
        assertThat(JsonAnswer.line(named, false)).contains("\"name\":\"6.8 mm\"");
        assertThat(new HoleAsk()
                        .answer(Map.of("thread", "M8x1.25-6H", "shop", "{\"drils\":[]}"))
                        .findings())
                .extracting(Finding::field)
                .containsExactly("shop.drils");
    }
}
