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

@DisplayName("dial: what to turn, and what the dials then read")
class DialMendTest {
    private static final String HEAD = "land,angle_deg,reading_mm\n";
    private static final String SLIPPED = HEAD
            + "1,0,0\n1,10,-.08\n1,20,-.17\n1,37,-.32\n2,0,-.01\n2,10,-.09\n2,20,-.28\n2,37,-.33\n"
            + "3,0,.01\n3,10,-.07\n3,20,-.16\n3,37,-.31\n";
    private static final String LATE = HEAD
            + "1,0,0\n1,5,0\n1,10,0\n1,20,-.08\n1,30,-.17\n1,37,-.23\n2,0,0\n2,5,0\n2,10,0\n2,20,-.08\n2,30,-.17\n"
            + "2,37,-.23\n3,0,0\n3,5,0\n3,10,0\n3,20,-.08\n3,30,-.17\n3,37,-.23\n";

    private static Answer<Document> answer(String readings, String... more) {
        Map<String, String> typed =
                new LinkedHashMap<>(Cards.typed("tap-m10-left-hand.json", "fixture-three-lobes.json"));
        typed.put("readings", readings);
        for (int i = 0; i < more.length; i += 2) {
            typed.put(more[i], more[i + 1]);
        }
        return new DialAsk().answer(typed);
    }

    private static String json(Document document) {
        Walk.through(document);
        return JsonAnswer.line(document, false);
    }

    @Test
    void theFitWithoutAnOutlierStandsBesideTheFitOfAll() {
        assertThat(json(answer(SLIPPED).orThrow()))
                .contains("\"outliers\":[{\"land\":2,\"angle\":{\"value\":20,")
                .contains("\"withoutOutliers\":{\"slope\":{\"value\":-0.498")
                .contains("\"slope\":{\"value\":-0.506");
    }

    @Test
    void thePlaceWhereTheRiseBeginsIsTold() {
        assertThat(json(answer(LATE).orThrow()))
                .contains("\"phase\":{\"begins\":{\"value\":10.")
                .contains("\"asItWas\":{\"verdict\":\"too little: a bare margin behind the edge rubs\"");
    }

    @Test
    void theDialIsHeldAgainstItsTargetsNowAndAfterEachCorrection() {
        assertThat(json(answer(Cards.text("readings-m10.csv")).orThrow()))
                .contains("\"asItWas\":{\"verdict\":\"enough: within two degrees of what is wanted\"")
                .contains("\"then\":[{\"after\":\"now\",\"land\":1,\"edge\":")
                .contains("{\"after\":\"3 radial\",\"land\":1,\"edge\":{\"value\":0,")
                .contains("\"targets\":[{\"angle\":{\"value\":0,")
                .contains("\"readings\":[{\"land\":1,\"angle\":")
                // every edge at the mean of the edges, -.0197, and the wanted slope: -.0197 - .3565 at 37 deg
                .contains("\"target\":{\"value\":-0.376");
    }

    @Test
    void theReliefAskedForIsWhatTheTapIsHeldAgainst() {
        Document document = answer(Cards.text("readings-m10.csv"), "working-relief", "7 deg")
                .orThrow();
        assertThat(json(document)).contains("\"wanted\":{\"value\":7,");
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed("tap-m10-left-hand.json"));
        typed.put("readings", Cards.text("readings-m10.csv"));
        assertThat(json(new DialAsk().answer(typed).orThrow())).contains("\"wanted\":{\"value\":6.47");
        typed.remove("cuts");
        assertThat(new DialAsk().answer(typed).orThrow().cautions())
                .extracting(Caution::code)
                .contains("reliefAssumed");
    }

    @Test
    void readingsAlongTheChamferTellTheSwivel() {
        Document document = answer(
                        Cards.text("readings-m10.csv"), "along", "along_mm,reading_mm\n0,0\n2,.02\n4,.04\n6,.06\n")
                .orThrow();
        assertThat(json(document))
                .contains("\"swivel\":{\"low\":{\"value\":0.57")
                .contains("{\"do\":\"turn the swivel up, to a steeper chamfer; the dial then stands still along the"
                        + " chamfer\",\"by\":{\"value\":0.57");
        // lengths and angles in one column of the list, each with its own unit
        assertThat(TextAnswer.write(document))
                .contains("    by         0.573 deg\n")
                .contains("    by         0.077 mm\n    divisions  7.7 div\n");
        assertThat(json(answer(Cards.text("readings-m10.csv"), "along", "along_in,reading_in\n0,0\n.25,-.005\n")
                        .orThrow()))
                .contains("turn the swivel down, to a flatter chamfer");
    }

    /** The rise lacks 0.0768 mm over a lobe: 7.7 divisions of 0.01 mm, and at 0.25 mm a turn 0.31 of a turn. */
    @Test
    void theHandIsToldDivisionsAndTurnsOfTheScrew() {
        Document document = answer(Cards.text("readings-m10.csv"), "cam.radial.perTurn", "0.25 mm")
                .orThrow();
        assertThat(json(document))
                .contains("\"do\":\"increase the radial rise over one lobe\",\"by\":{\"value\":0.0767")
                .contains("\"divisions\":{\"value\":7.67")
                .contains("\"turns\":{\"value\":0.307");
        assertThat(TextAnswer.write(document)).contains("0.31 turns");
    }

    @Test
    void readingsOfTwoPlacesAreAnsweredOneAtATime() {
        String both = "land,angle_deg,reading_mm,place\n1,0,0,end\n1,37,.2,end\n1,0,0,shank\n1,37,.05,shank\n";
        assertThat(answer(both).findings())
                .extracting(Finding::sentence)
                .containsExactly("place: \"end, shank\" are the places of these readings; a dial is answered for one"
                        + " place at a time. To mend: give place end first, then shank.");
        assertThat(json(answer(both, "place", "shank").orThrow())).contains("\"place\":\"shank\"");
    }

    @Test
    void badReadingsAlongTheChamferOrOfTheReferenceAreRefusedByTheirLine() {
        assertThat(answer(LATE, "along", "along_mm,reading_mm\n0,x\n6,0.1\n", "reference", HEAD + "1,0,0\n2,0,y\n")
                        .findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "reference.line 3.reading_mm: \"y\" is not a number. To mend: write 0.001 or 1:1000.",
                        "along.line 2.reading_mm: \"x\" is not a number. To mend: write 0.001 or 1:1000.");
        assertThat(answer(LATE, "along", "along_mm,reading_mm\n2,0\n2,0.1\n").findings())
                .extracting(Finding::sentence)
                .containsExactly("readings along the chamfer: \"2 readings\" must be at two or more places, with the"
                        + " dial's division. To mend: read at the point end and at the large end of one edge.");
        assertThat(answer(LATE, "along", "reading_mm\n0\n").findings())
                .extracting(Finding::sentence)
                .containsExactly("along.columns: \"reading_mm\" has no column along_mm. To mend: begin with"
                        + " along_mm,reading_mm.");
    }
}
