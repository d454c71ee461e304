// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.tap.Wear;
import org.jspecify.annotations.Nullable;

/**
 * What is wrong with the tap; what is null is sound.
 *
 * @param wear land on the chamfer edges
 * @param chip deepest chip in the chamfer, measured down the face
 * @param flank width of the wear on the flanks of the full threads, from the edge
 * @param torn length of worn-out, torn or missing full threads, from the large end of the chamfer
 * @param nose length from the point to the first place where all lands are whole
 */
public record Damage(
        Wear wear,
        @Nullable Length chip,
        @Nullable Length flank,
        @Nullable Length torn,
        @Nullable Length nose) {
    public Damage {
        positive("chip", chip);
        positive("flank", flank);
        positive("torn", torn);
        positive("nose", nose);
    }

    /** A wear land and nothing else. */
    public static Damage worn(Wear wear) {
        return new Damage(wear, null, null, null, null);
    }

    private static void positive(String field, @Nullable Length length) {
        if (length != null && length.mm() <= 0) {
            throw new OutOfRange(field, length.words(), "more than 0", "leave it out where the tap is sound");
        }
    }
}
