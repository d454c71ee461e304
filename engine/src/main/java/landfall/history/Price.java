// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import java.math.BigDecimal;

/**
 * Money paid, in whatever the shop pays in; the program converts none.
 *
 * @param currency as the shop writes it, such as EUR; empty when it was not told
 */
public record Price(BigDecimal amount, String currency) {
    public Price {
        if (amount.signum() < 0) {
            throw new IllegalArgumentException("a price is not negative: " + amount);
        }
    }
}
