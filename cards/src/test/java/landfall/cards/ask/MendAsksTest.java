// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import landfall.cards.Cards;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.fault.Finding;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("decide and inspect")
class MendAsksTest {
    private static String json(Document document) {
        Walk.through(document);
        return JsonAnswer.line(document, false);
    }

    @Test
    void aWearLandIsGroundOffTheChamfer() {
        assertThat(json(MendSamples.decide(Map.of("wear", "0.2 mm"))))
                .contains("\"way\":\"chamfer\"")
                .contains("\"face\":{\"offset\":");
    }

    @Test
    void tornThreadsAreCutOff() {
        assertThat(json(MendSamples.decide(Map.of("torn", "3 mm"))))
                .contains("\"way\":\"cut-off\"")
                .contains("cutSquare");
    }

    @Test
    void theNewChamferIsThatOfTheFormula() {
        // tan κ_b = (8 − 6.4)/(2·1.5·1.25) = 0.42667, so 23.106 deg
        assertThat(json(MendSamples.decide(Map.of("new-chamfer-threads", "1.5"))))
                .contains("\"newChamfer\":{\"angle\":{\"value\":23.106");
    }

    @Test
    void withoutReadingsTheListSaysWhatToMeasure() {
        assertThat(json(MendSamples.inspect(Map.of())))
                .contains("\"verdict\":\"to do\"")
                .doesNotContain("\"verdict\":\"bad\"");
    }

    @Test
    void readingsAreJudged() {
        String good = json(MendSamples.inspect(
                Map.of("chamfer-lengths", "5.05; 5.05; 5.05", "falls", "0.26; 0.26; 0.26", "run-out", "0.01")));
        assertThat(good).contains("\"verdict\":\"good\"").doesNotContain("\"verdict\":\"bad\"");
        String bad = json(MendSamples.inspect(Map.of("run-out", "0.2", "falls", "0.26; 0.40; 0.1")));
        assertThat(bad).contains("\"verdict\":\"bad\"");
    }

    @Test
    void aLandThatWasForgottenIsAskedFor() {
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed("tap-m8.json"));
        typed.put("falls", "0.26; 0.27");
        assertThat(new InspectAsk().answer(typed).findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "falls: \"2 lands\" must be 3, one for each land, or none. To mend: measure every land,"
                                + " counted backwards from land 1.");
    }
}
