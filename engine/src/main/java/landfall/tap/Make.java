// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import org.jspecify.annotations.Nullable;

/**
 * How the tap is made.
 *
 * @param coating as named on the tap, null when bare
 * @param interrupted every second tooth of the thread taken away
 */
public record Make(TapMaterial material, @Nullable String coating, boolean interrupted) {
    public static final Make PLAIN_HSS = new Make(TapMaterial.HSS, null, false);
}
