// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Holes that are to be tapped, in the law's own material.
 *
 * @param depth of full thread; null for the usual one
 */
public record Job(int holes, @Nullable Length depth) {
    public Job {
        if (holes < 1) {
            throw new OutOfRange("holes", Integer.toString(holes), "1 or more", "give the count of the job");
        }
        if (depth != null && depth.mm() <= 0) {
            throw new OutOfRange("depth", depth.words(), "more than 0", "give the depth of full thread");
        }
    }
}
