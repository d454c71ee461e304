// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dial;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What one dial face shows.
 *
 * @param where such as {@code edge}, {@code mid-land}, {@code heel}
 * @param land land angle from the edge
 * @param wanted where the needle should stand
 * @param read where it was read; null when nothing was read
 * @param mend which way and how far to turn what, in words; empty when nothing was read
 */
public record Needle(
        String where, Angle land, Length wanted, @Nullable Length read, String mend) {
    public static Needle of(String where, Angle land, Length wanted) {
        return new Needle(where, land, wanted, null, "");
    }

    public Needle read(Length reading, String mend) {
        return new Needle(where, land, wanted, reading, mend);
    }
}
