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
            Helix helix) {
        public static final Seen NOTHING = new Seen(null, null, null, null, Helix.RIGHT);
    }

    /**
     * How the thread winds.
     *
     * @param starts counted at the end of the thread; null when not looked at
     * @param leadAngle of the thread's groove against a plane square to the axis, at the pitch line
     */
    public record Helix(
            Hand hand, @Nullable Integer starts, @Nullable Angle leadAngle) {
        public static final Helix RIGHT = new Helix(Hand.RIGHT, null, null);
    }
}
