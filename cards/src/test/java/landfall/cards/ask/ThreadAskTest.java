// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.UnitSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("thread: limits of size of a call-out")
class ThreadAskTest {
    private static Document document(String... typed) {
        return answer(typed).orThrow();
    }

    private static Answer<Document> answer(String... typed) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < typed.length; i += 2) {
            map.put(typed[i], typed[i + 1]);
        }
        return new ThreadAsk().answer(map);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "M8",
                "M8x1.25-6H",
                "M8x1-6g",
                "M10x1.5-6H-LH",
                "M16xPh3P1.5-6H",
                "M3",
                "M64",
                "1/4-20 UNC-2B",
                "1/4-20 UNC-2A",
                "1/2-13",
                "10-32 UNF-2B-LH",
                "#0-80 UNF",
                "1 1/8-7 UNC-2A",
                "5/8-11 UNC-3B",
                "1-16 UN-2A",
                "M6-5g6g",
                "M2x0.4",
                "M1.6",
                "1/4-28 UNF-3A",
                "1/4-28 UNJF-3A",
                "1/4-28 UNJF-3B",
                "MJ6x1",
                "1/2-14 NPT",
                "3 NPTF",
                "G 1/2",
                "G 3/4 B",
                "R 1/2",
                "Rc 2-LH",
                "Rp 1/2",
                "1/4 BSW",
                "1/4 BSF-close",
                "2 BA",
                "6 BA-close",
                "1/2-10 ACME",
                "1/2-10 STUB ACME",
                "1.0000-0.2P-0.4L ACME-3G",
                "Tr40x7",
                "Tr40x14(P7)-7e-LH",
                "STI M6x1-5H",
                "STI 1/4-20",
                "0.2500-0.05P-0.1L UNS-2A",
                "19/64-36 UNS",
                "M10x0.9",
                "1/4-20 UNC-2A LE 0.7"
            })
    void everyFigureHasItsStepAndEveryItemItsWords(String callOut) {
        Walk.through(document("thread", callOut));
    }

    /** Limits of 1/4-20 UNC-2B as the handbook prints them: pitch .2175 to .2224, minor .196 to .207, major .2500. */
    @Test
    void anInchCallOutAnswersInInchWithItsSideOnly() {
        Document document = document("thread", "1/4-20 UNC-2B");
        assertThat(document.units()).isEqualTo(UnitSystem.INCH);
        assertThat(JsonAnswer.line(document, false))
                .startsWith("{\"callout\":\"1/4-20 UNC-2B\",\"display\":\"1/4-20 UNC-2B\",\"family\":\"unified\","
                        + "\"hand\":\"right\",\"starts\":1,\"pitch\":{\"value\":0.05,\"unit\":\"in\",\"step\":\"p\"},"
                        + "\"lead\":{\"value\":0.05,\"unit\":\"in\",\"step\":\"L\"},\"internal\":{\"class\":\"2B\","
                        + "\"major\":{\"min\":0.25,\"max\":null,\"unit\":\"in\"")
                .contains("\"pitch\":{\"min\":0.2175,\"max\":0.2224,\"unit\":\"in\"")
                .contains("\"minor\":{\"min\":0.196,\"max\":0.207,\"unit\":\"in\"")
                .doesNotContain("external");
    }

    @Test
    void aMetricCallOutWithoutClassGivesBothSides() {
        assertThat(JsonAnswer.line(document("thread", "M8"), false))
                .contains("\"callout\":\"M8x1.25\"")
                .contains("\"display\":\"M8×1.25\"")
                .contains("\"internal\":{\"class\":\"6H\"")
                .contains("\"external\":{\"class\":\"6g\"")
                .contains("\"unit\":\"mm\"")
                .doesNotContain("\"unit\":\"in\"");
    }

    @Test
    void unitsChangeTheFiguresAndNothingElse() {
        Document metric = document("thread", "M8x1.25-6H");
        Document inch = document("thread", "M8x1.25-6H", "units", "inch");
        assertThat(inch.items()).isEqualTo(metric.items());
        assertThat(JsonAnswer.line(inch, false)).contains("\"pitch\":{\"value\":0.0492125984252,\"unit\":\"in\"");
    }

    @Test
    void aWrongCallOutAndAWrongOptionAreBothRefused() {
        assertThat(answer("thread", "M8x1.25-6Q", "units", "feet").findings())
                .extracting(Finding::field)
                .containsExactly("thread", "units");
        assertThat(answer("thread", "M8x1.25-6Q").findings().get(0).mend()).isNotBlank();
        assertThat(answer().findings().get(0).why()).isEqualTo("is needed: call-out of the thread");
    }
}
