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

    private Rounding() {}

    /** Half away from zero, as inch and metric thread standards round limits of size. */
    public static double halfUp(double value, int places) {
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
