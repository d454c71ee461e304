// SPDX-License-Identifier: Apache-2.0
package landfall.thread.scan;

/**
 * Numbers as call-outs write them, in whole units of 1e-8: {@code 1.25}, {@code .4375}, {@code 1 1/8}, {@code 4 1/2}.
 */
public final class Numerals {
    /** Units in one: eight decimal places, as the Unified standard holds the pitch. */
    public static final long ONE = 100_000_000L;

    private static final int PLACES = 8;
    private static final int LONGEST_WHOLE = 5;
    private static final int LARGEST_DENOMINATOR = 128;

    private Numerals() {}

    /** A whole number under 100,000. */
    public static long whole(Cursor c) {
        if (!c.atDigit()) {
            throw c.expected("a number");
        }
        int start = c.at();
        long value = 0;
        while (c.atDigit()) {
            value = value * 10 + (c.peek() - '0');
            c.skip();
            if (c.at() - start > LONGEST_WHOLE) {
                throw c.refuse(start, "has too large a number at character " + (start + 1), "");
            }
        }
        return value;
    }

    /** A decimal, with or without a figure before the point. */
    public static long decimal(Cursor c) {
        return decimal(c, false);
    }

    /** A decimal; a comma counts as the point where metric call-outs are written so. */
    public static long decimal(Cursor c, boolean commaToo) {
        int start = c.at();
        long value = c.atDigit() ? whole(c) * ONE : 0;
        boolean point = c.peek() == '.' || commaToo && c.peek() == ',';
        if (!point || !Cursor.isDigit(c.peek(1))) {
            if (c.at() == start) {
                throw c.expected("a number");
            }
            return value;
        }
        c.skip();
        return value + places(c);
    }

    private static long places(Cursor c) {
        int start = c.at();
        long unit = ONE / 10;
        long value = 0;
        while (c.atDigit()) {
            if (c.at() - start >= PLACES) {
                throw c.refuse(
                        start,
                        "has more than " + PLACES + " decimal places at character " + (start + 1),
                        "round the number");
            }
            value += (c.peek() - '0') * unit;
            unit /= 10;
            c.skip();
        }
        return value;
    }

    /**
     * A decimal, a fraction or a mixed number: {@code 4.5}, {@code 1/4}, {@code 1 1/8}, {@code 1-1/8}.
     *
     * <p>A whole number followed by a dash and a number that is not a fraction is left at the dash.
     */
    public static long mixed(Cursor c) {
        int start = c.at();
        if (isGlyph(c.peek())) {
            return glyph(c);
        }
        long first = decimal(c);
        if (c.take('/')) {
            return fraction(c, start, first);
        }
        if (first % ONE != 0) {
            return first;
        }
        int end = c.at();
        if (c.peek() == ' ' || c.peek() == '-') {
            c.separators();
            int part = c.at();
            if (c.atDigit() && part - end <= 2) {
                long numerator = whole(c) * ONE;
                if (c.take('/')) {
                    return first + fraction(c, part, numerator);
                }
            }
            c.to(end);
        }
        return first + glyph(c);
    }

    private static long fraction(Cursor c, int start, long numerator) {
        int place = c.at();
        long denominator = whole(c);
        if (numerator % ONE != 0
                || denominator == 0
                || denominator > LARGEST_DENOMINATOR
                || Long.bitCount(denominator) != 1) {
            throw c.refuse(
                    place,
                    "has a fraction at character " + (start + 1) + " that is not in halves, quarters, .. 128ths",
                    "write it as a decimal");
        }
        return numerator / denominator;
    }

    /** One of the single-character fractions, or zero. */
    private static long glyph(Cursor c) {
        long eighths = switch (c.peek()) {
            case '\u00bc' -> 2;
            case '\u00bd' -> 4;
            case '\u00be' -> 6;
            case '\u215b' -> 1;
            case '\u215c' -> 3;
            case '\u215d' -> 5;
            case '\u215e' -> 7;
            default -> 0;
        };
        if (eighths != 0) {
            c.skip();
        }
        return eighths * ONE / 8;
    }

    /** Whether a number can begin here. */
    public static boolean begins(Cursor c) {
        char here = c.peek();
        return Cursor.isDigit(here) || here == '.' && Cursor.isDigit(c.peek(1)) || isGlyph(here);
    }

    private static boolean isGlyph(char here) {
        return here >= '\u00bc' && here <= '\u00be' || here >= '\u215b' && here <= '\u215e';
    }

    /** A decimal without needless zeros: {@code 1.25}, {@code 8}, {@code 0.08333333}. */
    public static String plain(long units) {
        return atLeast(units, 0);
    }

    /** A decimal with at least so many places: {@code 0.2500}. */
    public static String atLeast(long units, int places) {
        StringBuilder text = new StringBuilder(16).append(units / ONE);
        long rest = units % ONE;
        if (rest == 0 && places == 0) {
            return text.toString();
        }
        text.append('.');
        int written = 0;
        for (long unit = ONE / 10; unit > 0 && (rest > 0 || written < places); unit /= 10) {
            text.append((char) ('0' + rest / unit));
            rest %= unit;
            written++;
        }
        return text.toString();
    }

    /** A whole, mixed or bare fraction in lowest terms, or empty when it is not in 64ths. */
    public static String asFraction(long units) {
        long sixtyFourths = units * 64 / ONE;
        if (units * 64 % ONE != 0) {
            return "";
        }
        long whole = sixtyFourths / 64;
        long part = sixtyFourths % 64;
        if (part == 0) {
            return Long.toString(whole);
        }
        long twos = Long.lowestOneBit(part);
        String bare = part / twos + "/" + 64 / twos;
        return whole == 0 ? bare : whole + " " + bare;
    }
}
