// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import landfall.cards.ask.HoleAsk;
import landfall.hole.HoleChoice;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Spot;
import landfall.sheets.draw.Svg;
import landfall.sheets.draw.TextBox;
import landfall.sheets.draw.Texts;
import landfall.sheets.figure.Figures;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Sketches of a hole")
class HoleSketchesTest {
    private static final Figures MM = new Figures(UnitSystem.METRIC);

    static Stream<Map<String, String>> asks() {
        return Stream.of(
                Map.of("thread", "M8x1.25-6H", "depth", "16 mm", "blind", "yes", "tap", "straight"),
                Map.of("thread", "M8x1.25-6H", "depth", "16 mm", "through", "yes"),
                Map.of("thread", "1/4-20 UNC-2B", "depth", "1/2", "blind", "yes", "tap", "spiral-point"),
                Map.of("thread", "1-8 UNC-2B", "depth", "1", "blind", "yes"),
                Map.of("thread", "M3x0.5-6H", "depth", "5 mm", "blind", "yes", "chamfer-threads", "1.5"),
                Map.of("thread", "M6x1-6H", "depth", "30 mm", "blind", "yes", "tap", "spiral-right"),
                Map.of("thread", "M10x1.5-6H"),
                Map.of("thread", "STI M6x1-5H", "depth", "12 mm", "through", "yes"),
                Map.of("thread", "Tr20x4", "depth", "30 mm", "through", "yes"),
                Map.of("thread", "M20x2.5-6H", "depth", "10 mm", "through", "yes", "forming", "yes"),
                Map.of("thread", "0-80 UNF-2B", "depth", ".12", "blind", "yes"));
    }

    private static HoleChoice choice(Map<String, String> typed) {
        return new HoleAsk().choice(typed).orThrow().value();
    }

    private static HoleView view(HoleChoice choice, Figures figures) {
        return new HoleView(HoleShape.of(choice), choice.wish().callOut().normal(), figures);
    }

    @ParameterizedTest
    @MethodSource("asks")
    void everyTextFitsItsDrawingAndNoTwoTextsOverlap(Map<String, String> typed) {
        HoleChoice choice = choice(typed);
        for (UnitSystem units : UnitSystem.values()) {
            Figures figures = new Figures(units);
            Texts.fitAndKeepApart(view(choice, figures).draw("h", Ink.PAPER));
            if (!choice.curve().isEmpty()) {
                Texts.fitAndKeepApart(TradeOffView.of(choice, figures).draw("t", Ink.PAPER));
            }
        }
    }

    /** Scale law: from the face down the wall ends where the drill's full diameter does, and the tip where it does. */
    @Test
    void aBlindHoleIsToScale() {
        HoleChoice choice = choice(Map.of("thread", "M8x1.25-6H", "depth", "16 mm", "blind", "yes"));
        HoleView view = view(choice, MM);
        List<Spot> wall =
                Svg.places(Svg.paths(view.draw("h", Ink.PAPER), "outline").get(0));
        double ratio = view.scale().ratio();
        double face = wall.get(0).y();
        assertThat((wall.get(2).y() - face) / ratio)
                .isCloseTo(choice.depth().drill().mm(), within(0.02));
        assertThat((wall.get(3).y() - face) / ratio)
                .isCloseTo(choice.depth().drillPoint().mm(), within(0.02));
        double radius = (wall.get(2).x() - wall.get(3).x()) / ratio;
        assertThat(2 * radius)
                .isCloseTo(choice.tools().drill().drill().diameter().mm(), within(0.03));
        assertThat((wall.get(0).x() - wall.get(3).x()) * 2 / ratio)
                .isCloseTo(choice.entry().countersink().max().mm(), within(0.03));
    }

    @Test
    void everyDepthOfTheStackIsSaidFromTheFace() {
        HoleChoice choice = choice(Map.of("thread", "M8x1.25-6H", "depth", "16 mm", "blind", "yes", "tap", "straight"));
        List<String> said = view(choice, MM).draw("h", Ink.PAPER).texts().stream()
                .map(TextBox::text)
                .toList();
        assertThat(said)
                .contains("0", "16.0", "18.5", MM.coarseBare(choice.depth().drill()), "full thread");
        assertThat(said).contains(MM.coarseBare(choice.depth().drillPoint()), "drill's tip");
    }

    @Test
    void aThroughHoleHasNoDrillDepthAndTheTapComesOutBelow() {
        List<String> said = view(choice(Map.of("thread", "M8x1.25-6H", "depth", "16 mm", "through", "yes")), MM)
                .draw("h", Ink.PAPER)
                .texts()
                .stream()
                .map(TextBox::text)
                .toList();
        assertThat(said).contains("thread, through", "21.0", "tap's point").doesNotContain("drill's tip");
    }

    /** A shank thicker than the hole that would have to go in is marked. */
    @Test
    void aShankThatDoesNotEnterIsMarkedInTheSketchAndInWords() {
        HoleChoice choice = choice(Map.of("thread", "M6x1-6H", "depth", "30 mm", "blind", "yes"));
        HoleShape shape =
                HoleShape.of(choice).with(new HoleShape.Tool(null, Length.ofMm(19), Length.ofMm(6), "tap of the card"));
        Drawing thick = new HoleView(shape, "M6x1-6H", MM).draw("h", Ink.PAPER);
        assertThat(Svg.paths(thick, "alarm")).hasSize(2);
        assertThat(thick.texts()).anyMatch(text -> text.text().equals("shank too thick"));
        HoleShape thin = shape.with(new HoleShape.Tool(null, Length.ofMm(19), Length.ofMm(4.5), "tap of the card"));
        Drawing enters = new HoleView(thin, "M6x1-6H", MM).draw("h", Ink.PAPER);
        assertThat(Svg.paths(enters, "alarm")).isEmpty();
        assertThat(enters.texts()).anyMatch(text -> text.text().equals("shank begins"));
    }

    /** The line of the choice stands at the chosen share, between the shares next to it. */
    @Test
    void theChoiceIsMarkedAtItsShare() {
        HoleChoice choice = choice(Map.of("thread", "M8x1.25-6H", "depth", "16 mm", "blind", "yes"));
        Drawing drawing = TradeOffView.of(choice, MM).draw("t", Ink.PAPER);
        double x = Svg.places(Svg.paths(drawing, "wanted").get(0)).get(0).x();
        List<Spot> curve = Svg.paths(drawing, "outline").stream()
                .map(Svg::places)
                .filter(places -> places.size() == choice.curve().size())
                .findFirst()
                .orElseThrow();
        double first = choice.curve().get(0).share();
        double last = choice.curve().get(choice.curve().size() - 1).share();
        double share = (choice.tools().drill().share() - first) / (last - first);
        double from = curve.get(0).x();
        double to = curve.get(curve.size() - 1).x();
        assertThat(x).isCloseTo(from + share * (to - from), within(0.02));
        assertThat(drawing.texts()).anyMatch(text -> text.text().equals("drill 6.8 mm, 73.9 %"));
    }
}
