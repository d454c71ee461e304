// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import landfall.cut.CutForecast;
import landfall.quantity.UnitSystem;
import landfall.sheets.cut.ShopCuts.Cut;
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

@DisplayName("Sketches of a cut")
class CutSketchesTest {
    static Stream<Cut> cuts() {
        return ShopCuts.all();
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void everyTextFitsItsDrawingAndNoTwoTextsOverlap(Cut cut) {
        for (UnitSystem units : UnitSystem.values()) {
            Figures figures = new Figures(units);
            for (Drawing drawing : new CutSketches(cut.tapping(), figures, "s").all(Ink.PAPER)) {
                Texts.fitAndKeepApart(drawing);
            }
        }
    }

    /** Scale law: the slices of the magnified groove, over the square of the scale, are the engine's areas. */
    @ParameterizedTest
    @MethodSource("cuts")
    void theSlicesAreDrawnWithTheirAreas(Cut cut) {
        CutForecast forecast = cut.forecast();
        SlicesView view = new SlicesView(cut.tap(), forecast, cut.figures());
        List<String> fine = Svg.paths(view.draw("s", Ink.PAPER), "fine");
        var slices = forecast.chips().load().slices();
        List<String> last = fine.subList(fine.size() - slices.size(), fine.size());
        double ratio = view.scale().ratio();
        for (int i = 0; i < slices.size(); i++) {
            double area = area(Svg.places(last.get(i))) / ratio / ratio;
            // each coordinate is written to 0.01: a slice's outline is under 200 mm round
            assertThat(area).isCloseTo(slices.get(i).area().mm2(), within(200 * 0.005 / ratio / ratio));
        }
    }

    private static double area(List<Spot> places) {
        double twice = 0;
        for (int i = 0; i < places.size(); i++) {
            Spot a = places.get(i);
            Spot b = places.get((i + 1) % places.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void theSlicesAreNumberedInOrderAndMostOfThemAre(Cut cut) {
        CutForecast forecast = cut.forecast();
        Drawing drawing = new SlicesView(cut.tap(), forecast, cut.figures()).draw("s", Ink.PAPER);
        int teeth = forecast.chips().load().slices().size();
        List<Integer> numbers = drawing.texts().stream()
                .map(TextBox::text)
                .filter(text -> text.matches("\\d+"))
                .map(Integer::valueOf)
                .toList();
        assertThat(numbers)
                .contains(forecast.chips().load().slices().get(teeth / 2).tooth());
        assertThat(numbers).allSatisfy(number -> assertThat(number).isBetween(1, teeth));
        assertThat(numbers).hasSizeGreaterThanOrEqualTo(Math.min(teeth, 4) - 1);
    }

    @Test
    void chipsAreSaidToGoWhereTheEngineSendsThem() {
        assertThat(words(ShopCuts.blind())).contains("chips stay in the flutes");
        assertThat(words(ShopCuts.bottoming())).contains("chips come back out of the hole");
        assertThat(words(ShopCuts.spiralPoint())).contains("chips go ahead of the tap");
    }

    private static List<String> words(Cut cut) {
        return new SlicesView(cut.tap(), cut.forecast(), cut.figures())
                .draw("s", Ink.PAPER).texts().stream().map(TextBox::text).toList();
    }

    /** The line of the expected torque, read back by the height of the breaking torque, rises to the expected one. */
    @ParameterizedTest
    @MethodSource("cuts")
    void theTorqueCurveRisesToTheTorqueOfTheAnswer(Cut cut) {
        CutForecast forecast = cut.forecast();
        Drawing drawing = new TorqueView(forecast, cut.figures()).draw("t", Ink.PAPER);
        List<Spot> line = Svg.paths(drawing, "outline").stream()
                .map(Svg::places)
                .filter(places -> places.size() > 4)
                .findFirst()
                .orElseThrow();
        List<Spot> alarm = Svg.places(Svg.paths(drawing, "alarm").get(0));
        double nought = line.get(0).y();
        double perNm = (nought - alarm.get(0).y())
                / forecast.load().strength().breaking().low();
        double shown = (nought - line.stream().mapToDouble(Spot::y).min().orElseThrow()) / perNm;
        assertThat(shown).isCloseTo(forecast.load().torque().full().expected(), within(0.02 / perNm));
    }

    @Test
    void bandsThatMeetAreSaidToMeet() {
        Cut cut = ShopCuts.tooMuch();
        assertThat(cut.forecast().load().margin().low()).isLessThan(1);
        List<String> said = new TorqueView(cut.forecast(), cut.figures())
                .draw("t", Ink.PAPER).texts().stream().map(TextBox::text).toList();
        assertThat(said).anyMatch(text -> text.contains("bands meet: margin"));
    }

    /** Scale law: the outline drawn encloses the section's area; the peak stands on it. */
    @ParameterizedTest
    @MethodSource("cuts")
    void theSectionIsToScaleWithItsPeakOnTheOutline(Cut cut) {
        var section = cut.forecast().load().strength().section();
        SectionView view = new SectionView(cut.tap(), section, cut.figures());
        Drawing drawing = view.draw("x", Ink.PAPER);
        List<Spot> outline = Svg.paths(drawing, "outline").stream()
                .map(Svg::places)
                .filter(places -> places.size() > 20)
                .findFirst()
                .orElseThrow();
        double ratio = view.scale().ratio();
        double expected = landfall.cut.FlutedSection.outline(cut.tap()).area().mm2();
        assertThat(area(outline) / ratio / ratio).isCloseTo(expected, within(0.004 * expected));
        Spot axis = Spot.at(30, 35);
        double farthest = outline.stream().mapToDouble(axis::distance).max().orElseThrow();
        assertThat(farthest / ratio).isCloseTo(section.outer().mm() / 2, within(0.02 / ratio + 1e-3));
    }

    /** A left-hand tap is the mirror of the right-hand one. */
    @Test
    void theLeftHandSectionIsTheMirror() {
        Cut left = ShopCuts.leftHand();
        Cut right = ShopCuts.of(
                "tap-m10-left-hand", "thread", "M10x1.5-6H", "hole", "8.5 mm", "depth", "12 mm", "through", "yes");
        List<Spot> lefts = outline(left);
        List<Spot> rights = outline(right);
        assertThat(lefts).hasSameSizeAs(rights);
        double mirror = 2 * 30;
        assertThat(rights)
                .allSatisfy(spot -> assertThat(lefts)
                        .anyMatch(other -> Math.abs(mirror - other.x() - spot.x()) < 0.03
                                && Math.abs(other.y() - spot.y()) < 0.03));
    }

    private static List<Spot> outline(Cut cut) {
        var section = cut.forecast().load().strength().section();
        Drawing drawing = new SectionView(cut.tap(), section, cut.figures()).draw("x", Ink.PAPER);
        return Svg.paths(drawing, "outline").stream()
                .map(Svg::places)
                .filter(places -> places.size() > 20)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsOverAHigherShareOfThePeakIsLess() {
        Cut cut = ShopCuts.blind();
        var section = cut.forecast().load().strength().section();
        var field = landfall.torsion.StressField.of(landfall.cut.FlutedSection.outline(cut.tap()), section.outer());
        Contours contours = new Contours(field, section);
        double before = Double.POSITIVE_INFINITY;
        for (double share : new double[] {0.2, 0.4, 0.6, 0.8, 0.95}) {
            double area = contours.above(share).stream()
                    .mapToDouble(line -> signed(line))
                    .sum();
            assertThat(area).isPositive().isLessThan(before);
            before = area;
        }
    }

    private static double signed(List<landfall.torsion.Place> line) {
        double twice = 0;
        for (int i = 0; i < line.size(); i++) {
            var a = line.get(i);
            var b = line.get((i + 1) % line.size());
            twice += a.x().mm() * b.y().mm() - b.x().mm() * a.y().mm();
        }
        return twice / 2;
    }
}
