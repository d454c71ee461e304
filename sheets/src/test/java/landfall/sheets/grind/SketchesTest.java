// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import landfall.grind.Fall;
import landfall.grind.GrindSetup;
import landfall.quantity.UnitSystem;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Spot;
import landfall.sheets.draw.Svg;
import landfall.sheets.draw.Texts;
import landfall.sheets.figure.Figures;
import landfall.sheets.grind.FallView.Course;
import landfall.sheets.paper.Examples;
import landfall.sheets.paper.ShopTaps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SketchesTest {
    private static final Figures MM = new Figures(UnitSystem.METRIC);
    private static final Figures INCH = new Figures(UnitSystem.INCH);
    /** Coordinates are written to 0.01. */
    private static final double WRITTEN = 0.0151;

    static Stream<GrindSetup> setups() {
        return Stream.of(
                ShopTaps.plug(),
                ShopTaps.plugLeftHand(),
                ShopTaps.leftHand(),
                ShopTaps.oneArc(),
                ShopTaps.bothSlides(),
                ShopTaps.large(),
                ShopTaps.small(),
                Examples.wornHalfInch(),
                Examples.leftHand());
    }

    @ParameterizedTest
    @MethodSource("setups")
    void everyTextFitsItsDrawingAndNoTwoTextsOverlap(GrindSetup setup) {
        for (Figures figures : List.of(MM, INCH)) {
            for (Drawing drawing : new Sketches(setup, figures, "s").all(Ink.PAPER)) {
                Texts.fitAndKeepApart(drawing);
            }
        }
    }

    /** Scale law: the triangle as drawn, over the scale, is the three falls. */
    @ParameterizedTest
    @MethodSource("setups")
    void theHeelTriangleIsTheFallsToScale(GrindSetup setup) {
        Fall fall = Sketches.heelFall(setup);
        HeelView view = new HeelView(fall, setup.tap().chamfer().angle(), MM);
        List<Spot> triangle = Svg.paths(view.draw("h", Ink.PAPER), "thin").stream()
                .filter(path -> path.endsWith("Z"))
                .map(Svg::places)
                .findFirst()
                .orElseThrow();
        Spot edge = triangle.get(0);
        Spot heel = triangle.get(1);
        Spot above = triangle.get(2);
        double ratio = view.scale().ratio();
        assertThat(edge.distance(heel)).isCloseTo(fall.axial().mm() * ratio, within(WRITTEN));
        assertThat(heel.distance(above)).isCloseTo(fall.radial().mm() * ratio, within(WRITTEN));
        double twiceArea = (heel.x() - edge.x()) * (heel.y() - above.y());
        double square = twiceArea / edge.distance(above);
        assertThat(square).isCloseTo(fall.square().mm() * ratio, within(2 * WRITTEN));
        assertThat(edge.direction(above))
                .isCloseTo(setup.tap().chamfer().angle().deg(), within(0.15));
    }

    /** With a straight rise on time what is drawn is the set-up's own fall. */
    @Test
    void theFallThatIsDrawnIsTheFallOfTheAnswer() {
        GrindSetup setup = ShopTaps.plug();
        Fall fall = setup.shape().fall();
        Fall drawn = Sketches.heelFall(setup);
        assertThat(drawn.radial().mm()).isCloseTo(fall.radial().mm(), within(1e-12));
        assertThat(drawn.axial().mm()).isCloseTo(fall.axial().mm(), within(1e-12));
        assertThat(drawn.square().mm()).isCloseTo(fall.square().mm(), within(1e-12));
        Course course = Sketches.course(setup);
        double kappa = setup.tap().chamfer().angle().rad();
        double advance = setup.lead().axialAdvance().mm() * Math.tan(kappa);
        assertThat(course.advance().mm()).isCloseTo(advance, within(1e-12));
    }

    /** Unrolled to one scale both ways, the surface starts at the static transverse relief. */
    @Test
    void theUnrolledSlopeIsTheTrueAngle() {
        GrindSetup setup = ShopTaps.plug();
        FallView view = new FallView(Sketches.course(setup), MM);
        List<Spot> surface =
                Svg.places(Svg.paths(view.draw("f", Ink.PAPER), "outline").get(0));
        Spot edge = surface.get(1);
        Spot heel = surface.get(surface.size() - 2);
        double slope = -edge.direction(heel);
        assertThat(slope).isCloseTo(setup.shape().relief().transverse().deg(), within(0.02));
        double width = (heel.x() - edge.x()) / view.scale().ratio();
        assertThat(width)
                .isCloseTo(setup.shape().midRadius().mm() * setup.land().rad(), within(0.002));
    }

    @Test
    void theEndViewIsToScale() {
        GrindSetup setup = ShopTaps.plug();
        Stroke stroke = new Stroke(
                setup.fixture().cam().lobe(),
                setup.motion().gap(),
                setup.shape().fall().perRadian(),
                setup.fixture().wheel().diameter());
        EndView view = new EndView(TapShape.of(setup), stroke, MM);
        String outline = Svg.paths(view.draw("e", Ink.PAPER), "outline").stream()
                .filter(path -> path.endsWith("Z"))
                .findFirst()
                .orElseThrow();
        assertThat(view.scale().ratio()).isEqualTo(5);
        assertThat(outline).contains("A20 20 0 0 1");
        Spot axis = Spot.at(36, 42);
        List<Spot> places = Svg.places(outline);
        assertThat(places).allSatisfy(place -> assertThat(axis.distance(place)).isBetween(1.75 * 5 - 0.02, 20.02));
        double land = axis.direction(places.get(0)) - axis.direction(places.get(1));
        assertThat(land).isCloseTo(setup.land().deg(), within(0.05));
    }

    /** A left-hand tap is the mirror of the right-hand one, line by line. */
    @Test
    void theLeftHandEndViewIsTheMirror() {
        Drawing right = new Sketches(ShopTaps.plug(), MM, "s").end(Ink.PAPER);
        Drawing left = new Sketches(ShopTaps.plugLeftHand(), MM, "s").end(Ink.PAPER);
        for (String word : List.of("outline", "wanted", "alarm")) {
            List<String> rights = Svg.paths(right, word);
            List<String> lefts = Svg.paths(left, word);
            assertThat(lefts).hasSameSizeAs(rights);
            for (int i = 0; i < rights.size(); i++) {
                List<Spot> mirrored = Svg.places(lefts.get(i));
                List<Spot> places = Svg.places(rights.get(i));
                assertThat(mirrored).hasSameSizeAs(places);
                for (int k = 0; k < places.size(); k++) {
                    double mirror = EndView.SIZE.x() - mirrored.get(k).x();
                    assertThat(mirror).isCloseTo(places.get(k).x(), within(WRITTEN));
                    assertThat(mirrored.get(k).y()).isCloseTo(places.get(k).y(), within(WRITTEN));
                }
            }
        }
        assertThat(right.texts()).anySatisfy(text -> assertThat(text.text()).isEqualTo("turn counter-clockwise"));
        assertThat(left.texts()).anySatisfy(text -> assertThat(text.text()).isEqualTo("turn clockwise"));
    }

    @Test
    void theDescriptionSaysWhatTheDrawingShows() {
        String svg =
                new Sketches(ShopTaps.leftHand(), INCH, "s").end(Ink.SCREEN).svg();
        assertThat(svg)
                .contains("4 flutes, left hand: to cut it turns clockwise as seen from the point.")
                .contains("needed 43.6\u00b0, had 35.0\u00b0, not clear.");
    }
}
