// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import landfall.gauge.GaugeWish;
import landfall.gauge.Gauging;
import landfall.gauge.ThreadGauges;
import landfall.gauge.VAnvil;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Spot;
import landfall.sheets.draw.Svg;
import landfall.sheets.draw.Texts;
import landfall.sheets.figure.Figures;
import landfall.thread.CallOut;
import landfall.thread.Side;
import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

@DisplayName("Drawings of gauging")
class GaugeSketchesTest {
    private static final Figures MM = new Figures(UnitSystem.METRIC);
    private static final Figures INCH = new Figures(UnitSystem.INCH);
    /** Coordinates are written to 0.01. */
    private static final double WRITTEN = 0.0151;

    private static CallOut callOut(String text) {
        return CallOuts.read(text).orThrow();
    }

    private static Gauging gauging(CallOut callOut, GaugeWish wish) {
        return Gauging.of(callOut, wish).orThrow().value();
    }

    /** The reading of a tap of basic pitch diameter and crest, so that the drawing is of a real tap. */
    private static GaugeWish inVAnvil(CallOut callOut, int flutes) {
        Length major = callOut.thread().major();
        double half = Math.toRadians(90 - 180.0 / flutes);
        double factor = (1 + 1 / Math.sin(half)) / 2;
        double wireTop = WiresView.middle(
                        callOut.thread(),
                        callOut.thread().pitchDiameter(),
                        gauging(callOut, GaugeWish.NOTHING).wire())
                + gauging(callOut, GaugeWish.NOTHING).wire().mm() / 2;
        double height = wireTop + major.mm() / 2 / Math.sin(half);
        var reading = new VAnvil.Reading(Length.ofMm(height / factor), false);
        return new GaugeWish(null, null, null, new GaugeWish.InVAnvil(flutes, reading, major));
    }

    static Stream<String> callOuts() {
        return Stream.of(
                "M1x0.25",
                "M8x1.25",
                "M8x1.25-6g",
                "M64x6-4H",
                "M16xPh3P1.5-6H-LH",
                "MJ8x1.25",
                "1/4-20 UNC-2B",
                "1/4-20 UNC-2A",
                "0-80 UNF",
                "1/4-28 UNJF-3B",
                "4-4 UNC",
                "1/2-14 NPT",
                "R 2",
                "G 1/2",
                "Rp 1/2",
                "1/4-20 BSW",
                "2 BA",
                "1/2-10 ACME",
                "1/2-10 STUB ACME",
                "Tr20x8P4-LH",
                "Tr100x12-7e",
                "STI M8");
    }

    @ParameterizedTest
    @MethodSource("callOuts")
    void everyDrawingHasInkAndItsTextsFitAndKeepApart(String text) {
        CallOut callOut = callOut(text);
        GaugeWish measured = new GaugeWish(null, callOut.thread().pitchDiameter(), null, null);
        for (GaugeWish wish : List.of(GaugeWish.NOTHING, measured, inVAnvil(callOut, 3), inVAnvil(callOut, 5))) {
            Gauging gauging = gauging(callOut, wish);
            for (Figures figures : List.of(MM, INCH)) {
                for (Drawing drawing : new GaugeSketches(gauging, wish, figures, "g").all(Ink.PAPER)) {
                    Texts.fitAndKeepApart(drawing);
                    assertThat(Svg.paths(drawing, "outline")).isNotEmpty();
                }
            }
        }
    }

    /** The hole's zone as drawn, over the scale, is the tolerance; GO lies on its foot and NOT GO under its top. */
    @Test
    void zonesAreToScale() {
        CallOut callOut = callOut("1/4-20 UNC-2B");
        Gauging gauging = gauging(callOut, GaugeWish.NOTHING);
        ThreadGauges gauges = Objects.requireNonNull(gauging.gauges());
        GaugeView view = new GaugeView(callOut.limits(Side.INTERNAL, Pen.NONE).orElseThrow(), gauges, MM);
        Drawing drawing = view.draw("g", Ink.PAPER);
        double ratio = view.scale().ratio();
        List<Spot> hole = Svg.places(Svg.paths(drawing, "outline").get(0));
        double tolerance = 0.0049 * 25.4;
        assertThat((hole.get(2).y() - hole.get(0).y()) / ratio).isCloseTo(tolerance, within(2 * WRITTEN / ratio));
        List<String> solid = Svg.paths(drawing, "solid");
        List<Spot> go = Svg.places(solid.get(0));
        List<Spot> notGo = Svg.places(solid.get(1));
        assertThat(go.get(2).y()).isCloseTo(hole.get(2).y(), within(WRITTEN));
        assertThat(notGo.get(0).y()).isCloseTo(hole.get(0).y(), within(WRITTEN));
        double gaugeTolerance = Objects.requireNonNull(gauges.go().pitch().max())
                .minus(Objects.requireNonNull(gauges.go().pitch().min()))
                .mm();
        assertThat((go.get(2).y() - go.get(0).y()) / ratio).isCloseTo(gaugeTolerance, within(2 * WRITTEN / ratio));
    }

    private record Ring(Spot middle, double radius) {}

    private static List<Ring> rings(Drawing drawing, String word) {
        NodeList all = Svg.parse(drawing.svg()).getElementsByTagName("circle");
        return java.util.stream.IntStream.range(0, all.getLength())
                .mapToObj(i -> (Element) all.item(i))
                .filter(circle -> circle.getAttribute("class").equals("lf-" + word))
                .map(circle -> new Ring(Spot.at(number(circle, "cx"), number(circle, "cy")), number(circle, "r")))
                .toList();
    }

    private static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    /**
     * Each wire as drawn touches the flanks as drawn: its middle is one radius from the nearest place of the thread.
     */
    @ParameterizedTest
    @ValueSource(strings = {"M8x1.25", "1/4-20 UNC", "1/2-10 ACME", "Tr20x4", "1/4-20 BSW", "2 BA"})
    void wiresTouchBothFlanks(String text) {
        CallOut callOut = callOut(text);
        Gauging gauging = gauging(callOut, GaugeWish.NOTHING);
        Drawing groove = new GrooveView(gauging, MM).draw("w", Ink.PAPER);
        List<Spot> contour = Svg.places(Svg.paths(groove, "outline").get(0));
        Ring inUse = rings(groove, "outline").get(0);
        assertThat(nearest(contour, inUse.middle(), true)).isCloseTo(inUse.radius(), within(3 * WRITTEN));
        assertThat(nearest(contour, inUse.middle(), false)).isCloseTo(inUse.radius(), within(3 * WRITTEN));
        Drawing wires = new WiresView(gauging, MM).draw("w", Ink.PAPER);
        List<Spot> upper = Svg.places(Svg.paths(wires, "outline").get(0));
        List<Spot> lower = Svg.places(Svg.paths(wires, "outline").get(1));
        List<Ring> rings = rings(wires, "outline");
        assertThat(rings).hasSize(3);
        assertThat(nearest(upper, rings.get(0).middle(), true))
                .isCloseTo(rings.get(0).radius(), within(3 * WRITTEN));
        assertThat(nearest(lower, rings.get(2).middle(), true))
                .isCloseTo(rings.get(2).radius(), within(3 * WRITTEN));
    }

    /** Least distance of the stretches to the left, or to the right, of a place. */
    private static double nearest(List<Spot> line, Spot from, boolean left) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i + 1 < line.size(); i++) {
            for (int k = 0; k <= 400; k++) {
                Spot at = line.get(i).towards(line.get(i + 1), k / 400.0);
                if (left == at.x() < from.x()) {
                    least = Math.min(least, at.distance(from));
                }
            }
        }
        return least;
    }

    /** The faces of the V touch the circle over the crests, and the wire stands one reading times k over the apex. */
    @ParameterizedTest
    @CsvSource({"M10x1.5, 3", "1/4-20 UNC, 5", "Tr40x7, 7"})
    void theVTouchesTheCrestsAndTheReadingIsToScale(String text, int flutes) {
        CallOut callOut = callOut(text);
        GaugeWish wish = inVAnvil(callOut, flutes);
        Gauging gauging = gauging(callOut, wish);
        AnvilView view = new AnvilView(gauging, Objects.requireNonNull(wish.anvil()), MM);
        Drawing drawing = view.draw("v", Ink.PAPER);
        List<Spot> block = Svg.places(Svg.paths(drawing, "outline").get(0));
        Ring crest = rings(drawing, "phantom").get(0);
        Spot left = block.get(0);
        Spot apex = block.get(1);
        double toFace = apex.distance(crest.middle())
                * Math.sin(Math.toRadians(Math.abs(apex.direction(left) - apex.direction(crest.middle()))));
        assertThat(toFace).isCloseTo(crest.radius(), within(0.05));
        assertThat(crest.radius() * 2 / view.scale().ratio())
                .isCloseTo(callOut.thread().major().mm(), within(0.02));
        List<Spot> wire = Svg.places(Svg.paths(drawing, "outline").get(2));
        VAnvil anvil = Objects.requireNonNull(gauging.anvil());
        double height = (apex.y() - wire.get(0).y()) / view.scale().ratio();
        double wanted = anvil.factor()
                * Objects.requireNonNull(wish.anvil()).reading().value().mm();
        assertThat(height).isCloseTo(wanted, within(0.03));
    }

    @Test
    void wordsSayWhatTheDrawingShows() {
        CallOut callOut = callOut("1/2-13 UNC-2A");
        GaugeWish wish = new GaugeWish(Length.ofInch(0.050), null, Length.ofInch(0.53352), null);
        List<Drawing> all = new GaugeSketches(gauging(callOut, wish), wish, INCH, "g").all(Ink.SCREEN);
        assertThat(all).hasSize(3);
        assertThat(all.get(0).svg()).contains("NOT GO");
        assertThat(all.get(1).svg()).contains("Wire 0.0500 in").contains("M 0.5335");
        assertThat(all.get(2).svg()).contains("in use 0.0500 in");
    }
}
