// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import landfall.cards.Cards;
import landfall.cards.answer.Document;
import landfall.fault.Answer;
import landfall.fault.Caution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The numerical run in the answer of grind")
class GrindRunTest {
    private static final Map<String, String> TYPED = Cards.typed("tap-m8.json", "fixture-three-lobes.json");

    @Test
    void withoutTheRunAllOtherFiguresAreTheSame() {
        Map<String, Double> whole = new TreeMap<>(figures(new GrindAsk()));
        Map<String, Double> closed = figures(GrindAsk.closedForms());
        assertThat(whole.keySet()).anyMatch(path -> path.startsWith("grind.run."));
        whole.keySet().removeIf(path -> path.startsWith("grind.run."));
        assertThat(closed).containsExactlyInAnyOrderEntriesOf(whole);
    }

    /** A thread that runs out, told where: half the swing stands the far land proud and takes the near one away. */
    @Test
    void whatIsAmissIsToldInTheWordsOfTheTradeAndSeenLandByLand() {
        List<Double> proud = lands("edge", "run-out", "0.03 mm", "run-out-high", "180 deg");
        assertThat(proud.get(0)).isCloseTo(0.015, within(1e-4));
        assertThat(proud.get(1)).isCloseTo(-0.0075, within(1e-4));
        List<Double> late = lands("edge", "lobe-errors", "0.5 deg, 0, 0 deg");
        assertThat(late.get(0)).isGreaterThan(late.get(1) + 0.002);
        assertThat(late.get(1)).isCloseTo(late.get(2), within(1e-6));
        List<Double> worn = lands("edge", "wheel-wear", "0.03 mm");
        assertThat(worn.get(2) - worn.get(0)).isCloseTo(0.02 / Math.cos(Math.toRadians(9)), within(2e-4));
        double angle = run("chamferAngle", "wheel-face", "0.5 deg");
        assertThat(run("chamferAngle") - angle).isCloseTo(0.5, within(0.02));
        assertThat(run("chamferAngle", "wheel-height", "1 mm")).isCloseTo(run("chamferAngle"), within(0.05));
    }

    private static double run(String figure, String... more) {
        return GrindAskTest.figures(ask(more).orThrow()).get("grind.run." + figure);
    }

    private static List<Double> lands(String figure, String... more) {
        return ask(more).orThrow().figures().stream()
                .filter(shown -> shown.path().equals("grind.run.lands." + figure))
                .map(shown -> shown.point().value())
                .toList();
    }

    private static Answer<Document> ask(String... more) {
        return GrindAskTest.answer("tap-m8.json", "fixture-three-lobes.json", more);
    }

    @Test
    void whatIsNotToldIsSaidToBeTakenForGranted() {
        assertThat(assumed()).anyMatch(text -> text.contains("the thread runs true"));
        assertThat(assumed("run-out", "0.02 mm"))
                .noneMatch(text -> text.contains("the thread runs true"))
                .contains("Where the run-out is high was not told: at the edge of land 1 taken.");
        assertThat(assumed(
                        "run-out", "0.02 mm",
                        "run-out-high", "30 deg",
                        "lobe-errors", "0, 0, 0",
                        "wheel-height", "0 mm",
                        "wheel-face", "0 deg",
                        "wheel-hollow", "0 mm",
                        "wheel-wear", "0 mm"))
                .noneMatch(text -> text.contains("in the run"));
    }

    private static List<String> assumed(String... more) {
        return ask(more).orThrow().cautions().stream()
                .filter(caution -> caution.code().endsWith("Assumed"))
                .map(Caution::text)
                .toList();
    }

    @Test
    void whatDoesNotFitIsRefusedAllAtOnce() {
        assertThat(GrindAskTest.refused(
                        "tap-m8.json",
                        "fixture-three-lobes.json",
                        "run-out-high",
                        "30 deg",
                        "lobe-errors",
                        "0.1 deg, 0",
                        "wheel-height",
                        "30 mm"))
                .containsExactly(
                        "lobe-errors: \"0.1 deg, 0\" must be 3 angles, one a lobe. To mend: give one angle for each lobe,"
                                + " in the order of the lands.",
                        "wheel-height: \"30 mm\" must be at most a quarter of the wheel's radius, 18.750 mm (0.7382 in). To"
                                + " mend: measure from the height of the tap's axis to that of the wheel's.",
                        "run-out-high: \"30 deg\" says where a run-out is high, and none is given. To mend: give run-out,"
                                + " as the dial swings, or leave this out.");
        assertThat(GrindAskTest.refused("tap-m8.json", "fixture-three-lobes.json", "lobe-errors", "0, much, 30 deg"))
                .hasSize(2);
    }

    private static Map<String, Double> figures(GrindAsk ask) {
        Document document = ask.answer(TYPED).orThrow();
        return GrindAskTest.figures(document);
    }
}
