// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import java.util.List;
import java.util.Optional;
import landfall.quantity.Rounding;
import landfall.thread.Table;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.Numerals;

/** One size of the British pipe series: G, and R where it has a gauge length. Millimetres inside this package. */
record PipeSize(Name label, int threadsPerInch, double major, Gauge gauge, boolean remembered) {
    static final String RUN = "sizes run 1/16, 1/8, 1/4, 3/8, 1/2, 5/8, 3/4, 7/8, 1, 1 1/8 .. 6";

    /**
     * What the size is called, and so many inches, in units of 1e-8: less than it measures, as pipes are named by their
     * bore.
     */
    record Name(String words, long inches) {}

    /** Gauge and useful length of R; zero where R has no such size. */
    record Gauge(double length, double useful) {}

    private static final List<PipeSize> SIZES =
            Table.rows("bsp-sizes").stream().map(PipeSize::of).toList();

    private static PipeSize of(List<String> row) {
        return new PipeSize(
                new Name(row.get(0), Numerals.mixed(new Cursor(row.get(0)))),
                Integer.parseInt(row.get(1)),
                Double.parseDouble(row.get(2)),
                new Gauge(Double.parseDouble(row.get(3)), Double.parseDouble(row.get(4))),
                row.get(5).equals("memory"));
    }

    String name() {
        return label.words;
    }

    long inches() {
        return label.inches;
    }

    static List<PipeSize> all() {
        return SIZES;
    }

    /** 25.4 over the threads an inch, to 0.001, as the standard rounds it. */
    double pitch() {
        return Rounding.halfUp(25.4 / threadsPerInch, 3);
    }

    boolean isTaperToo() {
        return gauge.length > 0;
    }

    /** The size whose name is so many inches, in units of 1e-8. */
    static Optional<PipeSize> of(long inches) {
        return SIZES.stream().filter(each -> each.inches() == inches).findFirst();
    }

    /** Reads a size by its name in inches; the threads an inch may follow and must be right. */
    static PipeSize read(Cursor c) {
        c.separators();
        int start = c.at();
        long size = Numerals.mixed(c);
        c.take('"');
        PipeSize pipe = of(size).orElseThrow(() ->
                c.refuse(start, "has a size at character " + (start + 1) + " that the series does not have", RUN));
        threads(c, pipe);
        return pipe;
    }

    private static void threads(Cursor c, PipeSize pipe) {
        int place = c.at();
        c.separators();
        if (!c.atDigit()) {
            c.to(place);
            return;
        }
        int at = c.at();
        if (Numerals.mixed(c) != pipe.threadsPerInch * Numerals.ONE) {
            throw c.refuse(
                    at,
                    "has threads an inch at character " + (at + 1) + " that this size does not have",
                    "leave them out: it is " + pipe.threadsPerInch);
        }
    }
}
