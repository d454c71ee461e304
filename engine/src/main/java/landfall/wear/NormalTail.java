// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import org.hipparchus.special.Erf;

/**
 * Logarithm of the normal distribution's share below a point, from a table with parabolas between its places: the
 * posterior asks for it a million times. Within 1e-6 from -38 to 9; further down by the leading term of its series.
 */
final class NormalTail {
    private static final double LOWEST = -38;
    private static final double HIGHEST = 9;
    private static final int PER_ONE = 64;
    private static final double[] TABLE = table();

    private NormalTail() {}

    static double ln(double z) {
        if (z >= HIGHEST) {
            return 0;
        }
        if (z <= LOWEST) {
            return leading(z);
        }
        double place = (z - LOWEST) * PER_ONE;
        int i = Math.max(1, Math.min(TABLE.length - 2, (int) Math.round(place)));
        double t = place - i;
        double slope = (TABLE[i + 1] - TABLE[i - 1]) / 2;
        double bend = TABLE[i + 1] - 2 * TABLE[i] + TABLE[i - 1];
        return TABLE[i] + t * slope + t * t / 2 * bend;
    }

    private static double leading(double z) {
        return -z * z / 2 - Math.log(-z * Math.sqrt(2 * Math.PI)) + Math.log1p(-1 / (z * z));
    }

    private static double[] table() {
        double[] table = new double[(int) Math.round((HIGHEST - LOWEST) * PER_ONE) + 1];
        for (int i = 0; i < table.length; i++) {
            double z = LOWEST + i / (double) PER_ONE;
            table[i] = z < -30 ? leading(z) : Math.log(Erf.erfc(-z / Math.sqrt(2)) / 2);
        }
        return table;
    }
}
