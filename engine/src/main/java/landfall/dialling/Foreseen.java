// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.List;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What the dial shows now, or when a correction and all those before it are made, the dial set to zero at the edge of
 * the first land listed.
 *
 * @param number of the correction, from 1 in the order to make them; 0 for the tap as it stands now, by the fit
 * @param after the correction; null for now
 * @param lands in order
 */
public record Foreseen(int number, Correction.@Nullable Kind after, List<AtLand> lands) {
    /** Readings at the edge and at the heel of one land. */
    public record AtLand(int land, Length edge, Length heel) {}

    public Foreseen {
        lands = List.copyOf(lands);
    }
}
