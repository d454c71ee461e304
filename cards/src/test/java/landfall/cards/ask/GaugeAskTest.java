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

@DisplayName("gauge: gauges, wires, V-anvil")
class GaugeAskTest {
    private static Answer<Document> answer(String... typed) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < typed.length; i += 2) {
            map.put(typed[i], typed[i + 1]);
        }
        return new GaugeAsk().answer(map);
    }

    private static String json(String... typed) {
        Document document = answer(typed).orThrow();
        Walk.through(document);
        return JsonAnswer.line(document, false);
    }

    /** Worked by hand in the method note: GO .2175 to .2178, NOT GO .2221 to .2224, pins .196 and .207. */
    @Test
    void aQuarterTwentyHoleAnswersUnderTheContractsKeys() {
        assertThat(json("thread", "1/4-20 UNC-2B"))
                .contains("\"go\":{\"pitch\":{\"min\":0.2175,\"max\":0.2178,\"unit\":\"in\"")
                .contains("\"notGo\":{\"pitch\":{\"min\":0.2221,\"max\":0.2224,\"unit\":\"in\"")
                .contains("\"plainGo\":{\"value\":0.196,\"unit\":\"in\"")
                .contains("\"plainNotGo\":{\"value\":0.207,\"unit\":\"in\"")
                .contains("\"wires\":{\"best\":{\"value\":0.0288675134595,\"unit\":\"in\"");
    }

    @Test
    void wiresGoBothWays() {
        assertThat(json("thread", "1/2-13", "wire", "0.050", "pitch-diameter", "0.45004"))
                .contains("\"over\":{\"value\":0.5335");
        assertThat(json("thread", "1/2-13", "wire", "0.050", "over", "0.53352"))
                .contains("\"pitchDiameter\":{\"value\":0.450");
    }

    @Test
    void anOddFlutedTapIsMeasuredInTheVAnvil() {
        assertThat(json("thread", "M10x1.5", "wire", "0.866", "flutes", "3", "reading", "10.2", "crest", "10.05"))
                .contains("\"vAnvil\":{\"angle\":{\"value\":60,\"unit\":\"deg\"")
                .contains("\"factor\":{\"value\":1.5,\"unit\":\"1\"")
                .contains("\"pitchDiameter\":{\"value\":9.2010");
    }

    @Test
    void aScrewIsGaugedByRings() {
        assertThat(json("thread", "M10x1.5-6g")).contains("\"kind\":\"ring\"");
    }

    @Test
    void halfAMeasurementIsRefusedAndEveryFaultSaid() {
        assertThat(answer("thread", "M10x1.5", "flutes", "3", "over", "10 mm", "pitch-diameter", "9 mm")
                        .findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "over: \"10.000 mm (0.3937 in)\" cannot stand beside pitch-diameter: each gives the"
                                + " other. To mend:"
                                + " leave one of the two out.",
                        "reading: \"flutes, reading or height, and crest: not all of them\" must be given"
                                + " together for a tap"
                                + " in a V-anvil. To mend: give flutes, reading and crest (or bearing wires instead of crest), or none of them.");
    }
}
