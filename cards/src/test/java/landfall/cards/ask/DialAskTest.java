// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import landfall.cards.Cards;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("dial: what readings tell")
class DialAskTest {
    /** The readings that the method note works by hand. */
    private static final String BY_HAND = """
            land,angle_deg,reading_mm
            1,0,0.00
            1,20,-0.17
            1,40,-0.34
            2,0,-0.04
            2,20,-0.21
            2,40,-0.37
            3,0,-0.02
            3,20,-0.18
            3,40,-0.34
            """;

    private static Answer<Document> answer(String... more) {
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed("tap-m10-left-hand.json"));
        typed.put("land.width", "3.6 mm");
        typed.put("readings", BY_HAND);
        for (int i = 0; i < more.length; i += 2) {
            typed.put(more[i], more[i + 1]);
        }
        return new DialAsk().answer(typed);
    }

    private static double figure(Document document, String path) {
        return document.figures().stream()
                .filter(shown -> shown.path().equals(path))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no figure " + path))
                .point()
                .value();
    }

    /**
     * Worked by hand in docs/methods/dialling.md: k -0.4727 mm/rad, expanded 0.0066; common zero e 0.0223 at 334 deg.
     */
    @Test
    void theReadingsWorkedByHandGiveTheSameUnderTheContractsKeys() {
        Document document = answer().orThrow();
        Walk.through(document);
        assertThat(figure(document, "dial.slope.value")).isCloseTo(-0.4727, within(5e-5));
        assertThat(figure(document, "dial.slope.uncertainty")).isCloseTo(0.0066, within(5e-5));
        assertThat(figure(document, "dial.commonZero.eccentricity.value")).isCloseTo(0.0223, within(5e-5));
        assertThat(figure(document, "dial.commonZero.direction.value")).isCloseTo(334, within(0.5));
        assertThat(JsonAnswer.line(document, false))
                .contains("\"slope\":{\"value\":-0.47")
                .contains("\"unit\":\"mm/rad\",\"step\":\"k\"}")
                .contains("\"lands\":[{\"land\":1,\"height\":{\"value\":")
                .contains("\"corrections\":[{\"do\":\"");
    }

    /** Nine degrees ask for more than the radial slide gives: it stands at its limit, and the axial one is turned. */
    @Test
    void aFixtureTellsWhichRiseToTurn() {
        Document document = answerWithFixture().orThrow();
        Walk.through(document);
        assertThat(JsonAnswer.line(document, false)).contains("increase the axial rise (cam screw)");
    }

    private static Answer<Document> answerWithFixture() {
        Map<String, String> typed =
                new LinkedHashMap<>(Cards.typed("tap-m10-left-hand.json", "fixture-three-lobes.json"));
        typed.put("readings", Cards.text("readings-m10.csv"));
        typed.put("working-relief", "9 deg");
        return new DialAsk().answer(typed);
    }

    @Test
    void aReferenceAPlaceAndADivisionAreHeard() {
        String reference = "land,angle_deg,reading_mm\n1,5,0.01\n2,5,-0.01\n3,5,0.00\n1,30,0.01\n2,30,-0.01\n3,30,0\n";
        Document document = answer("reference", reference, "resolution", "2 µm").orThrow();
        Walk.through(document);
        assertThat(document.cautions()).extracting(Caution::code).doesNotContain("dialDivisionAssumed");
        assertThat(answer("place", "end").orThrow().subject()).endsWith("end");
        assertThat(answer().orThrow().cautions()).extracting(Caution::code).contains("dialDivisionAssumed");
    }

    @Test
    void twoLandsAreAnsweredWithWhatTheyCannotTell() {
        Document document = answer("readings", "land,angle_deg,reading_mm\n1,0,0\n1,30,-.25\n2,0,0.01\n2,30,-.24\n")
                .orThrow();
        Walk.through(document);
        assertThat(document.cautions()).extracting(Caution::code).contains("heightsNotTold");
        assertThat(JsonAnswer.line(document, false))
                .contains("\"eccentricity\":{")
                .contains("\"direction\":{")
                .containsPattern("\"land\":3,\"edge\":\\{[^}]*},\"share\":\\{");
    }

    @Test
    void badReadingsAndBadCardsAreRefusedAtOnce() {
        assertThat(answer("readings", "land,angle_deg,reading_mm\n1,0,x", "chamfer.threads", "99", "place", "here")
                        .findings())
                .extracting(Finding::field)
                .isEqualTo(List.of("readings.line 2.reading_mm", "place", "chamfer.threads"));
        assertThat(answer("readings", "land,angle_deg,reading_mm\n4,0,0\n1,0,0").findings())
                .extracting(Finding::sentence)
                .containsExactly("reading 1.land: \"4\" must be from 1 to 3, the lands of this tap. "
                        + "To mend: count the lands backwards from land 1.");
        assertThat(answer("readings", "land,angle_deg,reading_mm\n1,0,0\n2,0,0").findings())
                .hasSize(1);
    }

    @Test
    void placesInRefusalsAreWrittenAsAPersonWritesThem() {
        String two = "land,angle_deg,reading_mm,place\n1,0,0,crest\n2,0,0,shank\n3,0,0,crest\n";
        assertThat(answer("readings", "land,angle_deg,reading_mm\n1,0,0\n1,37,-.3\n", "reference", two)
                        .findings())
                .extracting(Finding::sentence)
                .containsExactly("reading 2.place: \"shank\" must be crest like the first reading. "
                        + "To mend: give the readings of each place as a set of their own.");
    }

    @Test
    void noReadingsBreakTheQuestion() {
        Random random = new Random(51);
        for (int i = 0; i < 150; i++) {
            StringBuilder table = new StringBuilder("land,angle_deg,reading_mm\n");
            for (int row = random.nextInt(1, 12); row > 0; row--) {
                table.append(
                        "%d,%d,%.3f%n".formatted(random.nextInt(1, 5), random.nextInt(0, 130), random.nextGaussian()));
            }
            answer("readings", table.toString())
                    .findings()
                    .forEach(finding -> assertThat(finding.mend()).isNotBlank());
        }
    }
}
