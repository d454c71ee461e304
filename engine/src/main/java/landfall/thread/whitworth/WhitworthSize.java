// SPDX-License-Identifier: Apache-2.0
package landfall.thread.whitworth;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import landfall.quantity.Length;
import landfall.thread.Table;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;
import landfall.thread.scan.Numerals;

/** One size of BSW or BSF; the diameter in units of 1e-8 in, threads an inch times 1e8. */
record WhitworthSize(long diameter, long threadsPerInch, Series series) {
    /** Coarse, fine, and Whitworth form of any other pitch. */
    enum Series {
        BSW,
        BSF,
        WHIT
    }

    private static final List<WhitworthSize> STANDARD =
            Table.rows("whitworth-series").stream().map(WhitworthSize::of).toList();

    private static WhitworthSize of(List<String> row) {
        return new WhitworthSize(
                Numerals.mixed(new Cursor(row.get(0))),
                Numerals.decimal(new Cursor(row.get(1))),
                Series.valueOf(row.get(2)));
    }

    static List<WhitworthSize> standard() {
        return STANDARD;
    }

    /** The standard size of a series with this diameter. */
    static Optional<WhitworthSize> of(long diameter, Series series) {
        return STANDARD.stream()
                .filter(each -> each.diameter == diameter && each.series == series)
                .findFirst();
    }

    /** Threads an inch that a head's pitch stands for. */
    static long threads(InchHead head) {
        long exact = Numerals.ONE * Numerals.ONE / head.pitch();
        long grain = Numerals.ONE / 100;
        return (exact + grain / 2) / grain * grain;
    }

    Length major() {
        return Length.ofInch((double) diameter / Numerals.ONE);
    }

    Length pitch() {
        return Length.ofMm(Length.MM_PER_INCH * Numerals.ONE / threadsPerInch);
    }

    String label() {
        String fraction = Numerals.asFraction(diameter);
        String size = fraction.isEmpty() ? Numerals.atLeast(diameter, 4) : fraction;
        String name = series == Series.WHIT ? "Whit" : series.name().toUpperCase(Locale.ROOT);
        return size + "-" + Numerals.plain(threadsPerInch) + " " + name;
    }
}
