// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

/**
 * Limits of a result, both included; an end that is open is infinite.
 *
 * @param low the least that is good
 * @param high the greatest that is good
 */
public record Within(double low, double high) {
    public static final Within ANY = new Within(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    public Within {
        if (!(low <= high)) {
            throw new IllegalArgumentException("limits are " + low + " and " + high);
        }
    }

    public boolean holds(double value) {
        return low <= value && value <= high;
    }

    /** Whether there is a limit at all. */
    public boolean isSet() {
        return low > Double.NEGATIVE_INFINITY || high < Double.POSITIVE_INFINITY;
    }
}
