// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What is measured, or wanted of a measurement.
 *
 * @param wire in use; null for the best one
 * @param pitchDiameter to find the size over the wires for; null when not asked
 * @param over size over the wires; null when not measured
 * @param anvil reading in a V-anvil; null when not measured
 */
public record GaugeWish(
        @Nullable Length wire,
        @Nullable Length pitchDiameter,
        @Nullable Length over,
        @Nullable InVAnvil anvil) {
    public static final GaugeWish NOTHING = new GaugeWish(null, null, null, null);

    /**
     * A tap in the V-anvil.
     *
     * @param crest diameter over the crests, which the V's faces bear on; null when they bear on wires
     */
    public record InVAnvil(
            int flutes, VAnvil.Reading reading, @Nullable Length crest) {}
}
