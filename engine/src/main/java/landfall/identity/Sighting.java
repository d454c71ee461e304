// SPDX-License-Identifier: Apache-2.0
package landfall.identity;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.thread.Hand;
import org.jspecify.annotations.Nullable;

/**
 * What was measured on the tap.
 *
 * @param major diameter over the crests behind the chamfer
 * @param pitch from crest to crest
 * @param uncertainty of the major diameter, 95 %
 */
public record Sighting(Length major, Length pitch, Length uncertainty, Seen seen) {
    public Sighting {
        if (pitch.mm() <= 0 || major.mm() <= pitch.mm()) {
            throw new OutOfRange(
                    "major",
                    major.words(),
                    "more than one pitch of " + pitch.words(),
                    "measure over the crests, and the pitch over several threads");
        }
    }

    /**
     * What else was seen; null where it was not.
     *
     * @param angle included angle of the flanks
     * @param rings rings round the shank of a hand tap; 0 when there are none
     */
    public record Seen(
            @Nullable Length shank,
            @Nullable Integer flutes,
            @Nullable Angle angle,
            @Nullable Integer rings,
            Hand hand) {
        public static final Seen NOTHING = new Seen(null, null, null, null, Hand.RIGHT);
    }
}
