// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import landfall.quantity.Length;
import landfall.thread.scan.Numerals;
import landfall.working.Pen;
import landfall.working.Rule;

/** Decimal sums of inch lengths in whole units of 1e-8 in, and their rounding half up. */
final class InchGrain {
    static final long PLACES_3 = Numerals.ONE / 1_000;
    static final long PLACES_4 = Numerals.ONE / 10_000;
    static final long PLACES_6 = Numerals.ONE / 1_000_000;

    /** Far over the error of a double here, far under the last place kept. */
    private static final double BINARY_NOISE = 1e-6;

    private InchGrain() {}

    /** Half up; the lengths here are positive. */
    static long up(long units, long places) {
        return (units + places / 2) / places * places;
    }

    static long halfEven(long units, long places) {
        long down = units / places * places;
        long rest = units - down;
        boolean goesUp = rest * 2 > places || rest * 2 == places && down / places % 2 != 0;
        return goesUp ? down + places : down;
    }

    /** A binary figure in inches, rounded half up. */
    static long up(double inches, long places) {
        return (long) Math.floor(inches * Numerals.ONE / places + 0.5 + BINARY_NOISE) * places;
    }

    /** A coefficient of eight places times a length, rounded half up. */
    static long share(long coefficient, long length, long places) {
        long grain = places * Numerals.ONE;
        return (coefficient * length + grain / 2) / grain * places;
    }

    static double inches(long units) {
        return (double) units / Numerals.ONE;
    }

    static Length length(long units) {
        return Length.ofInch(inches(units));
    }

    static long write(Pen pen, Rule rule, long units) {
        pen.write(rule, inches(units));
        return units;
    }
}
