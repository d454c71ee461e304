// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Spot;
import landfall.sheets.draw.Svg;
import landfall.sheets.draw.TextBox;
import landfall.sheets.draw.Texts;
import landfall.sheets.figure.Figures;
import landfall.thread.CallOut;
import landfall.thread.LimitsOfSize;
import landfall.thread.Side;
import landfall.thread.Taper;
import landfall.thread.callout.CallOuts;
import landfall.thread.callout.StandardThreads;
import landfall.working.Pen;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Drawings of a thread")
class ThreadSketchesTest {
    private static final Figures MM = new Figures(UnitSystem.METRIC);
    private static final Figures INCH = new Figures(UnitSystem.INCH);
    /** Coordinates are written to 0.01. */
    private static final double WRITTEN = 0.0151;

    private static LimitsOfSize limits(String callOut) {
        return limits(CallOuts.read(callOut).orThrow());
    }

    private static LimitsOfSize limits(CallOut callOut) {
        return LimitsOfSize.of(callOut, Pen.NONE);
    }

    /** Of every family, with classes of one side, several starts, left hand and insert holes among them. */
    private static final List<String> CALL_OUTS = List.of(
            "M8x1.25",
            "M8x1.25-6H",
            "M8x1.25-6g",
            "M1x0.25",
            "M64x6-4H",
            "M16xPh3P1.5-6H-LH",
            "M24xPh9P3",
            "MJ8x1.25",
            "MJ6x1-4h6h",
            "1/4-20 UNC",
            "1/4-20 UNC-2A",
            "0-80 UNF",
            "10-32 UNF-3B-LH",
            "2 1/2-8 UN-2A",
            "0.2500-0.05P-0.1L UNS-2A",
            "1/4-28 UNJF",
            "1/16-27 NPT",
            "1/2-14 NPT",
            "6-8 NPT",
            "1/4-18 NPTF-1",
            "G 1/8",
            "G 1/2 A",
            "G 6",
            "R 1/2",
            "Rc 1/2",
            "Rp 1/2",
            "1/4-20 BSW",
            "1-10 BSF",
            "0 BA",
            "16 BA",
            "1/2-10 ACME",
            "1.0000-0.2P-0.4L ACME-3G",
            "1/2-10 STUB ACME-LH",
            "Tr20x4",
            "Tr20x8P4-LH",
            "Tr100x12-7e",
            "STI 1/4-20 UNC-2B",
            "STI M8");

    static Stream<String> callOuts() {
        return CALL_OUTS.stream();
    }

    @ParameterizedTest
    @MethodSource("callOuts")
    void everyDrawingHasInkAndItsTextsFitAndKeepApart(String callOut) {
        for (Figures figures : List.of(MM, INCH)) {
            List<Drawing> all = new ThreadSketches(limits(callOut), figures, "s").all(Ink.PAPER);
            assertThat(all).hasSizeBetween(2, 3);
            for (Drawing drawing : all) {
                Texts.fitAndKeepApart(drawing);
                assertThat(Svg.paths(drawing, "outline")).isNotEmpty();
                assertThat(drawing.svg()).doesNotContain("NaN");
            }
        }
    }

    /** Two thousand standard sizes: none fails to draw, no texts touch. */
    @Test
    void everyStandardThreadDraws() {
        List<String> wrong = new ArrayList<>();
        for (CallOut callOut : StandardThreads.all()) {
            Figures figures = new Figures(callOut.thread().family().system());
            try {
                for (Drawing drawing : new ThreadSketches(limits(callOut), figures, "s").all(Ink.PAPER)) {
                    Texts.fitAndKeepApart(drawing);
                }
            } catch (RuntimeException | AssertionError e) {
                wrong.add(callOut.normal() + ": " + e);
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** The zones as drawn, over the scale, are the limits of the answer. */
    @ParameterizedTest
    @ValueSource(strings = {"M8x1.25", "1/4-20 UNC", "1/2-10 ACME", "Tr20x4", "1/4-20 BSW", "2 BA", "1-8 UNC"})
    void zonesAreToScale(String callOut) {
        LimitsOfSize limits = limits(callOut);
        LimitsView view = new LimitsView(limits, MM);
        List<Double> drawn = new ArrayList<>();
        for (String path : Svg.paths(view.draw("l", Ink.PAPER), "outline")) {
            if (path.endsWith("Z")) {
                List<Spot> box = Svg.places(path);
                double height = box.get(2).y() - box.get(0).y();
                drawn.add(height / view.scale().ratio());
            }
        }
        for (Side side : Side.values()) {
            var pitch = (side == Side.INTERNAL ? limits.internal() : limits.external())
                    .orElseThrow()
                    .pitch();
            double zone = Objects.requireNonNull(pitch.max())
                    .minus(Objects.requireNonNull(pitch.min()))
                    .mm();
            double grain = 2 * WRITTEN / view.scale().ratio();
            assertThat(drawn)
                    .as("zone of the pitch diameter %s", side)
                    .anySatisfy(each -> assertThat(each).isCloseTo(zone, within(grain)));
        }
    }

    /** Width at the pitch line is half a pitch, the flanks lean by the flank angle, the pitch is the pitch. */
    @ParameterizedTest
    @ValueSource(
            strings = {"M8x1.25", "1/4-20 UNC", "1/2-10 ACME", "Tr20x4", "1/4-20 BSW", "2 BA", "1/2-14 NPT", "G 1/2"})
    void theProfileIsToScale(String callOut) {
        LimitsOfSize limits = limits(callOut);
        FormView view = new FormView(limits, MM);
        Drawing drawing = view.draw("f", Ink.PAPER);
        List<String> contours = Svg.paths(drawing, "outline");
        assertThat(contours).hasSize(2);
        double P = limits.callOut().thread().pitch().mm() * view.scale().ratio();
        for (String contour : contours) {
            List<Spot> places = Svg.places(contour);
            double width = places.get(places.size() - 1).x() - places.get(0).x();
            assertThat(width).isCloseTo(1.5 * P, within(WRITTEN));
            double steepest = 0;
            for (int i = 0; i + 1 < places.size(); i++) {
                if (places.get(i).distance(places.get(i + 1)) > P / 8) {
                    double lean = Math.abs(90 - Math.abs(places.get(i).direction(places.get(i + 1))));
                    steepest = lean < 89 ? lean : steepest;
                }
            }
            assertThat(steepest)
                    .isCloseTo(limits.callOut().thread().profile().flankAngle().deg(), within(0.4));
        }
    }

    /** The gap between the thick lines, over the scale, is the least clearance of the answer. */
    @ParameterizedTest
    @ValueSource(strings = {"M8x1.25", "1/4-20 UNC", "Tr20x4", "1/2-10 ACME"})
    void theGapBetweenTheThickLinesIsTheLeastClearance(String callOut) {
        LimitsOfSize limits = limits(callOut);
        Mating mating = new Mating(limits);
        double nut = mating.most(Side.INTERNAL).heights().pitchLine();
        double screw = mating.most(Side.EXTERNAL).heights().pitchLine();
        Length least = limits.fit().orElseThrow().least();
        assertThat(2 * (nut - screw)).isCloseTo(least.mm(), within(1e-9));
    }

    /** ISO 68-1 and BS 84: radius H/6 off the corner, 0.137329 P; BA 2 P / 11 (BS 93). */
    @Test
    void roundedFormsHaveTheRadiusOfTheirStandard() {
        Contour whitworth = new Mating(limits("1/4-20 BSW")).most(Side.EXTERNAL);
        assertThat(whitworth.peakRadius() / 1.27).isCloseTo(0.137329, within(0.0008));
        Contour ba = new Mating(limits("0 BA")).most(Side.EXTERNAL);
        assertThat(ba.peakRadius()).isCloseTo(2.0 / 11, within(0.002));
        Contour metric = new Mating(limits("M8x1.25")).least(Side.EXTERNAL);
        assertThat(metric.valleyRadius() / 1.25).isCloseTo(0.125, within(0.001));
    }

    /** Planes stand where the answer says, at the scale that the drawing names, and the wall grows 1 in 32. */
    @ParameterizedTest
    @ValueSource(strings = {"1/2-14 NPT", "R 2", "6-8 NPT", "1/16-27 NPT"})
    void planesAreToScale(String callOut) {
        LimitsOfSize limits = limits(callOut);
        TaperView view = new TaperView(limits, MM);
        List<Spot> feet = Svg.paths(view.draw("t", Ink.PAPER), "phantom").stream()
                .map(path -> Svg.places(path).get(0))
                .toList();
        List<Taper.Plane> planes = limits.taper().orElseThrow().planes();
        assertThat(feet).hasSameSizeAs(planes);
        for (int i = 1; i < planes.size(); i++) {
            double apart = planes.get(i).at().minus(planes.get(0).at()).mm();
            assertThat(feet.get(i).x() - feet.get(0).x())
                    .isCloseTo(apart * view.scale().ratio(), within(WRITTEN));
        }
    }

    /** A left-hand screw leans the other way. */
    @Test
    void leftHandLeansTheOtherWay() {
        assertThat(lean("M8x1.25")).isPositive();
        assertThat(lean("M8x1.25-LH")).isNegative();
        assertThat(lean("M8x1.25-LH")).isCloseTo(-lean("M8x1.25"), within(2 * WRITTEN));
    }

    /** Along the axis from the upper end of a full crest line to its lower end. */
    private static double lean(String callOut) {
        Drawing drawing = new ScrewView(limits(callOut), MM).draw("s", Ink.PAPER);
        double greatest = 0;
        for (String path : Svg.paths(drawing, "outline")) {
            List<Spot> places = Svg.places(path);
            if (places.size() == 2) {
                double way = (places.get(1).x() - places.get(0).x())
                        * Math.signum(places.get(1).y() - places.get(0).y());
                greatest = Math.abs(way) > Math.abs(greatest) ? way : greatest;
            }
        }
        return greatest;
    }

    @Test
    void wordsSayWhatTheDrawingShows() {
        List<Drawing> all = new ThreadSketches(limits("M8x1.25-6H"), MM, "s").all(Ink.SCREEN);
        assertThat(all.get(0).svg())
                .contains("Clearance at the pitch diameter: least 0.028, greatest 0.306.")
                .contains("inside 6H with outside 6g (the usual class)");
        assertThat(all.get(1).svg()).contains("pitch: inside 7.188 to 7.348, outside 7.042 to 7.160");
        assertThat(all.get(2).svg()).contains("right-hand thread, 1 start, advance 1.250 mm in one turn");
        assertThat(all.get(0).texts()).extracting(TextBox::text).contains("P 1.250", "60°");
    }
}
