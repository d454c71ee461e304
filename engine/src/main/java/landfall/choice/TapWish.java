// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import landfall.hole.HoleEnd;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.thread.CallOut;
import org.jspecify.annotations.Nullable;

/** What a tap is wanted for. What was not told is null; what is then taken instead is said in the answer. */
public record TapWish(CallOut callOut, @Nullable WorkMaterial material, Place place, Drive drive) {
    /**
     * Where the thread stands.
     *
     * @param depth of full thread
     */
    public record Place(@Nullable Length depth, @Nullable HoleEnd end) {
        public static final Place UNKNOWN = new Place(null, null);
    }

    /**
     * How the tap is driven.
     *
     * @param byHand null when not told
     * @param horizontal spindle; null when not told
     */
    public record Drive(@Nullable Boolean byHand, @Nullable Boolean horizontal) {
        public static final Drive UNKNOWN = new Drive(null, null);
    }

    boolean through() {
        return place.end() == HoleEnd.THROUGH;
    }

    boolean byHand() {
        return Boolean.TRUE.equals(drive.byHand());
    }

    /** Engagement over the diameter; 0 when no depth is told. */
    double diameters() {
        return place.depth() == null ? 0 : place.depth().over(callOut.thread().major());
    }
}
