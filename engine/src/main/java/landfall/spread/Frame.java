// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

/**
 * Where the counts of a result begin and how wide each is. It is laid by the first block: 1024 counts over what that
 * block showed, and as many on either side.
 *
 * @param low where the first count begins
 * @param width of each
 */
public record Frame(double low, double width) {
    static final int COUNTS = 3 * 1024;

    static Frame over(Moments first) {
        if (first.count() == 0) {
            return new Frame(-1, 2.0 / COUNTS);
        }
        double range = first.greatest() - first.least();
        double size = Math.max(Math.abs(first.greatest()), Math.abs(first.least()));
        // a result that does not move still needs a width
        double whole = range > 1e-12 * size ? range : Math.max(size, 1) * 1e-9;
        double width = whole * 3 / COUNTS;
        return new Frame((first.least() + first.greatest()) / 2 - width * COUNTS / 2, width);
    }

    /** Which count a value belongs to; -1 below them all, {@link #COUNTS} above. */
    int place(double value) {
        double place = Math.floor((value - low) / width);
        return place < 0 ? -1 : place >= COUNTS ? COUNTS : (int) place;
    }
}
