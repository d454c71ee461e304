// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.fault.OutOfRange;
import landfall.material.WorkMaterial;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Wear;
import org.jspecify.annotations.Nullable;

/**
 * What is wanted of a regrind.
 *
 * @param workingRelief square to the edge; null for the usual one
 * @param cuts material that the tap is to cut; null when not told
 * @param wear how far the edges are worn; null when not told
 * @param chip depth of the deepest chip down the face; null when there is none
 * @param foundRelief static relief found on the tap, square to the edge; null when not measured
 */
public record GrindWish(
        @Nullable Angle workingRelief,
        @Nullable WorkMaterial cuts,
        @Nullable Wear wear,
        @Nullable Length chip,
        @Nullable Angle foundRelief) {
    public GrindWish {
        if (chip != null && chip.mm() < 0) {
            throw new OutOfRange("chip", chip.mm() + " mm", "0 or more", "measure the deepest chip down the face");
        }
    }

    public static final GrindWish USUAL = new GrindWish(null, null, null, null, null);

    /** The wear that counts: as told, else that of a tap which is due. */
    public Wear wearTaken() {
        return wear == null ? Wear.DUE : wear;
    }
}
