// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import java.util.List;
import landfall.thread.Table;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.Numerals;

/** Tolerances of the British pipe series by threads an inch; millimetres and turns. */
record PipeTolerance(double pitch, double minor, double major, Turns turns, double parallelR) {
    /** How far the gauge plane may be out: external and internal. */
    record Turns(double external, double internal) {}

    private static final List<List<String>> ROWS = Table.rows("bsp-tolerances");
    private static final long BIG_G = Numerals.ONE * 9 / 4;
    private static final long BIG_R = Numerals.ONE * 5 / 2;

    static PipeTolerance ofG(PipeSize size) {
        return of(size, BIG_G);
    }

    static PipeTolerance ofR(PipeSize size) {
        return of(size, BIG_R);
    }

    private static PipeTolerance of(PipeSize size, long big) {
        boolean isBig = Numerals.mixed(new Cursor(size.name())) >= big;
        return ROWS.stream()
                .filter(row -> row.get(0).equals(Integer.toString(size.threadsPerInch())))
                .filter(row -> row.get(1).equals("1") == isBig)
                .findFirst()
                .map(PipeTolerance::of)
                .orElseThrow();
    }

    private static PipeTolerance of(List<String> row) {
        return new PipeTolerance(at(row, 2), at(row, 3), at(row, 4), new Turns(at(row, 5), at(row, 6)), at(row, 7));
    }

    private static double at(List<String> row, int column) {
        return Double.parseDouble(row.get(column));
    }
}
