// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import landfall.gauge.GaugeWish;
import landfall.gauge.Gauging;
import landfall.gauge.VAnvil;
import landfall.quantity.Length;
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
import landfall.thread.ScrewThread;

/**
 * A tap with an odd number of flutes in a V-anvil, seen from its end: two lands on the faces of the V, the wire lying
 * across the land opposite, under the spindle. The circle over the crests, the V and the wire are to scale; lands and
 * flutes are drawn of a usual width, since only their number counts here.
 */
public final class AnvilView {
    private static final Lettering NOTE = Lettering.NOTE.sized(Lettering.FIGURE.size());
    private static final double WIDTH = 94;
    private static final double ROOM = 40;
    private static final double AXIS_X = 40;
    private static final double TOP = 17;
    private static final double LAND_SHARE = 0.5;

    private final ScrewThread thread;
    private final Figures figures;
    private final VAnvil anvil;
    private final GaugeWish.InVAnvil given;
    private final Length wire;
    private final Length crest;
    private final boolean onWires;
    private final Scale scale;

    public AnvilView(Gauging gauging, GaugeWish.InVAnvil given, Figures figures) {
        this.thread = gauging.callOut().thread();
        this.figures = figures;
        this.anvil = Objects.requireNonNull(gauging.anvil(), "no V-anvil was asked for");
        this.given = given;
        this.wire = gauging.wire();
        Length told = given.crest();
        this.crest = told == null ? thread.major() : told;
        this.onWires = told == null;
        this.scale = Scale.fitting(crest, ROOM);
    }

    public Scale scale() {
        return scale;
    }

    private double crestRadius() {
        return scale.paper(crest) / 2;
    }

    /** Of the wire's far side over the axis. */
    private double wireTop() {
        double top = WiresView.middle(thread, anvil.pitchDiameter(), wire) + wire.mm() / 2;
        return top * scale.ratio();
    }

    private Spot axis() {
        return Spot.at(AXIS_X, TOP + wireTop());
    }

    /** Of the round that the faces touch: over the crests, or over the wires. */
    private double bearing() {
        return onWires ? wireTop() : crestRadius();
    }

    /** The apex of the V: a round d rests d / (2 sin(V/2)) above it. */
    private Spot apex() {
        return axis().plus(0, bearing() / Math.sin(anvil.angle().rad() / 2));
    }

    public Drawing draw(String id, Ink ink) {
        double foot = apex().y() + 6;
        Drawing drawing =
                new Drawing(id, "Tap in the V-anvil, " + scale.words(), description(), Spot.at(WIDTH, foot + 7), ink);
        drawing.text(Spot.at(0, 3.6), "In the V-anvil  %s  (%s)".formatted(scale.words(), figures.unit()), NOTE.bold());
        block(drawing, foot);
        tap(drawing);
        spindle(drawing);
        dimensions(drawing);
        drawing.text(
                Spot.at(0, foot + 5),
                onWires
                        ? "A wire lies in a groove of each of three lands."
                        : "The wire lies in a groove of the upper land.",
                NOTE);
        return drawing;
    }

    private String description() {
        return "%d lands, V of %s, crests %s, wire %s, pitch diameter %s."
                .formatted(
                        given.flutes(),
                        figures.fineAngle(anvil.angle()),
                        onWires ? "not measured" : figures.length(crest),
                        figures.length(wire),
                        figures.length(anvil.pitchDiameter()));
    }

    private void block(Drawing drawing, double foot) {
        double half = anvil.angle().deg() / 2;
        double touch = bearing() / Math.tan(anvil.angle().rad() / 2);
        double up = touch + 6;
        Spot left = apex().polar(90 + half, up);
        Spot right = apex().polar(90 - half, up);
        Outline block = Outline.through(List.of(
                        left,
                        apex(),
                        right,
                        Spot.at(right.x() + 4, right.y()),
                        Spot.at(right.x() + 4, foot),
                        Spot.at(left.x() - 4, foot),
                        Spot.at(left.x() - 4, left.y())))
                .close();
        drawing.hatch(block, 1.8).path(block, Line.OUTLINE);
    }

    /** Lands about the crest circle, one straight up; flutes as arcs between them. */
    private void tap(Drawing drawing) {
        int lands = given.flutes();
        double pitch = 360.0 / lands;
        double land = pitch * LAND_SHARE;
        double R = crestRadius();
        double core = 0.45 * R;
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < lands; i++) {
            double middle = 90 + i * pitch;
            for (int k = 0; k <= 8; k++) {
                spots.add(axis().polar(middle - land / 2 + land * k / 8, R));
            }
            double between = middle + pitch / 2;
            double wide = (pitch - land) / 2;
            for (int k = 1; k < 12; k++) {
                double t = -1 + 2.0 * k / 12;
                double depth = (R - core) * (1 - t * t);
                spots.add(axis().polar(between + wide * t, R - depth));
            }
        }
        Outline outline = Outline.through(spots).close();
        drawing.fill(outline, Fill.SHEET).fill(outline, Fill.TINT).path(outline, Line.OUTLINE);
        drawing.circle(axis(), R, Line.PHANTOM);
        drawing.line(axis().plus(-R - 3, 0), axis().plus(R + 3, 0), Line.CENTRE);
        drawing.line(axis().plus(0, -R - 2), apex().plus(0, 3), Line.CENTRE);
    }

    private void spindle(Drawing drawing) {
        double w = scale.paper(wire);
        Spot face = axis().plus(0, -wireTop());
        lying(drawing, 90, w);
        if (onWires) {
            double off = 90 - anvil.angle().deg() / 2;
            lying(drawing, 270 - off, w);
            lying(drawing, 270 + off, w);
        }
        Outline spindle = Outline.rectangle(face.plus(-6, -8), 12, 8);
        drawing.fill(spindle, Fill.SHEET).hatch(spindle, 1.4).path(spindle, Line.OUTLINE);
    }

    /** A wire across a land, seen from its side: its far side stands in a direction from the axis. */
    private void lying(Drawing drawing, double directionDeg, double thick) {
        double half = directionDeg == 90 ? 14 : crestRadius() / 3;
        Spot far = axis().polar(directionDeg, wireTop());
        Spot near = axis().polar(directionDeg, wireTop() - thick);
        Outline wire = Outline.through(List.of(
                        far.polar(directionDeg + 90, half),
                        far.polar(directionDeg - 90, half),
                        near.polar(directionDeg - 90, half),
                        near.polar(directionDeg + 90, half)))
                .close();
        drawing.fill(wire, Fill.SHEET).fill(wire, Fill.TINT).path(wire, Line.OUTLINE);
    }

    private void dimensions(Drawing drawing) {
        Dimensions dimensions = new Dimensions(drawing);
        double half = anvil.angle().deg() / 2;
        double reach = Math.min(14, apex().distance(axis()) * 0.45);
        dimensions.arc(apex(), reach, 90 - half, 90 + half);
        Spot right = Spot.at(WIDTH - 26, TOP + 4);
        drawing.text(right, "V " + figures.fineAngle(anvil.angle()), NOTE);
        drawing.text(right.plus(0, 5), onWires ? "V on wires" : "crest " + figures.bare(crest), NOTE);
        drawing.text(right.plus(0, 10), "W " + figures.bare(wire), NOTE);
        String reading = given.reading().plainHeight() ? "h " : "reading ";
        drawing.text(right.plus(0, 15), reading + figures.bare(given.reading().value()), NOTE);
        drawing.text(right.plus(0, 20), "E " + figures.bare(anvil.pitchDiameter()), NOTE.bold());
        drawing.text(right.plus(0, -5), given.flutes() + " lands", NOTE);
        Spot top = axis().plus(-6, -wireTop());
        dimensions.upright(apex(), top, 5, "h");
    }
}
