// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.plot;

import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Spot;

/**
 * A frame with two axes.
 *
 * @param corner upper left of the frame on paper
 * @param size width and height of the frame
 */
public record Plot(Spot corner, Spot size, Axis across, Axis up) {
    private static final double TICK = 1.2;

    /** Where a pair of values stands on paper. */
    public Spot at(double x, double y) {
        return corner.plus(size.x() * across.share(x), size.y() * (1 - up.share(y)));
    }

    /** Left edge, at a value. */
    public Spot left(double y) {
        return at(across.from(), y);
    }

    /** Right edge, at a value. */
    public Spot right(double y) {
        return at(across.to(), y);
    }

    public void frame(Drawing drawing) {
        drawing.path(Outline.rectangle(corner, size.x(), size.y()), Line.THIN);
        drawing.line(left(up.from()), right(up.from()), Line.OUTLINE);
        drawing.line(left(up.from()), left(up.to()), Line.OUTLINE);
    }

    /** Ticks below the frame with their figures. */
    public void ticksAcross(Drawing drawing) {
        double foot = corner.y() + size.y();
        for (double tick : across.ticks()) {
            double x = at(tick, up.from()).x();
            drawing.line(Spot.at(x, foot), Spot.at(x, foot + TICK), Line.THIN);
            drawing.text(Spot.at(x, foot + TICK + 3.4), across.words(tick), Lettering.NOTE.middle());
        }
    }

    /** Ticks left of the frame with their figures; thin lines across it. */
    public void ticksUp(Drawing drawing) {
        for (double tick : up.ticks()) {
            Spot at = left(tick);
            drawing.line(at.plus(-TICK, 0), at, Line.THIN);
            if (tick > up.from() && tick < up.to()) {
                drawing.line(at, right(tick), Line.HATCH);
            }
            drawing.text(at.plus(-TICK - 0.6, Lettering.NOTE.capHeight() / 2), up.words(tick), Lettering.NOTE.end());
        }
    }
}
