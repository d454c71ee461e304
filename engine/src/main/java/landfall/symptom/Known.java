// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.tap.Wear;
import landfall.thread.CallOut;
import org.jspecify.annotations.Nullable;

/** What is known of the work beside the symptom; all of it may be null. */
public record Known(
        @Nullable CallOut callOut,
        @Nullable Tap tap,
        @Nullable WorkMaterial material,
        Job job) {
    public static final Known NOTHING = new Known(null, null, null);

    /** Nothing known of the hole beyond its call-out. */
    public Known(@Nullable CallOut callOut, @Nullable Tap tap, @Nullable WorkMaterial material) {
        this(callOut, tap, material, Job.UNTOLD);
    }

    /**
     * The hole as it was tapped.
     *
     * @param hole its diameter before tapping; when null the one expected of the drill is taken
     * @param depth of full thread
     */
    public record Job(
            @Nullable Length hole,
            @Nullable Length depth,
            @Nullable Wear wear) {
        public static final Job UNTOLD = new Job(null, null, null);
    }

    /** The call-out told, else that of the tap. */
    @Nullable
    CallOut thread() {
        return callOut != null || tap == null ? callOut : tap.callOut();
    }
}
