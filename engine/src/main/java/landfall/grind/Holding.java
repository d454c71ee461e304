// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Length;
import landfall.tap.Tap;

/**
 * How the tap is held: by its shank in a collet, or between a driver on its square and a tail centre at its point.
 *
 * <p>Common practice with no source: a collet with a bushing up to 1 in, a driver and a spring tail centre above. Which
 * centres a tap has is from memory: male at the point up to 3/8 in (10 mm), female above. A male one goes when the end
 * is ground back, and then only the collet is left.
 *
 * @param way collet or centres
 * @param centres what is to be known of its centres
 */
public record Holding(Way way, String centres) {
    private static final Length MOST_IN_COLLET = Length.ofInch(1);
    private static final Length MOST_MALE = Length.ofMm(10);

    /** The two ways. */
    public enum Way {
        COLLET,
        CENTRES
    }

    /** By the size of the thread, which taps' shanks go by. */
    public static Holding of(Tap tap) {
        Length major = tap.thread().major();
        Way way = major.compareTo(MOST_IN_COLLET) > 0 ? Way.CENTRES : Way.COLLET;
        String centres = major.compareTo(MOST_MALE) > 0
                ? "Its centres are usually female: use them only if sound."
                : "The point's centre is usually male and goes with the end.";
        return new Holding(way, centres);
    }

    /** As the step of the procedure says it. */
    public String words(Tap tap) {
        Length shank = tap.body().shank();
        String by = shank == null ? "" : ", " + shank.words();
        return (way == Way.COLLET
                        ? "Collet on the shank%s. ".formatted(by)
                        : "Over 1 in: driver on the square, spring tail centre. ")
                + centres;
    }
}
