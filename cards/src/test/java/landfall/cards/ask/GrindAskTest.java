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
import landfall.cards.answer.Item;
import landfall.cards.answer.JsonAnswer;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.quantity.UnitSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("grind: the set-up as an answer")
class GrindAskTest {
    private static final String M8 = "tap-m8.json";
    private static final String HALF = "tap-half-13-worn.json";
    private static final String LEFT = "tap-m10-left-hand.json";
    private static final String THREE = "fixture-three-lobes.json";
    private static final String FOUR = "fixture-four-lobes.json";

    static Answer<Document> answer(String tap, String fixture, String... more) {
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed(tap, fixture));
        for (int i = 0; i < more.length; i += 2) {
            if (more[i + 1].isEmpty()) {
                typed.remove(more[i]);
            } else {
                typed.put(more[i], more[i + 1]);
            }
        }
        return new GrindAsk().answer(typed);
    }

    static Map<String, Double> figures(Document document) {
        Map<String, Double> figures = new LinkedHashMap<>();
        document.figures()
                .forEach(
                        shown -> figures.putIfAbsent(shown.path(), shown.point().value()));
        return figures;
    }

    static List<String> refused(String tap, String fixture, String... more) {
        return answer(tap, fixture, more).findings().stream()
                .map(Finding::sentence)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "tap-m8.json,fixture-three-lobes.json",
        "tap-half-13-worn.json,fixture-four-lobes.json",
        "tap-m10-left-hand.json,fixture-three-lobes.json"
    })
    void everyFigureHasItsStepAndEveryItemItsWords(String tap, String fixture) {
        Walk.through(answer(tap, fixture).orThrow());
    }

    @Test
    void everyWayOfSettingHasItsSteps() {
        Walk.through(
                answer(M8, THREE, "cam.radial.from", "", "cam.radial.to", "").orThrow());
        Walk.through(answer(M8, THREE, "cam.radial.to", "0.2 mm").orThrow());
        Walk.through(answer(M8, THREE, "flutes.kind", "spiral-right", "flutes.helix", "15 deg")
                .orThrow());
        Walk.through(
                answer(M8, THREE, "cam.curve", "circle", "cam.phase", "60 deg").orThrow());
        Walk.through(answer(M8, THREE, "cam.curve", "points", "cam.table", "0 deg 0, 30 deg 0.4, 60 deg 1")
                .orThrow());
        Walk.through(answer(M8, THREE, "chip", "0.4 mm", "found-relief", "4 deg", "wear", "0.25 mm", "units", "inch")
                .orThrow());
    }

    /** The contract's own keys; the figures are held by the engine's tests. */
    @Test
    void theKeysAreThoseOfTheContract() {
        assertThat(figures(answer(M8, THREE, "working-relief", "6 deg").orThrow()))
                .containsKeys(
                        "grind.lead.angleMajor",
                        "grind.lead.anglePitch",
                        "grind.lead.angleMinor",
                        "grind.lead.axialAdvanceOverLand",
                        "grind.land.angle",
                        "grind.relief.working",
                        "grind.relief.static",
                        "grind.relief.loss",
                        "grind.relief.staticTransverse",
                        "grind.fall.perRadian",
                        "grind.fall.radial",
                        "grind.fall.axial",
                        "grind.fall.square",
                        "grind.rise.axialOnly",
                        "grind.rise.radialOnly",
                        "grind.rise.squareOnly",
                        "grind.setting.swivel",
                        "grind.setting.axial",
                        "grind.setting.radial",
                        "grind.setting.overLand.axial",
                        "grind.setting.overLand.radial",
                        "grind.stock.square",
                        "grind.stock.axial",
                        "grind.stock.radial",
                        "grind.gap.needed",
                        "grind.gap.have",
                        "grind.dial.land",
                        "grind.dial.reading");
    }

    /**
     * Worked by hand: land 2.6/4 rad; r (8 + 6.4)/4; lead angle there atan(1.25/(2 pi 3.6)); loss atan(tan of it x sin
     * 9).
     */
    @Test
    void theContractsCardsGiveWhatAPocketCalculatorGives() {
        Map<String, Double> figures =
                figures(answer(M8, THREE, "working-relief", "6 deg").orThrow());
        double loss = Math.toDegrees(Math.atan(1.25 / (2 * Math.PI * 3.6) * Math.sin(Math.toRadians(9))));
        double perRadian = 3.6 * Math.tan(Math.toRadians(6 + loss)) / Math.cos(Math.toRadians(9));
        assertThat(figures.get("grind.land.angle")).isCloseTo(Math.toDegrees(0.65), within(1e-9));
        assertThat(figures.get("grind.relief.loss")).isCloseTo(loss, within(1e-9));
        assertThat(figures.get("grind.relief.static")).isCloseTo(6 + loss, within(1e-9));
        assertThat(figures.get("grind.fall.perRadian")).isCloseTo(perRadian, within(1e-9));
        assertThat(figures.get("grind.setting.radial")).isCloseTo(perRadian * Math.PI / 3, within(1e-9));
        assertThat(figures.get("grind.setting.overLand.radial")).isCloseTo(perRadian * 0.65, within(1e-9));
        assertThat(figures.get("grind.gap.have")).isCloseTo(60, within(1e-9));
    }

    @Test
    void theSpiralAxialRiseCountsAtTheSwivelThatIsSet() {
        Map<String, Double> figures = figures(answer(M8, THREE, "flutes.kind", "spiral-right", "flutes.helix", "15 deg")
                .orThrow());
        double swivel = Math.toRadians(figures.get("grind.setting.swivel"));
        assertThat(figures.get("grind.rise.axialOnly"))
                .isCloseTo(figures.get("grind.fall.radial") / Math.tan(swivel), within(1e-9));
    }

    @Test
    void aLeftHandTapMirrorsWordsAndKeepsFigures() {
        Document left = answer(LEFT, THREE).orThrow();
        Document right = answer(LEFT, THREE, "thread", "M10x1.5-6H").orThrow();
        assertThat(figures(left)).isEqualTo(figures(right));
        assertThat(JsonAnswer.line(left, false))
                .contains("\"hand\":\"left\",\"turns\":\"counter-clockwise seen from the shank\"");
        assertThat(JsonAnswer.line(right, false))
                .contains("\"hand\":\"right\",\"turns\":\"clockwise seen from the shank\"");
    }

    @Test
    void inchAndMetricReadersGetTheSameSetUp() {
        Document inch = answer(HALF, FOUR).orThrow();
        Document metric = answer(HALF, FOUR, "units", "metric").orThrow();
        assertThat(inch.units()).isEqualTo(UnitSystem.INCH);
        assertThat(figures(inch)).isEqualTo(figures(metric));
        assertThat(JsonAnswer.line(metric, false)).doesNotContain("\"unit\":\"in\"");
    }

    @Test
    void theMaterialOnTheCardDecidesTheRelief() {
        assertThat(answer(HALF, FOUR).orThrow().cautions())
                .extracting(Caution::code)
                .contains("reliefByMaterial");
        assertThat(answer(M8, THREE).orThrow().cautions())
                .extracting(Caution::code)
                .contains("reliefAssumed");
    }

    @Test
    void theDialTargetsStandAtZeroOnTheEdge() {
        Document document = answer(M8, THREE).orThrow();
        Item.Rows dial = (Item.Rows) document.items().stream()
                .filter(item -> item.key().equals("dial"))
                .findFirst()
                .orElseThrow();
        for (Item.Group row : dial.rows()) {
            if (((Item.Figure) row.items().get(1)).value() == 0) {
                assertThat(((Item.Figure) row.items().get(2)).value()).isZero();
            }
        }
    }

    @Test
    void whatIsWrongOnBothCardsAndTheOptionsIsFoundAtOnce() {
        assertThat(refused(
                        M8,
                        THREE,
                        "chamfer.angle",
                        "95 deg",
                        "cam.riseAngle",
                        "",
                        "wear",
                        "old",
                        "wheel.speed",
                        "30 m/s"))
                .containsExactly(
                        "chamfer.angle: \"95 deg\" must be from 1 to 45 deg. "
                                + "To mend: measure again, and look at the sign and the unit.",
                        "cam.riseAngle: \"\" is needed: turn over which a lobe rises. "
                                + "To mend: give an angle: 2.5 deg, 2°30', such as 60 deg.",
                        "wear: \"old\" is no state of wear. "
                                + "To mend: write fresh, due, spent, or the width of the wear land: 0.2 mm.",
                        "wheel.speed: \"30 m/s\" is not a field of grind. "
                                + "To mend: write wheel.spindle, the nearest, or leave it out.");
    }

    @Test
    void whatDoesNotFitIsFoundBesideAWheelThatTurnsTooFast() {
        assertThat(refused(
                        M8,
                        THREE,
                        "flutes.count",
                        "4",
                        "land.width",
                        "",
                        "land.angle",
                        "70 deg",
                        "wheel.spindle",
                        "9000"))
                .containsExactly(
                        "wheel.spindle: \"9000 rev/min\" must be at most the 4000 rev/min marked on the wheel. "
                                + "To mend: set a slower spindle speed or mount a wheel marked for this one; "
                                + "a wheel over its mark can burst.",
                        "cam.lobes: \"3\" must be the number of flutes, 4. To mend: fit the cam with 4 lobes, or check the"
                                + " flutes on the tap's card.",
                        "cam.riseAngle: \"60.00 deg from a start at 0.00 deg\" must reach the heel, at 70.00 deg of land."
                                + " To mend: fit a cam with a longer rise, start the rise later, or measure the land"
                                + " again.");
        assertThat(refused(M8, THREE, "flutes.count", "4"))
                .containsExactly("cam.lobes: \"3\" must be the number of flutes, 4. "
                        + "To mend: fit the cam with 4 lobes, or check the flutes on the tap's card.");
    }

    @Test
    void noTapOrFixtureBreaksTheQuestion() {
        Random random = new Random(31);
        String[] texts = {
            "0.1 mm",
            "1",
            "7.3 mm",
            "2 deg",
            "60 deg",
            "44 deg",
            "spiral-left",
            "circle",
            "points",
            "0 deg 0, 60 deg 1",
            "300 mm",
            "M3",
            "1/4-20 UNC",
            "M64",
            "spent",
            "D100N50M",
            "30"
        };
        List<String> paths = new GrindAsk().form().paths();
        int answered = 0;
        for (int i = 0; i < 400; i++) {
            String[] more = new String[2 * random.nextInt(1, 3)];
            for (int k = 0; k < more.length; k += 2) {
                more[k] = paths.get(random.nextInt(paths.size()));
                more[k + 1] = texts[random.nextInt(texts.length)];
            }
            Answer<Document> answer = answer(i % 2 == 0 ? M8 : HALF, i % 2 == 0 ? THREE : FOUR, more);
            answer.findings().forEach(finding -> assertThat(finding.mend()).isNotBlank());
            if (answer instanceof Answer.Of<Document> of) {
                answered++;
                assertThat(JsonAnswer.line(of.value(), true)).doesNotContain("NaN");
            }
        }
        assertThat(answered).isGreaterThan(20);
    }

    @Test
    void overSpeedDoesNotHideTheLobesOrTheRise() {
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed("tap-m8.json", "fixture-three-lobes.json"));
        typed.putAll(Map.of("cam.lobes", "4", "cam.riseAngle", "20 deg", "wheel.spindle", "9000 rev/min"));
        assertThat(new GrindAsk().answer(typed).findings())
                .extracting(Finding::field)
                .containsExactly("wheel.spindle", "cam.lobes", "cam.riseAngle");
    }
}
