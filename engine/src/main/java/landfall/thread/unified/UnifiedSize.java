// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import landfall.quantity.Length;
import landfall.thread.scan.InchHead;
import landfall.thread.scan.Numerals;

/**
 * Diameter, pitch and starts of an inch thread, in units of 1e-8 in.
 *
 * @param major basic major diameter, exact: 19/64 is 0.296875 here, though limits start from 0.2969
 * @param pitch to eight places
 */
public record UnifiedSize(long major, long pitch, int starts) {
    private static final int LARGEST_NUMBER = 12;
    private static final long COARSEST_NUMBER_PITCH = Numerals.ONE / 22;
    /** 1-32 is one inch, 1-64 is number 1. */
    private static final long FINEST_WHOLE_INCH_PITCH = Numerals.ONE / 40;

    /** The size that a call-out begins with. */
    public static UnifiedSize of(InchHead head, int starts) {
        return new UnifiedSize(majorOf(head), head.pitch(), starts);
    }

    private static long majorOf(InchHead head) {
        if (head.sure() == InchHead.Sure.NUMBER
                || head.sure() == InchHead.Sure.OPEN && readsAsNumber(head.number(), head.pitch())) {
            return InchHead.ofNumber(head.number());
        }
        long sixtyFourths = (head.size() * 64 + Numerals.ONE / 2) / Numerals.ONE;
        long exact = sixtyFourths * Numerals.ONE / 64;
        return InchGrain.up(exact, InchGrain.PLACES_4) == head.size() ? exact : head.size();
    }

    /** How a bare whole number is meant: with fine pitches it is a number size, else whole inches. */
    static boolean readsAsNumber(int number, long pitch) {
        return number >= 0
                && number <= LARGEST_NUMBER
                && pitch <= (number == 1 ? FINEST_WHOLE_INCH_PITCH : COARSEST_NUMBER_PITCH);
    }

    /** Threads an inch to four places, or zero when the pitch is not the inverse of such a figure. */
    long threadsPerInch() {
        long exact = Numerals.ONE * Numerals.ONE / pitch;
        long grain = Numerals.ONE / 10_000;
        long rounded = (exact + grain / 2) / grain * grain;
        return rounded > 0 && InchHead.pitchOf(rounded) == pitch ? rounded : 0;
    }

    /** Exact where the pitch is so many threads an inch. */
    public Length pitchLength() {
        long n = threadsPerInch();
        return n == 0
                ? Length.ofInch(pitch / (double) Numerals.ONE)
                : Length.ofMm(Length.MM_PER_INCH * Numerals.ONE / n);
    }

    public Length majorLength() {
        return Length.ofInch(major / (double) Numerals.ONE);
    }

    /** As the normal call-out writes it: {@code 10-32}, {@code 1 1/8-7}, {@code 0.2500-0.05P-0.1L}. */
    public String label() {
        long n = threadsPerInch();
        if (starts == 1 && n != 0) {
            return diameter() + "-" + Numerals.plain(n);
        }
        String single = Numerals.atLeast(major, 4) + "-" + Numerals.plain(pitch) + "P";
        return starts == 1 ? single : single + "-" + Numerals.plain(pitch * starts) + "L";
    }

    /** The diameter as the trade names it, in a form that reads back as the same. */
    String diameter() {
        long over = major - InchHead.ofNumber(0);
        long step = InchHead.ofNumber(1) - InchHead.ofNumber(0);
        String fraction = Numerals.asFraction(major);
        if (over >= 0
                && over % step == 0
                && (fraction.isEmpty() || Series.of(this).isPresent())) {
            int number = (int) (over / step);
            if (readsAsNumber(number, pitch)) {
                return Integer.toString(number);
            }
        }
        boolean whole = !fraction.isEmpty() && fraction.indexOf('/') < 0;
        if (fraction.isEmpty() || whole && readsAsNumber(Integer.parseInt(fraction), pitch)) {
            return Numerals.atLeast(major, 4);
        }
        return fraction;
    }
}
