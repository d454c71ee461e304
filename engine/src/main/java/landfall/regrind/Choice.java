// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * One way, and what it costs or why it is barred.
 *
 * @param way which
 * @param thread thread length that it takes, allowance included
 * @param land angle of land that it takes
 * @param share of what there is to lose that it takes; null where that is not known
 * @param barred why it cannot be done; null where it can
 * @param why what it mends
 */
public record Choice(
        Way way,
        @Nullable Length thread,
        @Nullable Angle land,
        @Nullable Double share,
        @Nullable String barred,
        String why) {
    public boolean isOpen() {
        return barred == null;
    }

    static Choice barred(Way way, String barred) {
        return new Choice(way, null, null, null, barred, "");
    }
}
