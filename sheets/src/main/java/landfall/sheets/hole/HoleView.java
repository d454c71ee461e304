// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.hole;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Length;
import landfall.sheets.draw.Dimensions;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Scale;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;
import landfall.sheets.hole.HoleShape.Depths;

/**
 * The hole in section, face up, with the tap at depth: what is drilled, how far the thread is full, how far the tap's
 * point goes, and what is left for chips. Thread as ISO 6410 draws it: the hole's wall thick, the major diameter thin,
 * a thick line where the full thread ends.
 */
public final class HoleView {
    public static final double WIDTH = 88;

    private static final double AXIS_X = 22;
    private static final double METAL = 20;
    private static final double FACE_Y = 27;
    private static final double TOP_Y = 8;
    private static final double ROOM_DEPTH = 60;
    private static final double UNDER = 4;
    private static final double LADDER_X = 45;
    private static final double LEAST_HEIGHT = 62;

    private final HoleShape hole;
    private final Figures figures;
    private final String callOut;
    private final Scale scale;

    public HoleView(HoleShape hole, String callOut, Figures figures) {
        this.hole = hole;
        this.callOut = callOut;
        this.figures = figures;
        Length widest = hole.tool().shank() == null
                        || hole.tool().shank().compareTo(hole.thread().major()) < 0
                ? hole.thread().major()
                : hole.tool().shank();
        this.scale = Scale.fitting(hole.drawnDepth(), ROOM_DEPTH)
                .orSmaller(Scale.fitting(widest.plus(hole.thread().pitch()), 1.5 * METAL));
    }

    public Scale scale() {
        return scale;
    }

    public Drawing draw(String id, Ink ink) {
        Drawing drawing = new Drawing(id, "Section of the hole, " + scale.words(), description(), size(), ink);
        String units = "  " + scale.words() + "  (" + figures.unit() + ")";
        drawing.text(Spot.at(0, 3.6), "Hole for " + callOut + units, Lettering.NOTE.bold());
        metal(drawing);
        new TapInHole(hole, this::at, TOP_Y).draw(drawing);
        thread(drawing);
        drawing.line(at(0, 0).plus(0, TOP_Y - FACE_Y - 3), at(0, 0).plus(0, bottom() - FACE_Y + 3), Line.CENTRE);
        levels(drawing);
        diameters(drawing);
        return drawing;
    }

    private String description() {
        Depths depths = hole.depths();
        String deep = depths == null
                ? "Depth not told."
                : "Full thread %s, point of the tap %s from the face."
                        .formatted(figures.coarse(depths.fullThread()), figures.coarse(depths.tapPoint()));
        return "%s hole, %s. %s"
                .formatted(
                        hole.bore().through() ? "Through" : "Blind",
                        figures.diameter(hole.bore().diameter()) + " " + figures.unit(),
                        deep);
    }

    private Spot size() {
        return Spot.at(WIDTH, Math.max(LEAST_HEIGHT, diameterY() + 6));
    }

    private double diameterY() {
        double foot = hole.bore().through()
                ? Math.max(bottom(), at(0, hole.drawnDepth().mm()).y())
                : bottom();
        return foot + 6;
    }

    /** A place r from the axis to the right and so deep under the face, in mm of the part. */
    private Spot at(double r, double deep) {
        return Spot.at(AXIS_X + r * scale.ratio(), FACE_Y + deep * scale.ratio());
    }

    /** Foot of the metal on paper. */
    private double bottom() {
        if (hole.bore().through() && hole.depths() != null) {
            return at(0, hole.depths().fullThread().mm()).y();
        }
        return at(0, hole.drawnDepth().mm()).y() + UNDER;
    }

    private double wall() {
        return hole.bore().diameter().mm() / 2;
    }

    private double sink() {
        var sink = hole.countersink();
        return sink == null || sink.max() == null ? wall() : sink.max().mm() / 2;
    }

    /** Right wall of the hole from the face down to its end on the axis or the far face. */
    private List<Spot> profile() {
        List<Spot> spots = new ArrayList<>();
        spots.add(at(sink(), 0));
        spots.add(at(wall(), sink() - wall()));
        Depths depths = hole.depths();
        if (!hole.bore().through() && depths != null && depths.drill() != null && depths.tip() != null) {
            spots.add(at(wall(), depths.drill().mm()));
            spots.add(at(0, depths.tip().mm()));
        } else {
            spots.add(Spot.at(at(wall(), 0).x(), bottom()));
        }
        return spots;
    }

    private static Spot mirrored(Spot spot) {
        return Spot.at(2 * AXIS_X - spot.x(), spot.y());
    }

    private void metal(Drawing drawing) {
        List<Spot> right = profile();
        List<Spot> left = right.stream().map(HoleView::mirrored).toList();
        for (List<Spot> side : List.of(right, left)) {
            boolean isRight = side == right;
            double edge = isRight ? AXIS_X + METAL : AXIS_X - METAL;
            List<Spot> around = new ArrayList<>(side);
            if (side.get(side.size() - 1).y() < bottom() - 0.01) {
                around.add(Spot.at(AXIS_X, bottom()));
            }
            around.add(Spot.at(edge, bottom()));
            around.add(Spot.at(edge, FACE_Y));
            drawing.hatch(Outline.through(around).close(), 2.6);
            drawing.path(Outline.through(side), Line.OUTLINE);
            drawing.line(side.get(0), Spot.at(edge, FACE_Y), Line.OUTLINE);
            drawing.line(Spot.at(edge, FACE_Y - 1), Spot.at(edge, bottom() + 1), Line.THIN);
            if (hole.bore().through()) {
                drawing.line(side.get(side.size() - 1), Spot.at(edge, bottom()), Line.OUTLINE);
            }
        }
        if (!hole.bore().through()) {
            Depths depths = hole.depths();
            if (depths != null && depths.drill() != null) {
                drawing.line(
                        at(-wall(), depths.drill().mm()),
                        at(wall(), depths.drill().mm()),
                        Line.THIN);
                chips(drawing, depths);
            }
        }
    }

    /** Curls where the chips may lie: between the drill's full depth and so far above it as they fill. */
    private void chips(Drawing drawing, Depths depths) {
        if (depths.chipStore().mm() <= 0 || depths.drill() == null) {
            return;
        }
        double top = depths.drill().minus(depths.chipStore()).mm();
        drawing.line(at(-wall(), top), at(wall(), top), Line.HIDDEN);
        double size = Math.min(1.1, depths.chipStore().mm() * scale.ratio() / 3);
        Spot corner = at(-wall(), top);
        Spot end = at(wall(), depths.drill().mm());
        int row = 0;
        for (double y = corner.y() + 1.4 * size; y < end.y() - 0.6 * size; y += 2.2 * size) {
            double start = corner.x() + (row++ % 2 == 0 ? 1.6 : 3) * size;
            for (double x = start; x < end.x() - 1.3 * size; x += 3.2 * size) {
                Spot middle = Spot.at(x, y);
                drawing.path(Outline.from(middle.polar(200, size)).arc(middle, 250), Line.THIN);
            }
        }
    }

    private void thread(Drawing drawing) {
        double major = hole.thread().major().mm() / 2;
        Depths depths = hole.depths();
        double end = depths == null
                ? (bottom() - FACE_Y) / scale.ratio()
                : depths.fullThread().mm();
        double start = Math.max(0, sink() - major);
        for (double side : new double[] {-1, 1}) {
            drawing.line(at(side * major, start), at(side * major, end), Line.THIN);
            if (depths != null && !hole.bore().through()) {
                drawing.line(at(side * major, end), at(side * wall(), end), Line.OUTLINE);
                runOut(drawing, side, depths);
            }
        }
    }

    /** Where the chamfer leaves threads that are not full: thin and slanting. */
    private void runOut(Drawing drawing, double side, Depths depths) {
        double major = hole.thread().major().mm() / 2;
        double point = hole.pointDiameter().mm() / 2;
        double length = depths.tapPoint().minus(depths.fullThread()).mm();
        if (length <= 0 || point >= wall() && point >= major) {
            return;
        }
        double share = point >= wall() ? 1 : (major - wall()) / (major - point);
        double r = major + share * (point - major);
        drawing.line(
                at(side * major, depths.fullThread().mm()),
                at(side * r, depths.fullThread().mm() + share * length),
                Line.THIN);
    }

    private void levels(Drawing drawing) {
        DepthLadder ladder = new DepthLadder(LADDER_X);
        Spot edge = Spot.at(AXIS_X + METAL, 0);
        ladder.add(Spot.at(edge.x(), FACE_Y), "0", "face");
        Depths depths = hole.depths();
        if (depths != null) {
            String full = hole.bore().through() ? "thread, through" : "full thread";
            ladder.add(level(edge, depths.fullThread()), figures.coarseBare(depths.fullThread()), full);
            if (!depths.tapPoint().equals(depths.fullThread())) {
                Spot point = hole.bore().through()
                        ? at(hole.pointDiameter().mm() / 2, depths.tapPoint().mm())
                        : level(edge, depths.tapPoint());
                ladder.add(point, figures.coarseBare(depths.tapPoint()), "tap's point");
            }
            if (!hole.bore().through() && depths.drill() != null && depths.tip() != null) {
                ladder.add(level(edge, depths.drill()), figures.coarseBare(depths.drill()), "drill, full " + "\u00d8");
                ladder.add(level(edge, depths.tip()), figures.coarseBare(depths.tip()), "drill's tip");
            }
        }
        reach(ladder);
        ladder.draw(drawing, FACE_Y, size().y() - 3);
    }

    /** Where the tap's thread ends: how much of it stands out of the hole, or how far its shank has gone in. */
    private void reach(DepthLadder ladder) {
        Depths depths = hole.depths();
        Length thread = hole.tool().threadLength();
        if (depths == null || thread == null) {
            return;
        }
        Length end = depths.tapPoint().minus(thread);
        Spot at = at(hole.thread().major().mm() / 2, end.mm());
        if (at.y() > TOP_Y + 1 && Math.abs(end.mm()) > 1e-6) {
            String words = end.mm() < 0 ? "thread above" : shankWords();
            ladder.add(at, figures.coarseBare(Length.ofMm(Math.abs(end.mm()))), words);
        }
    }

    private String shankWords() {
        return hole.shankEnters() ? "shank begins" : "shank too thick";
    }

    private Spot level(Spot edge, Length deep) {
        return Spot.at(edge.x(), at(0, deep.mm()).y());
    }

    private void diameters(Drawing drawing) {
        Dimensions dimensions = new Dimensions(drawing);
        double y = diameterY();
        Spot left = at(-wall(), 0);
        Spot right = at(wall(), 0);
        dimensions.across(Spot.at(left.x(), y - 6), Spot.at(right.x(), y - 6), y, "");
        String drill = hole.bore().drill();
        String figure = figures.diameter(hole.bore().diameter());
        drawing.text(Spot.at(AXIS_X, y + 4.6), figure, Lettering.FIGURE);
        if (!drill.isEmpty()) {
            drawing.text(
                    Spot.at(AXIS_X + Lettering.FIGURE.width(figure) / 2 + 2, y + 4.6),
                    "drill " + drill,
                    Lettering.NOTE);
        }
    }
}
