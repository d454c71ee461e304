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
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("life: sharpenings left")
class LifeAskTest {
    private static Answer<Document> answer(String card, String... more) {
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed(card));
        for (int i = 0; i < more.length; i += 2) {
            typed.put(more[i], more[i + 1]);
        }
        return new LifeAsk().answer(typed);
    }

    /** By hand: stock of the grind set-up and 0.05 mm allowance into 11 mm of thread; face w/(1 - tan a tan g)/R. */
    @Test
    void theContractsCardAnswersUnderItsKeys() {
        Document document = answer("tap-m8.json").orThrow();
        Walk.through(document);
        double stock = document.figures().stream()
                .filter(shown -> shown.path().equals("life.chamfer.stock"))
                .findFirst()
                .orElseThrow()
                .point()
                .value();
        int byLength = (int) Math.floor(11 / (stock + 0.05) + 1e-9);
        int byPitch = (int) Math.floor((7.226 - 7.210) / (0.001 * (stock + 0.05)) + 1e-9);
        assertThat(JsonAnswer.line(document, false))
                .contains("\"allowance\":{\"value\":0.05,\"unit\":\"mm\",\"step\":\"s_0\"},\"count\":"
                        + Math.min(byLength, byPitch) + ",\"limit\":\""
                        + (byLength <= byPitch ? "threadLength" : "pitchDiameter") + "\"}")
                .contains("\"face\":{\"angle\":{\"value\":")
                .contains("\"limit\":\"landAngle\"");
    }

    @Test
    void everyFigureHasItsStep() {
        Walk.through(answer("tap-half-13-worn.json").orThrow());
        Walk.through(
                answer("tap-m10-left-hand.json", "wear", "spent", "cap", "4").orThrow());
        Walk.through(answer("tap-m8.json", "flutes.kind", "spiral-point", "reach", "14 mm")
                .orThrow());
    }

    @Test
    void whatEndsItIsACodeForProgramsAndWordsForPeople() {
        Document document = answer("tap-m10-left-hand.json", "wear", "due").orThrow();
        assertThat(JsonAnswer.line(document, false))
                .contains("\"limit\":\"threadLength\"")
                .contains("\"compared\":\"")
                .contains(" by the chamfer alone, 5 by the faces alone, ")
                .contains(" The chamfer gives ");
        assertThat(TextAnswer.write(document))
                .contains("Ended by                        thread length")
                .contains("Ended by                        land angle")
                .doesNotContain("threadLength");
    }

    /** One arc of 2.6 about 4.65: asin((25 + 6.76 - 21.6225)/(2 x 5 x 2.6)) = 22.95 deg. */
    @Test
    void theRakeOfOneArcComesFromItsForm() {
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed("tap-m10-left-hand.json"));
        typed.remove("flutes.rake");
        typed.remove("land.width");
        Document document = new LifeAsk().answer(typed).orThrow();
        Walk.through(document);
        assertThat(document.working()).anySatisfy(step -> {
            assertThat(step.symbol()).isEqualTo("γ_0");
            assertThat(step.value()).isCloseTo(22.95, org.assertj.core.api.Assertions.within(0.005));
        });
        assertThat(document.cautions())
                .extracting(Caution::code)
                .contains("rakeByArc", "wearAssumed", "reliefByMaterial");
    }

    @Test
    void theCoreEndsItWhereTheEndIsKept() {
        assertThat(JsonAnswer.line(
                        answer(
                                        "tap-m8.json",
                                        "end",
                                        "kept",
                                        "flutes.core",
                                        "5.9 mm",
                                        "flutes.rake",
                                        "10 deg",
                                        "land.width",
                                        "2.6 mm",
                                        "flutes.radius",
                                        "")
                                .orThrow(),
                        false))
                .contains("\"limit\":\"core\"");
    }

    @Test
    void aCapEndsItSooner() {
        assertThat(JsonAnswer.line(answer("tap-m8.json", "cap", "2").orThrow(), false))
                .contains("\"count\":2,\"limit\":\"cap\"");
    }

    @Test
    void whatIsNotToldIsSaid() {
        Document document = answer("tap-m8.json", "flutes.kind", "spiral-right", "flutes.helix", "15 deg")
                .orThrow();
        assertThat(document.cautions()).extracting(Caution::code).contains("faceNotGround");
        Walk.through(document);
        assertThat(JsonAnswer.line(document, false))
                .contains("\"face\":{\"count\":0,\"limit\":\"not ground: spiral-right flutes, chamfer only\"}");
    }

    @Test
    void aFreshTapHasNoFaceToTakeOff() {
        Document document = answer("tap-m8.json", "wear", "fresh").orThrow();
        Walk.through(document);
        assertThat(JsonAnswer.line(document, false))
                .contains("\"face\":{\"angle\":{\"value\":0,\"unit\":\"deg\",\"step\":\"d_f\"},"
                        + "\"limit\":\"not ground: no wear land to take off\"}");
    }

    @Test
    void aFormingTapIsRefused() {
        assertThat(answer("tap-m8.json", "flutes.kind", "forming").findings())
                .extracting(Finding::sentence)
                .containsExactly("flutes.kind: \"forming\" has no cutting edge to sharpen. "
                        + "To mend: replace a worn forming tap.");
    }
}
