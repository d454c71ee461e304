// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import landfall.chip.ChipLoad;
import landfall.chip.Slice;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Scale;
import landfall.sheets.draw.Spot;
import landfall.tap.Tap;

/**
 * The chamfer in the wall of the hole, in the plane of the flute whose tooth cuts last: what is cut already, and of
 * each thread the slices of the last turn. Of a thread of several starts one start is drawn.
 */
final class ChamferRun {
    private static final double WALL = 4;
    private static final double LEFT = 2;

    private final Tap tap;
    private final ChipLoad load;
    private final Scale scale;
    private final Spot foot;
    private final double touch;
    private final int perTurn;
    private final int last;

    /** foot: left end of the hole's wall on paper. */
    ChamferRun(Tap tap, ChipLoad load, Scale scale, Spot foot) {
        this.tap = tap;
        this.load = load;
        this.scale = scale;
        this.foot = foot;
        double slope = Math.tan(load.steps().chamfer().rad());
        this.touch =
                crest() - load.groove().depth().mm() - load.groove().holeWidth().mm() / 2 * slope;
        this.perTurn = (int) Math.max(
                1, Math.round(tap.thread().lead().perTurn().over(load.steps().spacing())));
        this.last = load.slices().size();
    }

    private double crest() {
        return tap.thread().major().mm() / 2;
    }

    private double wall() {
        return crest() - load.groove().depth().mm();
    }

    void draw(Drawing drawing, Function<Slice, Fill> step) {
        double right = LEFT + (length() + tap.thread().lead().perTurn().mm()) * scale.ratio();
        double top = at(0, crest()).y() - WALL;
        drawing.hatch(
                Outline.through(List.of(
                                Spot.at(LEFT, foot.y()),
                                Spot.at(right, foot.y()),
                                Spot.at(right, top),
                                Spot.at(LEFT, top)))
                        .close(),
                2);
        double wall = LEFT;
        for (int tooth = firstShown(); at(middle(tooth), 0).x() < right; tooth += perTurn) {
            groove(drawing, tooth, step);
            double[] open = mouth(tooth);
            drawing.line(Spot.at(wall, foot.y()), at(open[0], wall()), Line.OUTLINE);
            wall = at(open[1], wall()).x();
        }
        drawing.line(Spot.at(wall, foot.y()), Spot.at(Math.max(wall, right), foot.y()), Line.OUTLINE);
        chamfer(drawing, right);
    }

    /** Where the groove of a tooth opens into the hole, along the axis. */
    private double[] mouth(int tooth) {
        double least = load.groove().holeWidth().mm() / 2;
        double most = -least;
        for (Slice slice : load.slices().subList(0, Math.min(tooth, last))) {
            for (Slice.Corner corner : slice.outline()) {
                if (corner.radius().mm() < wall() + 1e-9) {
                    least = Math.min(least, corner.along().mm());
                    most = Math.max(most, corner.along().mm());
                }
            }
        }
        return new double[] {middle(tooth) + Math.min(least, most), middle(tooth) + Math.max(least, most)};
    }

    /** So that the last tooth of the chamfer stands in this plane. */
    private int firstShown() {
        int first = last % perTurn;
        return first == 0 ? perTurn : first;
    }

    private double length() {
        return middle(last) + tap.thread().lead().perTurn().mm() * 0.75;
    }

    /** Where along the axis the groove of a tooth has its middle: from half a lead before the first one. */
    private double middle(int tooth) {
        return tap.thread().lead().perTurn().mm() * 0.6
                + (tooth - 1) * load.steps().spacing().mm();
    }

    private Spot at(double along, double radius) {
        return Spot.at(LEFT + along * scale.ratio(), foot.y() - (radius - wall()) * scale.ratio());
    }

    private void groove(Drawing drawing, int tooth, Function<Slice, Fill> step) {
        double middle = middle(tooth);
        List<Slice> cut = load.slices().subList(0, Math.min(tooth, last));
        for (Slice slice : cut) {
            boolean now = slice.tooth() > tooth - perTurn;
            Outline outline = outline(slice, middle);
            drawing.fill(outline, Fill.SHEET);
            if (now) {
                drawing.fill(outline, step.apply(slice)).path(outline, Line.FINE);
            }
        }
        edge(drawing, middle, tooth);
        label(drawing, tooth, middle);
    }

    /** The edge of what is left of the wall: thick. */
    private void edge(Drawing drawing, double middle, int tooth) {
        Slice reached = load.slices().get(Math.min(tooth, last) - 1);
        if (tooth >= last) {
            double wide = load.groove().holeWidth().mm() / 2;
            double narrow = load.groove().crestWidth().mm() / 2;
            drawing.path(
                    Outline.through(List.of(
                            at(middle - wide, wall()),
                            at(middle - narrow, crest()),
                            at(middle + narrow, crest()),
                            at(middle + wide, wall()))),
                    Line.OUTLINE);
            return;
        }
        drawing.path(outline(reached, middle), Line.FINE);
    }

    private Outline outline(Slice slice, double middle) {
        List<Spot> spots = new ArrayList<>();
        slice.outline()
                .forEach(corner -> spots.add(
                        at(middle + corner.along().mm(), corner.radius().mm())));
        return Outline.through(spots).close();
    }

    private void label(Drawing drawing, int tooth, double middle) {
        int from = Math.max(1, tooth - perTurn + 1);
        int to = Math.min(tooth, last);
        if (from > to) {
            return;
        }
        String words = from == to ? String.valueOf(to) : from + "\u2013" + to;
        Lettering lettering = Lettering.NOTE.sized(Lettering.LEAST_MM).middle();
        double room = tap.thread().lead().perTurn().mm() * scale.ratio();
        if (lettering.width(words) < room - 0.6) {
            drawing.text(Spot.at(at(middle, 0).x(), foot.y() + 4), words, lettering);
        }
    }

    /** The chamfer's line and the crest behind it, a little off the metal. */
    private void chamfer(Drawing drawing, double right) {
        double slope = Math.tan(load.steps().chamfer().rad());
        double reach = touch + last * load.steps().radial().mm();
        double end = middle(last) + (crest() - reach) / slope;
        double start = Math.max(
                0, middle(last) - (reach - (wall() - load.groove().depth().mm() * 0.25)) / slope);
        Spot knee = at(end, crest());
        drawing.path(
                Outline.through(List.of(
                        at(start, crest() - (end - start) * slope),
                        knee,
                        Spot.at(Math.max(knee.x(), right), knee.y()))),
                Line.PHANTOM);
    }
}
