// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Rounding by a named rule, in decimal.
 *
 * <p>A binary double such as 1.0005 is a little under its own decimal; the rules of the standards speak of decimals. So
 * a figure is first read back as the shortest decimal that names it to 12 significant digits, then rounded.
 */
public final class Rounding {
    private static final java.math.MathContext DECIMAL_OF_A_DOUBLE =
            new java.math.MathContext(12, RoundingMode.HALF_EVEN);

    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};
    /** Below this many last places, 12 significant digits move a figure by less than {@link #CLEAR_OF_HALF}. */
    private static final double PLAIN_PLACES = 1e8;

    private static final double CLEAR_OF_HALF = 1e-2;

    private Rounding() {}

    /**
     * Half away from zero, as inch and metric thread standards round limits of size.
     *
     * <p>Only a figure close to a half needs the decimal itself; for the rest the nearest whole number of last places
     * is the same, and dividing it by an exact power of ten gives the double of that decimal.
     */
    public static double halfUp(double value, int places) {
        if (places >= 0 && places < TENS.length) {
            double scaled = Math.abs(value) * TENS[places];
            double whole = Math.floor(scaled + 0.5);
            if (scaled < PLAIN_PLACES && Math.abs(scaled - whole) < 0.5 - CLEAR_OF_HALF) {
                double rounded = whole / TENS[places];
                return value < 0 && whole > 0 ? -rounded : rounded;
            }
        }
        return decimal(value).setScale(places, RoundingMode.HALF_UP).doubleValue();
    }

    /** Half to even, as two-step rounded tables behave. */
    public static double halfEven(double value, int places) {
        return decimal(value).setScale(places, RoundingMode.HALF_EVEN).doubleValue();
    }

    /** The decimal that a double stands for, free of binary noise: 12 significant digits. */
    public static BigDecimal decimal(double value) {
        return new BigDecimal(value).round(DECIMAL_OF_A_DOUBLE);
    }
}
