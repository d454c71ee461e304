// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.quantity.Angle;
import org.jspecify.annotations.Nullable;

/**
 * What was read or asked beside the lands; each may be missing.
 *
 * @param reference readings of the thread's crests or of the shank, in the same chucking
 * @param along readings along the chamfer by table travel
 * @param aim what the fixture is to give
 * @param relief working relief wanted, square to the edge; the usual one of the chamfer where it is left out
 */
public record Beside(
        @Nullable Readings reference,
        @Nullable AlongChamfer along,
        @Nullable Aim aim,
        @Nullable Angle relief) {
    public static final Beside NOTHING = new Beside(null, null, null);

    public Beside(@Nullable Readings reference, @Nullable AlongChamfer along, @Nullable Aim aim) {
        this(reference, along, aim, null);
    }
}
