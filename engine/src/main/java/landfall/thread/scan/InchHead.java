// SPDX-License-Identifier: Apache-2.0
package landfall.thread.scan;

/**
 * The size and pitch that an inch call-out begins with: {@code 1/4-20}, {@code #10-32}, {@code 1 1/8-7},
 * {@code .4375-0.05P-0.1L}, or a size alone as in {@code 1/2 NPT}. Lengths in units of 1e-8 in.
 *
 * @param size as a length in inches, unless it is surely a number size
 * @param number the whole number that was written, or -1; it may mean a number size or whole inches
 * @param sure which of the two it is, where the text says
 * @param pitch zero when none was written
 * @param lead zero when none was written
 */
public record InchHead(long size, int number, Sure sure, long pitch, long lead) {
    /** Whether the text itself says how a whole number is meant. */
    public enum Sure {
        NUMBER,
        INCH,
        OPEN
    }

    /** Diameter of a number size: 0.060 in and 0.013 in more for each number. */
    public static long ofNumber(int number) {
        return 6_000_000L + 1_300_000L * number;
    }

    /** Pitch of so many threads an inch, to eight places. */
    public static long pitchOf(long threadsPerInch) {
        return (Numerals.ONE * Numerals.ONE + threadsPerInch / 2) / threadsPerInch;
    }

    public static InchHead read(Cursor c) {
        c.blanks();
        boolean marked = c.take('#') || c.takeWord("NO");
        if (marked) {
            c.take('.');
            c.blanks();
        }
        int start = c.at();
        long size = marked ? Numerals.whole(c) * Numerals.ONE : Numerals.mixed(c);
        int number = bareWhole(c, start, size);
        Sure sure = marked ? Sure.NUMBER : Sure.OPEN;
        bracketedDecimal(c);
        int beforeUnit = c.at();
        c.blanks();
        if (c.take('"') || c.takeWord("IN") || c.takeWord("INCH")) {
            if (marked) {
                throw c.expected("a dash and the threads per inch");
            }
            sure = Sure.INCH;
        } else {
            c.to(beforeUnit);
            sure = !marked && number < 0 ? Sure.INCH : sure;
        }
        return withPitch(c, new InchHead(size, number, sure, 0, 0));
    }

    private static int bareWhole(Cursor c, int start, long size) {
        for (int i = start; i < c.at(); i++) {
            if (!Character.isDigit(c.text().charAt(i))) {
                return -1;
            }
        }
        return (int) (size / Numerals.ONE);
    }

    /** Number sizes are written with their diameter in brackets: {@code 10 (0.190)-32}. */
    private static void bracketedDecimal(Cursor c) {
        int place = c.at();
        c.blanks();
        if (c.take('(') && Numerals.begins(c)) {
            Numerals.decimal(c);
            if (c.take(')')) {
                return;
            }
        }
        c.to(place);
    }

    private static InchHead withPitch(Cursor c, InchHead size) {
        int place = c.at();
        c.separators();
        if (c.take('X')) {
            c.blanks();
        }
        if (!Numerals.begins(c)) {
            c.to(place);
            return size;
        }
        int start = c.at();
        long value = Numerals.mixed(c);
        c.takeWord("TPI");
        if (value == 0) {
            throw c.refuse(start, "has a pitch of nothing at character " + (start + 1), "give the threads per inch");
        }
        if (c.peek() != 'P' && c.peek() != 'L' || c.startsWith("LH") || c.startsWith("LE")) {
            return new InchHead(size.size, size.number, size.sure, pitchOf(value), 0);
        }
        return pitchAndLead(c, size, value);
    }

    private static InchHead pitchAndLead(Cursor c, InchHead size, long first) {
        boolean pitchFirst = c.take('P');
        if (!pitchFirst) {
            c.skip();
        }
        int place = c.at();
        c.separators();
        long second = 0;
        if (Numerals.begins(c)) {
            second = Numerals.decimal(c);
            if (!c.take(pitchFirst ? 'L' : 'P')) {
                second = 0;
            }
        }
        if (second == 0) {
            c.to(place);
        }
        long pitch = pitchFirst ? first : second;
        if (pitch == 0) {
            throw c.expected("the pitch, as in 0.05P");
        }
        return new InchHead(size.size, size.number, size.sure, asThreadsPerInch(pitch), pitchFirst ? second : first);
    }

    /** A pitch rounded to three places or more that stands for a whole number of threads an inch is taken as such. */
    private static long asThreadsPerInch(long pitch) {
        if (pitch > Numerals.ONE) {
            return pitch;
        }
        long grain = 1;
        while (pitch % (grain * 10) == 0) {
            grain *= 10;
        }
        long exact = pitchOf((Numerals.ONE + pitch / 2) / pitch * Numerals.ONE);
        boolean same = (exact + grain / 2) / grain * grain == pitch;
        return same && grain <= Numerals.ONE / 1000 ? exact : pitch;
    }
}
