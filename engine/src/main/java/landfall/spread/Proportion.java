// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

/**
 * A share that was counted, and the interval that holds the true one 95 times of a hundred: Wilson's score interval
 * ({@code wilson-1927}), which stays between 0 and 1 and says something even when none or all were good.
 *
 * @param share counted, 1 for all
 * @param low end of the interval
 * @param high end of the interval
 */
public record Proportion(double share, double low, double high) {
    /** Quantile of the normal law for 95 % between both ends. */
    private static final double Z = 1.959963984540054;

    public static Proportion of(long good, long all) {
        if (all <= 0 || good < 0 || good > all) {
            throw new IllegalArgumentException(good + " of " + all);
        }
        double n = all;
        double p = good / n;
        double middle = (p + Z * Z / (2 * n)) / (1 + Z * Z / n);
        double half = Z / (1 + Z * Z / n) * Math.sqrt(p * (1 - p) / n + Z * Z / (4 * n * n));
        // at none and all the ends are exact, and must not be moved by the last bit
        return new Proportion(p, good == 0 ? 0 : middle - half, good == all ? 1 : middle + half);
    }
}
