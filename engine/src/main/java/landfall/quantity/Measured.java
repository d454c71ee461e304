// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

/** A measured length with its expanded uncertainty (95 %), so that a verdict cannot forget it. */
public record Measured(Length value, Length uncertainty) {
    public Measured {
        if (uncertainty.mm() < 0) {
            throw new IllegalArgumentException("uncertainty is negative: " + uncertainty.mm() + " mm");
        }
    }
}
