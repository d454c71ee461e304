// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lines of equal height on a grid of values, by marching squares. Lines close only if the values at the rim are below
 * the level; {@link #hemmed} sees to that.
 */
public final class LevelLines {
    /** Far below any level: a line meets the hem where the values end. */
    private static final double HEM = -1e9;

    private final double[][] values;

    /** @param values by column and row */
    public LevelLines(double[][] values) {
        this.values = values;
    }

    /** The same with a hem round it: corner (0, 0) of the values is at (1, 1) then. */
    public static LevelLines hemmed(double[][] values) {
        double[][] hemmed = new double[values.length + 2][values[0].length + 2];
        for (int i = 0; i < hemmed.length; i++) {
            for (int j = 0; j < hemmed[i].length; j++) {
                boolean inside = i > 0 && i <= values.length && j > 0 && j <= values[0].length;
                hemmed[i][j] = inside ? values[i - 1][j - 1] : HEM;
            }
        }
        return new LevelLines(hemmed);
    }

    /**
     * Closed lines round what is at a level or over it, that on their left; round a hole the other way. Places are
     * column and row, between the corners of the grid.
     */
    public List<List<Spot>> above(double level) {
        Map<Long, Step> steps = new HashMap<>();
        for (int i = 0; i + 1 < values.length; i++) {
            for (int j = 0; j + 1 < values[i].length; j++) {
                cell(i, j, level, steps);
            }
        }
        List<List<Spot>> lines = new ArrayList<>();
        while (!steps.isEmpty()) {
            List<Spot> line = new ArrayList<>();
            Step step = steps.remove(steps.keySet().iterator().next());
            while (step != null) {
                line.add(crossing(step.edge, level));
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
    private void cell(int i, int j, double level, Map<Long, Step> steps) {
        boolean[] in = {
            values[i][j] >= level, values[i + 1][j] >= level, values[i + 1][j + 1] >= level, values[i][j + 1] >= level
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
    private long edge(int i, int j, int way) {
        return ((long) i * (values[0].length + 1) + j) * 2 + way;
    }

    private Spot crossing(long edge, double level) {
        int way = (int) (edge % 2);
        int j = (int) (edge / 2 % (values[0].length + 1));
        int i = (int) (edge / 2 / (values[0].length + 1));
        double from = values[i][j];
        double to = way == 0 ? values[i + 1][j] : values[i][j + 1];
        double t = (level - from) / (to - from);
        return way == 0 ? Spot.at(i + t, j) : Spot.at(i, j + t);
    }
}
