// SPDX-License-Identifier: Apache-2.0
package landfall.salvage;

import java.util.List;

/**
 * A way in its place.
 *
 * @param fits whether it can be done here at all
 * @param reasons what speaks for it
 * @param against what speaks against it
 */
public record WayOut(Way way, boolean fits, List<String> reasons, List<String> against) {
    public WayOut {
        reasons = List.copyOf(reasons);
        against = List.copyOf(against);
    }
}
