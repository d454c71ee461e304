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

@DisplayName("gauge: the verdict on what lies on the bench; marking")
class VerdictAskTest {
    private static Answer<Document> gauge(String... typed) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < typed.length; i += 2) {
            map.put(typed[i], typed[i + 1]);
        }
        return new GaugeAsk().answer(map);
    }

    private static String json(Answer<Document> answer) {
        Document document = answer.orThrow();
        Walk.through(document);
        return JsonAnswer.line(document, false);
    }

    /** The worked example of docs/methods/verdicts.md. */
    @Test
    void aTapOverWiresIsJudgedByItsMarkAndByTheHoleItCuts() {
        assertThat(json(gauge(
                        "thread",
                        "1/4-20 UNC-2B",
                        "marking",
                        "H3",
                        "pitch-diameter",
                        ".2180",
                        "uncertainty",
                        ".0001",
                        "run-out",
                        ".0008",
                        "rings",
                        "0")))
                .contains("\"tap\":{\"marking\":\"H3\",\"pitch\":{\"min\":0.2185,\"max\":0.219,\"unit\":\"in\"")
                .contains("\"major\":{\"min\":0.2532,\"max\":0.2565,\"unit\":\"in\"")
                .contains("\"part\":\"tap\",\"verdict\":\"GO\"")
                .contains("\"inLimits\":\"NOT_GO\",\"worn\":\"yes\"")
                .contains("\"low\":0.2179,\"expected\":0.2184,\"high\":0.2189,\"unit\":\"in\"")
                .contains(
                        "\"goPlug\":\"GO\",\"notGoPlug\":\"GO\",\"words\":\"GO will enter, NOT GO will be kept out\"");
    }

    @Test
    void theUncertaintyStandsBesideThePitchDiameterWhenTheReadingsIsTold() {
        assertThat(json(gauge(
                        "thread",
                        "M10x1.5",
                        "over",
                        "10.33",
                        "uncertainty",
                        "0.004 mm",
                        "wire-uncertainty",
                        "0.001 mm")))
                .contains("\"uncertainty\":{\"value\":0.005")
                .contains("{\"what\":\"size over the wires\",\"share\":{\"value\":6")
                .doesNotContain("\"found\"");
    }

    @Test
    void withoutAToldUncertaintyAVerdictSaysWhatItTook() {
        Document document =
                gauge("thread", "M10x1.5", "over", "10.33", "marking", "ISO 2").orThrow();
        assertThat(document.cautions()).first().satisfies(caution -> {
            assertThat(caution.code()).isEqualTo("uncertaintyAssumed");
            assertThat(caution.text()).contains("0.0040 mm", "0.0005 mm", "common practice");
        });
    }

    @Test
    void aHoleIsJudgedByPinPlugsAndTurns() {
        assertThat(json(gauge(
                        "thread",
                        "M10x1.5-6H",
                        "pin",
                        "8.6",
                        "go",
                        "yes",
                        "go-turns",
                        "9",
                        "not-go-turns",
                        "1",
                        "depth",
                        "12 mm")))
                .contains("\"part\":\"hole\",\"verdict\":\"GO\"")
                .contains("\"gauged\":[{\"what\":\"GO plug\",\"verdict\":\"GO\",\"why\":\"runs the whole length\"}")
                .contains("\"fullThread\":{\"min\":12,\"max\":13.5,\"unit\":\"mm\"");
    }

    @Test
    void aTaperPlugTellsHowManyTurnsMore() {
        assertThat(json(gauge("thread", "1/2-14 NPT", "standoff", ".1")))
                .contains("\"taperPlug\":{\"notch\":{\"value\":0.32,\"unit\":\"in\"")
                .contains("\"moreTurns\":{\"value\":1.4,\"unit\":\"1\"")
                .contains("\"verdict\":\"NOT_GO\"");
    }

    @Test
    void whatDoesNotGoTogetherIsRefused() {
        assertThat(gauge("thread", "M8", "pin", "6.7", "marking", "D5").findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "marking: \"given\" is found on a tap, but another part lies on the bench. To mend: leave it"
                                + " out, or say what part it is.");
        assertThat(gauge("thread", "M8", "crest", "8.05").findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "crest: \"8.050 mm (0.3169 in)\" is measured on a tap or a screw, and none lies on the bench."
                                + " To mend: write part tap or part screw, or leave it out.");
        assertThat(gauge("thread", "M8", "marking", "Q4").findings())
                .extracting(Finding::why)
                .containsExactly("is no mark that is known here");
        assertThat(gauge("thread", "M8", "standoff", "2 mm").findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "standoff: \"2.000 mm (0.0787 in)\" must be asked of a taper thread, as 1/2-14 NPT or Rc 1/2."
                                + " To mend: gauge a parallel thread by GO and NOT GO.");
        assertThat(gauge("thread", "M8", "marking", "H3").findings())
                .extracting(Finding::field)
                .containsExactly("limit");
    }

    @Test
    void aMarkingIsExplainedPartByPart() {
        assertThat(json(new MarkingAsk().answer(Map.of("marking", "3/8-16 NC LH HS G H3"))))
                .contains("\"callout\":\"3/8-16 UNC-LH\",\"hand\":\"left\"")
                .contains(
                        "{\"text\":\"G H3\",\"kind\":\"limit\",\"means\":\"limit of pitch diameter: H3, ground thread\"")
                .contains("\"pitch\":{\"min\":0.3354,\"max\":0.3359,\"unit\":\"in\"")
                .contains("\"written\":\"3/8-16 UNC LH HS G H3\"");
        assertThat(new MarkingAsk().answer(Map.of("marking", "HSS")).findings())
                .extracting(Finding::field)
                .containsExactly("marking");
    }
}
