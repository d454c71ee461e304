// SPDX-License-Identifier: Apache-2.0
package landfall.chip;

import java.util.List;
import landfall.quantity.Area;
import landfall.quantity.Length;

/**
 * What one tooth takes out of one groove.
 *
 * @param tooth 1 cuts first
 * @param radius of the slice's centroid
 * @param outline its corners in order round it, as it was clipped
 */
public record Slice(int tooth, Area area, Length radius, List<Corner> outline) {
    /**
     * A corner in the axial plane: along the axis from the middle of the groove towards the shank, and from the axis.
     */
    public record Corner(Length along, Length radius) {}

    public Slice {
        outline = List.copyOf(outline);
    }
}
