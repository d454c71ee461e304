// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/** What the tap must keep to stay in use. A null is filled by a stated practice, where it is needed. */
public record Least(
        @Nullable Length threadLength,
        @Nullable Angle landAngle,
        @Nullable Length pitchDiameter) {
    public static final Least UNKNOWN = new Least(null, null, null);
}
