// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import java.util.List;
import landfall.thread.Table;
import landfall.thread.scan.Numerals;

/** Tolerances of the British pipe series by threads an inch; millimetres and turns. */
record PipeTolerance(double pitch, double minor, double major, Turns turns, double parallelR) {
    /** How far the gauge plane may be out: external and internal. */
    record Turns(double external, double internal) {}

    private record Row(int threadsPerInch, boolean big, PipeTolerance tolerance) {}

    private static final List<Row> ROWS =
            Table.rows("bsp-tolerances").stream().map(PipeTolerance::row).toList();
    private static final long BIG_G = Numerals.ONE * 9 / 4;
    private static final long BIG_R = Numerals.ONE * 5 / 2;

    static PipeTolerance ofG(PipeSize size) {
        return of(size, BIG_G);
    }

    static PipeTolerance ofR(PipeSize size) {
        return of(size, BIG_R);
    }

    private static PipeTolerance of(PipeSize size, long big) {
        boolean isBig = size.inches() >= big;
        for (Row row : ROWS) {
            if (row.threadsPerInch == size.threadsPerInch() && row.big == isBig) {
                return row.tolerance;
            }
        }
        throw new IllegalStateException("no tolerance for G " + size.name());
    }

    private static Row row(List<String> row) {
        return new Row(
                Integer.parseInt(row.get(0)),
                row.get(1).equals("1"),
                new PipeTolerance(at(row, 2), at(row, 3), at(row, 4), new Turns(at(row, 5), at(row, 6)), at(row, 7)));
    }

    private static double at(List<String> row, int column) {
        return Double.parseDouble(row.get(column));
    }
}
