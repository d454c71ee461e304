// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import landfall.cards.Cards;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.answer.TextAnswer;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("cut: one tap in one hole")
class CutAskTest {
    private static Answer<Document> m8(String... typed) {
        Map<String, String> map = new LinkedHashMap<>(Cards.typed("tap-m8.json"));
        map.putAll(Map.of("cuts", "C45", "hole", "6.8 mm", "depth", "12 mm"));
        for (int i = 0; i < typed.length; i += 2) {
            map.put(typed[i], typed[i + 1]);
        }
        return new CutAsk().answer(map);
    }

    @Test
    void theContractsKeysAnswerAndEveryFigureHasItsStep() {
        Document document =
                m8("blind", "yes", "run-out", "0.02", "drive", "drill-press").orThrow();
        Walk.through(document);
        WorkingCheck.everyFormulaGivesItsFigure(document.working());
        assertThat(JsonAnswer.line(document, false))
                .contains("\"chip\":{\"thickness\":{\"value\":0.0651810", "\"radialStep\":", "\"teeth\":")
                .contains("\"slices\":[{\"tooth\":1,\"area\":{\"value\":", "\"totalArea\":", "\"direction\":\"stays\"")
                .contains("\"torque\":{\"low\":", "\"breaking\":{\"low\":", "\"margin\":{\"low\":")
                .contains("\"section\":{\"outer\":{\"value\":7.18810", "\"stiffness\":", "\"stress\":", "\"strength\":")
                .contains("\"chipRoom\":{\"clearAfterDepth\":{\"low\":")
                .contains("\"chipBreak\":{\"forwardTurns\":{\"value\":", "\"backTurns\":{\"value\":0.22988")
                .contains("\"speed\":{\"low\":6", "\"unit\":\"m/min\"", "\"spindle\":", "\"time\":", "\"overrun\":");
    }

    @Test
    void inchTapsAnswerInInches() {
        Map<String, String> half = new LinkedHashMap<>(Cards.typed("tap-half-13-worn.json"));
        half.putAll(Map.of("hole", "27/64", "depth", ".75", "wear", "due"));
        Document document = new CutAsk().answer(half).orThrow();
        Walk.through(document);
        assertThat(JsonAnswer.line(document, false))
                .contains("\"unit\":\"in\"", "\"unit\":\"N·m\"", "\"unit\":\"in²\"");
        assertThat(TextAnswer.write(document, false)).contains("4140 annealed");
    }

    @Test
    void spiralFlutesHaveNoTurnsBetweenChipBreaks() {
        Document document =
                m8("flutes.kind", "spiral-right", "flutes.helix", "35 deg").orThrow();
        assertThat(JsonAnswer.line(document, false))
                .contains("\"direction\":\"back\"")
                .doesNotContain("chipBreak");
    }

    /** Way, bar, slip, feed and heights: each has its key, each figure its step. */
    @Test
    void theWayOfTurningHasItsFigures() {
        Document hand = m8("drive", "hand", "bar", "200 mm", "heights", "0.02; 0; -0.01 mm")
                .orThrow();
        Walk.through(hand);
        assertThat(JsonAnswer.line(hand, false))
                .contains("\"bar\":{\"safe\":", "\"breaks\":", "\"gives\":{\"low\":5,", "\"thickest\":")
                .contains(
                        "\"torqueCurve\":[{\"phase\":\"entering\",\"depth\":{\"value\":1.25",
                        "\"phase\":\"reversing\"");
        Document mill = m8("drive", "mill", "holder", "slip", "feed", "1.24 mm", "shank.neck", "6 mm")
                .orThrow();
        Walk.through(mill);
        assertThat(JsonAnswer.line(mill, false))
                .contains("\"slip\":{\"min\":", "\"feedError\":{\"value\":-0.096", "\"axialForce\":{\"low\":")
                .contains("\"part\":\"neck\"");
    }

    @Test
    void aRunOutBesideHeightsIsRefused() {
        assertThat(m8("run-out", "0.02", "heights", "0; 0; 0").findings())
                .extracting(Finding::sentence)
                .containsExactly("heights: \"beside a run-out\" must be given without one. To mend: leave the run-out"
                        + " or the heights out.");
    }

    @Test
    void whatIsNotToldIsAssumedAloud() {
        assertThat(m8().orThrow().cautions()).extracting(Caution::code).contains("wearAssumed");
        assertThat(m8("wear", "spent").orThrow().cautions())
                .extracting(Caution::code)
                .doesNotContain("wearAssumed");
    }

    @Test
    void materialHoleAndDepthAreNeeded() {
        assertThat(new CutAsk().answer(Cards.typed("tap-m8.json")).findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "cuts: \"\" is needed: work material that the tap is to cut. To mend: give a work"
                                + " material by one of"
                                + " its names: 4140 annealed, 304, EN AW-6061 T6, such as 4140 annealed.",
                        "hole: \"\" is needed: diameter of the hole before tapping. To mend: give a diameter: 11.5 mm,"
                                + " 27/64, .4375, #7, F, such as 6.8 mm.",
                        "depth: \"\" is needed: depth of full thread, from the face. To mend: give a length:"
                                + " 11.5 mm, 27/64, .4375, 6 thou,"
                                + " such as 12 mm.");
    }

    @Test
    void blindAndThroughIsRefused() {
        assertThat(m8("blind", "yes", "through", "yes").findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "blind: \"blind and through\" cannot both be. To mend: say which of the two the hole is.");
    }
}
