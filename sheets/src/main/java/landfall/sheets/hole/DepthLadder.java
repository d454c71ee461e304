// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import landfall.sheets.draw.Dimensions;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Spot;

/**
 * Depths from one face, on one line: a ring where it starts, an arrowhead at each level, the figure at the end of that
 * level's line. Figures that would meet are moved apart, joined to their level by a kink.
 */
final class DepthLadder {
    private static final double STEP = 4.9;
    private static final double KINK = 3.5;

    private final List<Rung> rungs = new ArrayList<>();
    private final double lineX;

    /** lineX: where across the paper the dimension line stands. */
    DepthLadder(double lineX) {
        this.lineX = lineX;
    }

    /** One level: where its line begins in the sketch, the figure, and what it is. */
    private record Rung(Spot from, String figure, String words) {}

    void add(Spot from, String figure, String words) {
        rungs.add(new Rung(from, figure, words));
    }

    /** Draws all levels; zero is the face, lowest the last place where a figure may stand. */
    void draw(Drawing drawing, double zero, double lowest) {
        rungs.sort(Comparator.comparingDouble(rung -> rung.from.y()));
        double[] at = spread(lowest);
        Dimensions dimensions = new Dimensions(drawing);
        drawing.circle(Spot.at(lineX, zero), 0.9, Line.THIN);
        for (int i = 0; i < rungs.size(); i++) {
            Rung rung = rungs.get(i);
            double y = rung.from.y();
            drawing.path(
                    Outline.through(List.of(
                            rung.from.plus(0.8, 0),
                            Spot.at(lineX + 1.2, y),
                            Spot.at(lineX + 1.2 + KINK, at[i]),
                            Spot.at(lineX + 2.2 + KINK, at[i]))),
                    Line.THIN);
            if (Math.abs(y - zero) > 0.01) {
                dimensions.arrowhead(Spot.at(lineX, y), y > zero ? 270 : 90);
            }
            text(drawing, rung, Spot.at(lineX + 3 + KINK, at[i] + Lettering.FIGURE.capHeight() / 2));
        }
        double top = Math.min(zero, rungs.get(0).from.y());
        double foot = Math.max(zero, rungs.get(rungs.size() - 1).from.y());
        drawing.line(Spot.at(lineX, top), Spot.at(lineX, foot), Line.THIN);
    }

    private static void text(Drawing drawing, Rung rung, Spot at) {
        Lettering figure = Lettering.FIGURE.anchored(Lettering.Anchor.START);
        drawing.text(at, rung.figure, figure);
        drawing.text(at.plus(figure.width(rung.figure) + 1.3, 0), rung.words, Lettering.NOTE);
    }

    /**
     * Each figure at its level, or as near below the one before as it can be read; all pushed up if the last is low.
     */
    private double[] spread(double lowest) {
        double[] at = new double[rungs.size()];
        for (int i = 0; i < at.length; i++) {
            at[i] = i == 0 ? rungs.get(i).from.y() : Math.max(rungs.get(i).from.y(), at[i - 1] + STEP);
        }
        for (int i = at.length - 1; i >= 0; i--) {
            double most = i == at.length - 1 ? lowest : at[i + 1] - STEP;
            at[i] = Math.min(at[i], most);
        }
        return at;
    }
}
