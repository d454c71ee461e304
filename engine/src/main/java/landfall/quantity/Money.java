// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

import java.util.Locale;

/**
 * Money that was computed, a loss below 0; the program converts no currency.
 *
 * @param currency as the shop writes it; empty when it was not told
 */
public record Money(double amount, String currency) {
    public Money {
        if (!Double.isFinite(amount)) {
            throw new IllegalArgumentException("money is not a finite number: " + amount);
        }
    }

    public static Money of(double amount, String currency) {
        return new Money(amount, currency);
    }

    /** As a refusal says it: {@code 18.50 EUR}. */
    public String words() {
        return String.format(Locale.ROOT, "%.2f %s", amount, currency).strip();
    }
}
