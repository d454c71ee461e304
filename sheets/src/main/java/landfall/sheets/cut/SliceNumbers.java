// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import java.util.ArrayList;
import java.util.List;
import landfall.chip.ChipLoad;
import landfall.chip.Slice;
import landfall.chip.Slice.Corner;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Spot;

/**
 * Numbers of the teeth in their slices: in turn left and right of the middle, so that thin slices can have theirs too;
 * where a slice is too thin for that, one in so many is numbered.
 */
final class SliceNumbers {
    private static final Lettering NUMBER =
            Lettering.NOTE.sized(Lettering.LEAST_MM).middle();
    private static final double LEAST_ROOM = 2.9;

    private final ChipLoad load;
    private final Paper paper;

    /** From along the axis and from it, in mm, to a place on paper. */
    interface Paper {
        Spot at(double along, double radius);
    }

    SliceNumbers(ChipLoad load, Paper paper) {
        this.load = load;
        this.paper = paper;
    }

    void draw(Drawing drawing) {
        List<Spot> taken = new ArrayList<>();
        for (Slice slice : load.slices()) {
            String number = String.valueOf(slice.tooth());
            for (double share : slice.tooth() % 2 == 0 ? new double[] {0.32, 0.5} : new double[] {0.68, 0.5}) {
                Spot at = middle(slice, share);
                if (isFree(at, taken) && fits(slice, share, number)) {
                    taken.add(at);
                    drawing.text(at.plus(0, NUMBER.capHeight() / 2), number, NUMBER);
                    break;
                }
            }
        }
    }

    private static boolean isFree(Spot at, List<Spot> taken) {
        return taken.stream()
                .allMatch(other -> Math.abs(other.y() - at.y()) > LEAST_ROOM || Math.abs(other.x() - at.x()) > 5.5);
    }

    /** A number may stand over its slice's edges by a little, not by half. */
    private boolean fits(Slice slice, double share, String number) {
        double[] ends = ends(slice, share);
        double high = paper.at(0, ends[1]).y() - paper.at(0, ends[2]).y();
        double left = paper.at(alongAt(slice, 0), 0).x();
        double right = paper.at(alongAt(slice, 1), 0).x();
        return high > 0.85 * NUMBER.capHeight() && right - left > NUMBER.width(number) + 1;
    }

    private Spot middle(Slice slice, double share) {
        double[] ends = ends(slice, share);
        return paper.at(ends[0], (ends[1] + ends[2]) / 2);
    }

    private static double alongAt(Slice slice, double share) {
        double least = slice.outline().stream()
                .mapToDouble(corner -> corner.along().mm())
                .min()
                .orElseThrow();
        double most = slice.outline().stream()
                .mapToDouble(corner -> corner.along().mm())
                .max()
                .orElseThrow();
        return least + share * (most - least);
    }

    /** Along the axis, and the least and greatest radius of the slice there. */
    private static double[] ends(Slice slice, double share) {
        double along = alongAt(slice, share);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        List<Corner> corners = slice.outline();
        for (int i = 0; i < corners.size(); i++) {
            Corner a = corners.get(i);
            Corner b = corners.get((i + 1) % corners.size());
            double from = a.along().mm() - along;
            double to = b.along().mm() - along;
            if ((from <= 0) != (to <= 0)) {
                double r = a.radius().mm()
                        + from / (from - to) * b.radius().minus(a.radius()).mm();
                least = Math.min(least, r);
                most = Math.max(most, r);
            }
        }
        return new double[] {along, least, most};
    }
}
