// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import landfall.fault.OutOfRange;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What a decision hangs on besides tap and damage; each may be missing.
 *
 * @param cuts material that the tap is to cut, which sets its relief
 * @param reach length of a spiral point from the tap's end
 * @param worth of the tap as it is, in the shop's own money
 */
public record Circumstances(
        @Nullable WorkMaterial cuts,
        @Nullable Length reach,
        @Nullable Double worth) {
    public static final Circumstances UNKNOWN = new Circumstances(null, null, null);

    public Circumstances {
        if (worth != null && worth < 0) {
            throw new OutOfRange("price", worth.toString(), "0 or more", "give what the tap is worth as it is");
        }
    }
}
