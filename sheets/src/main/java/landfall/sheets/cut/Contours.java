// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.torsion.Place;
import landfall.torsion.Section;
import landfall.torsion.StressField;

/**
 * Lines of equal stress by marching squares on a square grid over the section. Outside the field goes on with the
 * stress of the nearest place of the outline, so that lines reach the outline squarely; round it lies a hem of nought,
 * so that all lines close. What stands outside the section is blanked out by who draws them.
 */
final class Contours {
    private static final int CELLS = 64;
    private static final int LOOKS = 120;
    private static final double HEM = -1;

    private final StressField field;
    private final Section section;
    private final double reach;
    private final double[][] shares = new double[CELLS + 1][CELLS + 1];

    Contours(StressField field, Section section) {
        this.field = field;
        this.section = section;
        this.reach = section.outer().mm() / 2 * 1.09;
        for (int i = 0; i <= CELLS; i++) {
            for (int j = 0; j <= CELLS; j++) {
                Place place = place(i, j);
                boolean hem = place.radius().mm() > reach * (1 - 1.5 / CELLS);
                shares[i][j] = hem ? HEM : field.at(place) / section.stress();
            }
        }
    }

    private Place place(double i, double j) {
        return new Place(Length.ofMm(reach * (2 * i / CELLS - 1)), Length.ofMm(reach * (2 * j / CELLS - 1)));
    }

    /** How far out on a ray from the axis the stress first reaches a share of the peak. */
    Length crossing(double share, Angle angle) {
        Length radius = section.outer().times(0.5);
        for (int i = 1; i <= LOOKS; i++) {
            Length at = radius.times((double) i / LOOKS);
            if (field.at(Place.polar(at, angle)) / section.stress() >= share) {
                return at;
            }
        }
        return radius;
    }

    /** Closed lines round what is over a share of the peak, that on their left; round a hole the other way. */
    List<List<Place>> above(double share) {
        Map<Long, Step> steps = new HashMap<>();
        for (int i = 0; i < CELLS; i++) {
            for (int j = 0; j < CELLS; j++) {
                cell(i, j, share, steps);
            }
        }
        List<List<Place>> lines = new ArrayList<>();
        while (!steps.isEmpty()) {
            List<Place> line = new ArrayList<>();
            Step step = steps.remove(steps.keySet().iterator().next());
            while (step != null) {
                line.add(crossing(step.edge, share));
                step = steps.remove(step.to);
            }
            if (line.size() > 2) {
                lines.add(line);
            }
        }
        return lines;
    }

    /** From one edge of the grid to the next, in one cell. */
    private record Step(long edge, long to) {}

    /** Corners counterclockwise from lower left; edge k runs from corner k to corner k + 1. */
    private void cell(int i, int j, double share, Map<Long, Step> steps) {
        boolean[] in = {
            shares[i][j] >= share, shares[i + 1][j] >= share, shares[i + 1][j + 1] >= share, shares[i][j + 1] >= share
        };
        long[] edges = {edge(i, j, 0), edge(i + 1, j, 1), edge(i, j + 1, 0), edge(i, j, 1)};
        // a line enters where the corners, run round counterclockwise, go from out to in, seen from the inside's left
        for (int k = 0; k < 4; k++) {
            if (in[k] && !in[(k + 1) % 4]) {
                int m = k;
                do {
                    m = (m + 3) % 4;
                } while (!(!in[m] && in[(m + 1) % 4]));
                steps.put(edges[k], new Step(edges[k], edges[m]));
            }
        }
    }

    /** An edge of the grid: from a corner to the right (0) or up (1). */
    private static long edge(int i, int j, int way) {
        return ((long) i * (CELLS + 2) + j) * 2 + way;
    }

    private Place crossing(long edge, double share) {
        int way = (int) (edge % 2);
        int j = (int) (edge / 2 % (CELLS + 2));
        int i = (int) (edge / 2 / (CELLS + 2));
        double from = shares[i][j];
        double to = way == 0 ? shares[i + 1][j] : shares[i][j + 1];
        double t = (share - from) / (to - from);
        return way == 0 ? place(i + t, j) : place(i, j + t);
    }
}
