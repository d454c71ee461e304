// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.life;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.ask.LifeAsk;
import landfall.quantity.UnitSystem;
import landfall.regrind.SharpeningsLeft;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Svg;
import landfall.sheets.draw.TextBox;
import landfall.sheets.draw.Texts;
import landfall.sheets.figure.Figures;
import org.junit.jupiter.api.Test;

class LifeViewTest {
    private static final Figures MM = new Figures(UnitSystem.METRIC);

    /** M8 plug tap of an invented shop: 22 mm of thread, 2.6 mm of land. */
    private static SharpeningsLeft left(String... more) {
        Map<String, String> typed = new LinkedHashMap<>(Map.of(
                "thread", "M8x1.25-6H",
                "flutes.count", "3",
                "flutes.rake", "10 deg",
                "land.width", "2.6 mm",
                "chamfer.angle", "9 deg",
                "chamfer.pointDiameter", "6.4 mm",
                "threadLength", "22 mm",
                "wear", "0.2 mm"));
        for (int i = 0; i < more.length; i += 2) {
            typed.put(more[i], more[i + 1]);
        }
        typed.values().removeIf(String::isEmpty);
        return new LifeAsk().left(typed).orThrow().value();
    }

    private static Drawing draw(SharpeningsLeft left) {
        return new LifeView(left, MM).draw("life", Ink.PAPER);
    }

    private static List<String> strokes(SharpeningsLeft left) {
        return Svg.paths(draw(left), "thin");
    }

    /** Every sharpening of the three lines has its stroke. */
    @Test
    void thereIsAStrokeForEachSharpening() {
        SharpeningsLeft left = left();
        int chamfers = requireNonNull(left.chamfer().count());
        int faces = requireNonNull(requireNonNull(left.face()).count());
        int both = requireNonNull(left.line()).chamfers()
                + requireNonNull(left.line()).faces();
        assertThat(chamfers).isGreaterThan(5);
        assertThat(faces).isGreaterThan(1);
        assertThat(strokes(left)).hasSize(chamfers + faces + both);
    }

    @Test
    void chamfersStandAboveTheLineAndFacesBelowIt() {
        SharpeningsLeft left = left("cap", "3");
        List<String> strokes = strokes(left);
        assertThat(strokes.subList(0, 3))
                .allSatisfy(path -> assertThat(rises(path)).isTrue());
        assertThat(strokes.subList(3, 6))
                .allSatisfy(path -> assertThat(rises(path)).isFalse());
    }

    private static boolean rises(String path) {
        return Svg.places(path).get(1).y() < Svg.places(path).get(0).y();
    }

    @Test
    void eachLineSaysHowManyAndWhatEndsIt() {
        Drawing drawing = draw(left("cap", "3"));
        assertThat(drawing.texts())
                .extracting(TextBox::text)
                .contains("Chamfer alone: 3, ended by as many as agreed", "Best of both: 3");
    }

    @Test
    void whatNothingKnownLimitsHasNoEnd() {
        SharpeningsLeft left = left("threadLength", "");
        assertThat(left.chamfer().count()).isNull();
        Drawing drawing = draw(left);
        assertThat(drawing.texts()).extracting(TextBox::text).contains("Chamfer alone: no limit known");
        assertThat(Svg.paths(drawing, "hidden")).hasSize(2);
        Texts.fitAndKeepApart(drawing);
    }

    @Test
    void facesThatAreNotGroundHaveNoLine() {
        Drawing drawing = draw(left("flutes.kind", "spiral-right", "flutes.helix", "30 deg"));
        assertThat(drawing.texts()).extracting(TextBox::text).contains("Faces alone: not ground on this tap");
        Texts.fitAndKeepApart(drawing);
    }

    /** So many that strokes would touch: one for ten, and the drawing says so. */
    @Test
    void veryManyAreDrawnByTens() {
        SharpeningsLeft left = left("wear", "0.01 mm", "threadLength", "60 mm", "shank.diameter", "8 mm");
        int chamfers = requireNonNull(left.chamfer().count());
        assertThat(chamfers).isGreaterThan(200);
        Drawing drawing = draw(left);
        assertThat(drawing.texts())
                .extracting(TextBox::text)
                .contains("above: chamfer, below: face; tenths numbered, one stroke for 10");
        Texts.fitAndKeepApart(drawing);
    }

    @Test
    void everyTextFitsAndTheSentencesSayTheSame() {
        SharpeningsLeft left = left();
        for (UnitSystem units : UnitSystem.values()) {
            Texts.fitAndKeepApart(new LifeView(left, new Figures(units)).draw("life", Ink.PAPER));
        }
        List<String> said = new LifeWords(left, MM).sentences();
        assertThat(said).hasSize(3);
        assertThat(said.get(0))
                .startsWith("By the chamfer alone: %d sharpenings, each takes "
                        .formatted(left.chamfer().count()))
                .endsWith("What ends it: thread length.");
        assertThat(draw(left).svg()).contains(said.get(2));
    }
}
