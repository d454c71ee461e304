// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import java.util.ArrayList;
import java.util.List;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.sheets.dial.Letters;
import landfall.sheets.draw.Dimensions;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Scale;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;

/**
 * The chamfer in the axial plane, upper half of the tap, point to the left: what the swivel is set to, the diameters at
 * point and full thread, the chamfer's length, the wheel along the chamfer, and where along the tap each stylus stands.
 */
public final class ChamferView {
    public static final Spot SIZE = Spot.at(94, 48);

    private static final double AXIS_Y = 40;
    private static final double POINT_X = 29;
    private static final double ROOM_LENGTH = 48;
    private static final double ROOM_RADIUS = 20;

    private final TapShape tap;
    private final Angle swivel;
    private final Figures figures;
    private final Scale scale;

    public ChamferView(TapShape tap, Angle swivel, Figures figures) {
        this.tap = tap;
        this.swivel = swivel;
        this.figures = figures;
        this.scale =
                Scale.fitting(shownLength(tap), ROOM_LENGTH).orSmaller(Scale.fitting(tap.majorRadius(), ROOM_RADIUS));
    }

    private static Length shownLength(TapShape tap) {
        return tap.chamferLength().plus(tap.thread().pitch().times(3.25));
    }

    public Scale scale() {
        return scale;
    }

    public Drawing draw(String id, Ink ink) {
        String title = "Chamfer in the axial plane, " + scale.words();
        Drawing drawing = new Drawing(id, title, description(), SIZE, ink);
        drawing.text(
                Spot.at(0, 3.6),
                "Chamfer, axial plane  " + scale.words() + "  (" + figures.unit() + ")",
                Lettering.NOTE.bold());
        body(drawing);
        wheel(drawing);
        dimensions(drawing);
        styli(drawing);
        return drawing;
    }

    private String description() {
        return "Upper half of the tap, point left. Swivel %s. Point diameter %s, major diameter %s, chamfer %s long."
                .formatted(
                        figures.fineAngle(swivel),
                        figures.length(tap.chamfer().pointDiameter()),
                        figures.length(tap.thread().major()),
                        figures.coarse(tap.chamferLength()));
    }

    private Spot at(double zMm, double rMm) {
        return Spot.at(POINT_X + zMm * scale.ratio(), AXIS_Y - rMm * scale.ratio());
    }

    private void body(Drawing drawing) {
        double end = shownLength(tap).mm();
        List<Spot> spots = new ArrayList<>();
        spots.add(at(0, 0));
        new Profile(tap, end).corners().forEach(corner -> spots.add(at(corner.z(), corner.r())));
        Outline half = Outline.through(spots).lineTo(at(end, 0)).close();
        drawing.fill(half, Fill.TINT);
        drawing.path(Outline.through(spots), Line.OUTLINE);
        breakLine(drawing, spots.get(spots.size() - 1), at(end, 0));
        drawing.line(at(0, 0).plus(-20, 0), at(end, 0).plus(3.5, 0), Line.CENTRE);
    }

    /** A thin zigzag: the tap goes on. */
    private static void breakLine(Drawing drawing, Spot top, Spot bottom) {
        Spot middle = top.towards(bottom, 0.5);
        drawing.path(
                Outline.through(List.of(
                        top,
                        middle.plus(0, -2),
                        middle.plus(1.4, -0.7),
                        middle.plus(-1.4, 0.7),
                        middle.plus(0, 2),
                        bottom)),
                Line.THIN);
    }

    /** The wheel's face lies along the chamfer when the swivel is right. */
    private void wheel(Drawing drawing) {
        double length = tap.chamferLength().mm();
        double direction = tap.chamfer().angle().deg();
        Spot start = at(0, tap.pointRadius().mm()).polar(direction + 180, 1.5).polar(direction + 90, 0.7);
        Spot end = at(length, tap.majorRadius().mm()).polar(direction, 2.5).polar(direction + 90, 0.7);
        double high = 6.5;
        Outline face = Outline.through(
                        List.of(start, end, end.polar(direction + 90, high), start.polar(direction + 90, high)))
                .close();
        drawing.hatch(face, 2).path(face, Line.PHANTOM);
        Spot middle = start.towards(end, 0.5);
        drawing.text(
                middle.polar(direction + 90, high + 1),
                "wheel",
                Lettering.NOTE.middle().turned(direction));
        Spot inside = middle.polar(direction + 90, high / 2);
        new Balloon(drawing).at(inside.polar(direction + 180, 2.8), Letters.of(Place.CHAMFER_STILL));
        new Balloon(drawing).at(inside.polar(direction, 2.8), Letters.of(Place.CHAMFER_WORKING));
    }

    private void dimensions(Drawing drawing) {
        Dimensions dimensions = new Dimensions(drawing);
        Spot corner = at(0, tap.pointRadius().mm());
        double angle = tap.chamfer().angle().deg();
        drawing.line(corner.plus(-0.8, 0), corner.plus(-24.5, 0), Line.THIN);
        drawing.line(corner.polar(180 + angle, 0.8), corner.polar(180 + angle, 18), Line.THIN);
        dimensions.arc(corner, 15, 180, 180 + angle);
        drawing.text(
                corner.plus(-28, -1), figures.plainAngle(swivel), Lettering.FIGURE.anchored(Lettering.Anchor.START));
        half(drawing, corner.plus(-23, 0), figures.diameter(tap.chamfer().pointDiameter()));
        double end = shownLength(tap).mm();
        Spot crest = at(end, tap.majorRadius().mm());
        drawing.line(at(lastCrest(), tap.majorRadius().mm()), crest.plus(9, 0), Line.THIN);
        half(drawing, crest.plus(8, 0), figures.diameter(tap.thread().major()));
        Spot large = at(tap.chamferLength().mm(), tap.majorRadius().mm());
        drawing.line(Spot.at(large.x(), AXIS_Y - 2), Spot.at(large.x(), AXIS_Y + 6), Line.THIN);
        dimensions.across(at(0, 0), Spot.at(large.x(), AXIS_Y), AXIS_Y + 5, figures.coarse(tap.chamferLength()));
    }

    private double lastCrest() {
        double pitch = tap.thread().pitch().mm();
        double first = tap.chamferLength().mm() + pitch / 2;
        return first + 2 * pitch;
    }

    /** A diameter of which only the upper half is drawn: one arrow, the line runs past the axis. */
    private static void half(Drawing drawing, Spot top, String text) {
        double half = Lettering.FIGURE.width(text) / 2;
        double centre = Math.max((top.y() + AXIS_Y) / 2, top.y() + 1.5 + half);
        Spot foot = Spot.at(top.x(), Math.max(AXIS_Y + 4, centre + half));
        drawing.line(top, foot, Line.THIN);
        new Dimensions(drawing).arrowhead(top, 90);
        Spot middle = Spot.at(top.x() - 0.8, centre);
        drawing.text(middle, text, Lettering.FIGURE.turned(90));
    }

    private void styli(Drawing drawing) {
        Balloon balloon = new Balloon(drawing);
        double pitch = tap.thread().pitch().mm();
        double crest = tap.chamferLength().mm() + pitch / 2;
        balloon.stylus(at(0, 0), 180, 13, Letters.of(Place.END));
        double depth = tap.thread().major().minus(tap.thread().minorDiameter()).mm() / 2;
        Spot flank = at(crest + pitch * 0.35, tap.majorRadius().mm() - depth / 2);
        double top = AXIS_Y - tap.majorRadius().mm() * scale.ratio();
        balloon.stylus(flank, 90, flank.y() - top + 9.5, Letters.of(Place.FLANK));
        balloon.anvil(
                at(crest + 1.5 * pitch, tap.majorRadius().mm()),
                90,
                1.6 * pitch * scale.ratio(),
                Letters.of(Place.CREST));
    }
}
