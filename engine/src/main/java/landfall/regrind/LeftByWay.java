// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Sharpenings left by one way alone. A count is null where nothing known limits it; the cautions say what was not told.
 */
public final class LeftByWay {
    private LeftByWay() {}

    /**
     * By grinding the chamfer back.
     *
     * @param stock axial, to clean up, without allowance
     * @param allowance axial, below the damage
     */
    public record ByChamfer(
            Length stock,
            Length allowance,
            @Nullable Integer count,
            @Nullable LifeLimit limit) {
        /** What each sharpening takes of the thread length. */
        public Length each() {
            return stock.plus(allowance);
        }
    }

    /**
     * By grinding the faces.
     *
     * @param angle of land that each sharpening takes
     */
    public record ByFace(
            Angle angle, @Nullable Integer count, @Nullable LifeLimit limit) {}
}
