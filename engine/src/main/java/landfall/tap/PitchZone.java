// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.quantity.Limits;
import org.jspecify.annotations.Nullable;

/** The tap's own pitch-diameter limits, and what it must keep to stay in use. */
public record PitchZone(@Nullable Limits limit, Least least) {
    public static final PitchZone UNKNOWN = new PitchZone(null, Least.UNKNOWN);
}
