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

    /** The stock of the set-up and .05 of allowance, of 11 mm of thread to lose, of a tap worth 30. */
    @Test
    void theMetalHasItsShareAndItsWorth() {
        Document document = MendSamples.decide(Map.of("wear", "0.2 mm", "price", "30 eur"));
        assertThat(json(document))
                .contains("\"currency\":\"EUR\"")
                .contains("\"share\":{\"value\":1.67")
                .contains("\"cost\":{\"value\":0.503")
                .contains("\"cost\":{\"value\":30,\"unit\":\"money\"")
                .contains("\"hold\":{\"way\":\"collet\"")
                .contains("\"index\":{\"value\":120,");
        assertThat(json(MendSamples.decide(Map.of("wear", "0.2 mm", "price", "30"))))
                .doesNotContain("currency")
                .doesNotContain("wearAssumed");
        assertThat(json(MendSamples.decide(Map.of()))).contains("wearAssumed").doesNotContain("\"cost\"");
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed("tap-m8.json"));
        typed.put("price", "cheap");
        assertThat(new DecideAsk().answer(typed).findings())
                .extracting(Finding::sentence)
                .containsExactly("price: \"cheap\" is no amount of money. To mend: write an amount of money, its"
                        + " currency if you like: 24.50, 24.50 EUR.");
    }

    @Test
    void scrapIsOpenOnlyWhereNothingElseIs() {
        assertThat(json(MendSamples.decide(Map.of())))
                .contains("{\"way\":\"scrap\",\"open\":false,\"reason\":\"another way mends the tap");
        assertThat(json(MendSamples.decide(Map.of("torn", "18 mm"))))
                .contains("\"way\":\"scrap\",\"why\":\"no other way mends the tap");
    }

    @Test
    void oversizeIsABoundAndThePointIsMeasured() {
        assertThat(json(MendSamples.inspect(
                        Map.of("run-out", "0.02", "point-diameter", "6.37", "ground-back", "0.19"))))
                .contains("\"oversize\":{\"min\":0,\"max\":0.02,\"unit\":\"mm\"")
                .contains("{\"check\":\"pointDiameter\",\"verdict\":\"good\"");
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
