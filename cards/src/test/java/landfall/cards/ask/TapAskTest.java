// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.fault.Answer;
import landfall.fault.Finding;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("tap: which tap suits a hole")
class TapAskTest {
    private static Answer<Document> answer(String... typed) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < typed.length; i += 2) {
            map.put(typed[i], typed[i + 1]);
        }
        return new TapAsk().answer(map);
    }

    private static String json(String... typed) {
        return JsonAnswer.line(answer(typed).orThrow(), false);
    }

    @Test
    void everyFigureHasItsStepAndEveryItemItsWords() {
        WorkSamples.documents().stream()
                .filter(document -> document.noun().equals("tap"))
                .forEach(Walk::through);
    }

    @Test
    void choicesStandUnderTheKeysOfTheContractBestFirst() {
        assertThat(json("thread", "M8x1.25-6H", "material", "1018", "depth", "12 mm", "blind", "yes", "machine", "yes"))
                .contains("\"choices\":[{\"flutes\":\"spiral-right\",\"chamfer\":\"form C, 2 to 3 threads\","
                        + "\"limit\":\"class 2 (ISO 2)\",\"reach\":{\"value\":19,\"unit\":\"mm\"")
                .contains("\"reasons\":[\"Brings the chips back out of a blind hole.\"")
                .contains("\"rake\":{\"min\":10,\"max\":15,\"unit\":\"deg\"");
    }

    @Test
    void aLeftHandThreadIsTheMirrorOfARightHandOne() {
        String right = json("thread", "M8x1.25-6H", "material", "1018", "blind", "yes");
        String left = json("thread", "M8x1.25-6H-LH", "material", "1018", "blind", "yes");
        String mirrored = right.replace("spiral-right", "*")
                .replace("spiral-left", "spiral-right")
                .replace("*", "spiral-left")
                .replace("M8x1.25-6H", "M8x1.25-6H-LH")
                .replace("\"hand\":\"right\"", "\"hand\":\"left\"");
        assertThat(left.replaceFirst(",\\{\"code\":\"leftHand\".*?\\}", "")).isEqualTo(mirrored);
        assertThat(left).contains("\"leftHand\"");
    }

    @Test
    void whatCannotBothBeIsRefused() {
        assertThat(answer("thread", "M8", "hand", "yes", "machine", "yes", "blind", "yes", "through", "yes")
                        .findings())
                .extracting(Finding::field)
                .containsExactly("through", "machine");
        assertThat(answer("thread", "M8", "material", "cheese")
                        .findings()
                        .get(0)
                        .why())
                .isEqualTo("is not in the list of materials");
    }
}
