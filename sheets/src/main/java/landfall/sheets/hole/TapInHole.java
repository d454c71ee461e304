// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.hole;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Length;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Spot;

/** The tap at depth, in outline: point, chamfer, thread and as much of the shank as the sketch has room for. */
final class TapInHole {
    private final HoleShape hole;
    private final Paper paper;
    private final double topY;

    /** From mm of the part, from the axis and from the face, to a place on paper. */
    interface Paper {
        Spot at(double r, double deep);
    }

    TapInHole(HoleShape hole, Paper paper, double topY) {
        this.hole = hole;
        this.paper = paper;
        this.topY = topY;
    }

    void draw(Drawing drawing) {
        HoleShape.Depths depths = hole.depths();
        if (depths == null) {
            return;
        }
        List<Spot> right = new ArrayList<>();
        double major = hole.thread().major().mm() / 2;
        right.add(paper.at(hole.pointDiameter().mm() / 2, depths.tapPoint().mm()));
        right.add(paper.at(major, depths.fullThread().mm()));
        Length thread = hole.tool().threadLength();
        Length shank = hole.tool().shank();
        double end = thread == null
                ? Double.NEGATIVE_INFINITY
                : depths.tapPoint().minus(thread).mm();
        double radius = major;
        if (thread != null && shank != null && paper.at(0, end).y() > topY) {
            right.add(paper.at(major, end));
            radius = shank.mm() / 2;
            right.add(paper.at(radius, end));
        }
        right.add(Spot.at(paper.at(radius, 0).x(), topY));
        List<Spot> all = new ArrayList<>(right);
        double axis = paper.at(0, 0).x();
        for (int i = right.size() - 1; i >= 0; i--) {
            all.add(Spot.at(2 * axis - right.get(i).x(), right.get(i).y()));
        }
        drawing.fill(Outline.through(all).close(), Fill.TINT);
        drawing.path(Outline.through(all.subList(0, right.size())), Line.PHANTOM);
        drawing.path(Outline.through(all.subList(right.size(), all.size())), Line.PHANTOM);
        drawing.line(all.get(0), all.get(all.size() - 1), Line.PHANTOM);
        if (shank != null && end > 0 && !hole.shankEnters()) {
            clash(drawing, shank.mm() / 2, end);
        }
        breakLine(drawing, all.get(right.size()), all.get(right.size() - 1));
    }

    /** A shank that is thicker than the hole stands in the metal from the face on: it does not go so deep. */
    private void clash(Drawing drawing, double radius, double end) {
        for (double side : new double[] {-1, 1}) {
            drawing.path(
                    Outline.through(List.of(
                            paper.at(side * hole.bore().diameter().mm() / 2, end),
                            paper.at(side * radius, end),
                            paper.at(side * radius, 0))),
                    Line.ALARM);
        }
    }

    /** A thin zigzag: the shank goes on. */
    private static void breakLine(Drawing drawing, Spot left, Spot right) {
        Spot middle = left.towards(right, 0.5);
        drawing.path(
                Outline.through(List.of(
                        left,
                        middle.plus(-1.6, 0),
                        middle.plus(-0.6, -1.3),
                        middle.plus(0.6, 1.3),
                        middle.plus(1.6, 0),
                        right)),
                Line.THIN);
    }
}
