// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import org.jspecify.annotations.Nullable;

/**
 * What was read or asked beside the lands; each may be missing.
 *
 * @param reference readings of the thread's crests or of the shank, in the same chucking
 * @param along readings along the chamfer by table travel
 * @param aim what the fixture is to give
 */
public record Beside(
        @Nullable Readings reference,
        @Nullable AlongChamfer along,
        @Nullable Aim aim) {
    public static final Beside NOTHING = new Beside(null, null, null);
}
