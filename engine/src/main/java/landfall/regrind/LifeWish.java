// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.tap.Wear;
import org.jspecify.annotations.Nullable;

/**
 * What the count of sharpenings stands on besides the tap.
 *
 * @param wear at which it is sharpened each time
 * @param reach length of a spiral point from the tap's point, null when there is none or it was not measured
 * @param cap most sharpenings that the shop has agreed on, null for none
 */
public record LifeWish(
        Wear wear, @Nullable Length reach, @Nullable Integer cap) {
    public static final LifeWish USUAL = new LifeWish(Wear.DUE, null, null);

    public LifeWish {
        if (cap != null && cap < 0) {
            throw new OutOfRange("cap", cap.toString(), "0 or more", "give the most sharpenings that the shop allows");
        }
        if (reach != null && reach.mm() <= 0) {
            throw new OutOfRange("reach", reach.words(), "more than 0", "measure the ground point from the tap's end");
        }
    }
}
