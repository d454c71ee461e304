// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Length;
import landfall.tap.Centres;
import landfall.tap.Tap;
import org.jspecify.annotations.Nullable;

/**
 * How the tap is held: by its shank in a collet, or between a driver on its square and a tail centre at its point.
 *
 * <p>A collet with a bushing takes shanks up to 0.800 in, that of a 1 in tap; above, a driver and a spring tail centre
 * (a trade manual's practice, read second hand). Where the shank is not told the size of the thread decides, 1 in. A
 * tap without a sound centre is held by its shank, however thick. Which centres a tap has where its card does not say
 * is from memory: male at the point up to 3/8 in (10 mm), holes above. A male one goes when the end is ground back.
 *
 * @param way collet or centres
 * @param why what decided it
 * @param centres what is to be known of its centres
 * @param sound centre at the point; null where the card does not tell
 */
public record Holding(
        Way way, String why, String centres, @Nullable Centres sound) {
    private static final Length MOST_SHANK = Length.ofInch(0.8);
    private static final Length MOST_THREAD = Length.ofInch(1);
    private static final Length MOST_MALE = Length.ofMm(10);

    /** The two ways. */
    public enum Way {
        COLLET,
        CENTRES
    }

    /** By shank and centres of the card; by the size of the thread where they are not told. */
    public static Holding of(Tap tap) {
        Centres sound = tap.body().centres();
        Length shank = tap.body().shank();
        boolean thick =
                shank == null ? tap.thread().major().compareTo(MOST_THREAD) > 0 : shank.compareTo(MOST_SHANK) > 0;
        Way way = thick && sound != Centres.NONE ? Way.CENTRES : Way.COLLET;
        return new Holding(way, why(thick, shank, sound), centres(tap, sound), sound);
    }

    private static String why(boolean thick, @Nullable Length shank, @Nullable Centres sound) {
        String by = shank == null ? "" : ", " + shank.words();
        if (!thick) {
            return "Collet on the shank%s.".formatted(by);
        }
        if (sound == Centres.NONE) {
            return "No centre to turn on: collet or chuck on the shank%s, trued to the full thread.".formatted(by);
        }
        return shank == null
                ? "Over 1 in: driver on the square, spring tail centre."
                : "Shank over 0.8 in%s: driver on the square, spring tail centre.".formatted(by);
    }

    private static String centres(Tap tap, @Nullable Centres sound) {
        if (sound == null) {
            return tap.thread().major().compareTo(MOST_MALE) > 0
                    ? "Its centres are usually female: use them only if sound."
                    : "The point's centre is usually male and goes with the end.";
        }
        return switch (sound) {
            case HOLES -> "Clean its centre holes; they serve for checking between centres afterwards.";
            case MALE -> "Its male centre goes if the end is ground; from then on a collet is all that is left.";
            case NONE -> "Without centres it is checked in a V on its full thread.";
        };
    }

    /** As the step of the procedure says it. */
    public String words() {
        return why + " " + centres;
    }

    /** How the end is ground, last of all. */
    String atTheEnd() {
        if (way == Way.CENTRES) {
            return "Leave the end alone: it turns on its centre. If it must be shorter, take the tap out, grind the end"
                    + " by the shank, and lap the centre anew.";
        }
        return sound == Centres.MALE
                ? "Grind the end last, if it is to be shortened: its male centre goes with it, so log it on the card."
                : "Grind the end last, if it is to be shortened or the point cleaned.";
    }

    /** What a tap is turned on to check its chamfer against its thread. */
    public String checkedOn() {
        return sound == Centres.NONE ? "turning in a V on its full thread" : "between bench centres";
    }
}
