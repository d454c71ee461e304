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
 * @param cost share of what there is to lose that it takes, and what that is worth
 * @param barred why it cannot be done; null where it can
 * @param why what it mends
 */
public record Choice(
        Way way,
        @Nullable Length thread,
        @Nullable Angle land,
        Cost cost,
        @Nullable String barred,
        String why) {
    /**
     * What a way takes of the metal that there is to lose.
     *
     * @param share of 1; null where that is not known
     * @param money the same share of what the tap is worth; null where its worth is not told
     */
    public record Cost(@Nullable Double share, @Nullable Double money) {
        static final Cost UNKNOWN = new Cost(null, null);
    }

    /** Share of what there is to lose; null where that is not known. */
    public @Nullable Double share() {
        return cost.share();
    }

    public boolean isOpen() {
        return barred == null;
    }

    static Choice barred(Way way, String barred) {
        return new Choice(way, null, null, Cost.UNKNOWN, barred, "");
    }
}
