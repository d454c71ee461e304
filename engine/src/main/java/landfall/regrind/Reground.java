// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.List;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.Measured;
import org.jspecify.annotations.Nullable;

/**
 * What was measured on the reground tap; what was not is null or empty.
 *
 * @param chamferLengths along the axis, land 1, 2, .. backwards over the lands
 * @param lengthUncertainty of each of them, expanded
 * @param falls from edge to heel square to the chamfer, land by land
 * @param totalRunOut of the chamfer's edges against the thread, full indicator movement
 * @param pitchDiameter at the first full thread
 */
public record Reground(
        List<Length> chamferLengths,
        Length lengthUncertainty,
        List<Length> falls,
        @Nullable Length totalRunOut,
        @Nullable Measured pitchDiameter) {
    public Reground {
        chamferLengths = List.copyOf(chamferLengths);
        falls = List.copyOf(falls);
        if (lengthUncertainty.mm() < 0) {
            throw new OutOfRange(
                    "uncertainty of the chamfer lengths",
                    lengthUncertainty.words(),
                    "0 or more",
                    "give what the loupe or the gauge can tell apart");
        }
    }
}
