// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import landfall.quantity.Band;

/** Minutes, with the lines that they are printed by. */
public record Timed(Band minutes, BandRule rule) {
    /** The symbol of the middle line, with the sign of its ends: for a sum. */
    String symbol() {
        return rule.expected().symbol() + "~";
    }
}
