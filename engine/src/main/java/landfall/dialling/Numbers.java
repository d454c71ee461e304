// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.math.BigDecimal;
import java.math.MathContext;
import landfall.quantity.Length;

/** Figures inside the sentences of this package: four significant digits, both units of length. */
final class Numbers {
    private static final MathContext FOUR_DIGITS = new MathContext(4);

    private Numbers() {}

    static String plain(double value) {
        return BigDecimal.valueOf(value).round(FOUR_DIGITS).stripTrailingZeros().toPlainString();
    }

    /** To a tenth of a micrometre and to a hundredth of a thou: finer than any dial in the shop. */
    static String both(Length length) {
        return "%.4f mm (%.5f in)".formatted(length.mm(), length.inch());
    }
}
