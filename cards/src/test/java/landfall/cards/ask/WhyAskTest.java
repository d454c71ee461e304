// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import landfall.cards.Cards;
import landfall.cards.answer.JsonAnswer;
import landfall.fault.Finding;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("why: from a symptom to its causes")
class WhyAskTest {
    private static String json(Map<String, String> typed) {
        return JsonAnswer.line(new WhyAsk().answer(typed).orThrow(), false);
    }

    @Test
    void everyFigureHasItsStepAndEveryItemItsWords() {
        WorkSamples.documents().stream()
                .filter(document -> document.noun().equals("why"))
                .forEach(Walk::through);
    }

    @Test
    void aloneItListsTheSymptoms() {
        assertThat(json(Map.of()))
                .startsWith("{\"symptoms\":[{\"symptom\":\"oversize\",\"means\":")
                .contains("\"symptom\":\"built-up-edge\"");
    }

    @Test
    void causesStandUnderTheKeysOfTheContractBestFirst() {
        assertThat(json(Map.of("symptom", "oversize")))
                .contains("\"causes\":[{\"cause\":\"Chamfer ground unequal")
                .contains("\"check\":\"Dial each land")
                .contains("\"mend\":\"Regrind the chamfer true")
                .contains("\"likelihood\":\"likely\"");
    }

    @Test
    void aCardAndAWorkMaterialBringTheirFigures() {
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed("tap-m8.json"));
        typed.put("symptom", "torn flank");
        typed.put("material", "6061-T6");
        assertThat(json(typed))
                .contains("\"tap\":{\"chip\":{\"value\":")
                .contains("6061-T6")
                .contains("\"hole\":{\"minor\":{\"min\":6.647");
    }

    @Test
    void anUnknownSymptomIsRefusedWithTheNearest() {
        Finding finding =
                new WhyAsk().answer(Map.of("symptom", "oversized")).findings().get(0);
        assertThat(finding.sentence())
                .startsWith("symptom: \"oversized\" is no symptom held here. To mend: did you mean oversize,")
                .endsWith("? All of them: why alone.");
    }

    @Test
    void badMaterialAndBadCardAreRefusedUnderTheirOwnNames() {
        assertThat(new WhyAsk()
                        .answer(Map.of("symptom", "taper", "material", "cheese"))
                        .findings())
                .extracting(Finding::field)
                .containsExactly("material");
        assertThat(new WhyAsk()
                        .answer(Map.of("symptom", "taper", "thread", "M8"))
                        .findings())
                .extracting(Finding::field)
                .contains("flutes.count");
    }
}
