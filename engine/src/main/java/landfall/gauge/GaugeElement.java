// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import landfall.quantity.Limits;

/** Limits of one thread gauge. A ring's major diameter is left open: it only clears. */
public record GaugeElement(Limits pitch, Limits major) {
    public static final Limits OPEN = new Limits(null, null);
}
