// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The flute's cross-section. Without a rake each flute is one arc of {@code radius} whose floor touches the core
 * circle.
 *
 * @param core diameter of the circle that the flute floors touch
 * @param radius of the flute's arc
 * @param rake radial rake of the face at the basic major diameter
 */
public record FluteForm(
        @Nullable Length core,
        @Nullable Length radius,
        @Nullable Angle rake) {
    public static final FluteForm UNKNOWN = new FluteForm(null, null, null);
}
