// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What one turn of the fixture's adjusting screws does to its rises over one lobe.
 *
 * @param axial change of the axial rise; null when not told
 * @param radial change of the radial rise; null when not told
 */
public record Screws(@Nullable Length axial, @Nullable Length radial) {
    public static final Screws UNTOLD = new Screws(null, null);
}
