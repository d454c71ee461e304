// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.quantity.Length;

/**
 * A fitted length, or a length per radian where the name says slope.
 *
 * @param value best figure
 * @param standard one standard deviation
 * @param uncertainty expanded, 95 %, by Student's t
 */
public record Fitted(Length value, Length standard, Length uncertainty) {
    static Fitted ofMm(double value, double standard, double factor) {
        return new Fitted(Length.ofMm(value), Length.ofMm(standard), Length.ofMm(standard * factor));
    }

    /** Whether nothing, zero, lies outside the uncertainty. */
    public boolean differsFromZero() {
        return Math.abs(value.mm()) > uncertainty.mm();
    }

    public Fitted times(double factor) {
        return new Fitted(value.times(factor), standard.times(Math.abs(factor)), uncertainty.times(Math.abs(factor)));
    }
}
