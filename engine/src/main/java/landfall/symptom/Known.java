// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import landfall.material.WorkMaterial;
import landfall.tap.Tap;
import landfall.thread.CallOut;
import org.jspecify.annotations.Nullable;

/** What is known of the work beside the symptom; all of it may be null. */
public record Known(
        @Nullable CallOut callOut,
        @Nullable Tap tap,
        @Nullable WorkMaterial material) {
    public static final Known NOTHING = new Known(null, null, null);
}
