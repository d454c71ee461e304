// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import landfall.quantity.Band;
import landfall.quantity.Length;

/**
 * When a tap is next due for sharpening, in holes of the usual depth. Bands hold eight in ten; below 0 is past due.
 *
 * @param used holes since it was sharp
 * @param life holes from sharp to the wear limit, this tap's own signs counted
 * @param left of it
 * @param depth the usual one
 */
public record Due(Band used, Band life, Band left, Length depth) {
    /** How near it is. */
    public enum When {
        /** More likely past its limit than not. */
        NOW,
        /** One in ten such taps is past its limit already. */
        PERHAPS,
        LATER
    }

    public When when() {
        if (left.expected() <= 0) {
            return When.NOW;
        }
        return left.low() <= 0 ? When.PERHAPS : When.LATER;
    }
}
