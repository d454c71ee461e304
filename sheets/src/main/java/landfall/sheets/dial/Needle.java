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
 * @param wanted where the needle should stand; null when nothing is wanted there
 * @param read where it was read; null when nothing was read
 * @param mend which way and how far to turn what, in words; empty when nothing was read
 */
public record Needle(
        String where,
        Angle land,
        @Nullable Length wanted,
        @Nullable Length read,
        String mend) {
    public Needle {
        if (wanted == null && read == null) {
            throw new IllegalArgumentException("a dial with no needle: " + where);
        }
    }

    public static Needle of(String where, Angle land, Length wanted) {
        return new Needle(where, land, wanted, null, "");
    }

    /** What was read, with nothing to hold it against. */
    public static Needle onlyRead(String where, Angle land, Length read) {
        return new Needle(where, land, null, read, "");
    }

    public Needle read(Length reading, String mend) {
        return new Needle(where, land, wanted, reading, mend);
    }
}
