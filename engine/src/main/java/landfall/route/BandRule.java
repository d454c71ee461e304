// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import landfall.quantity.Band;
import landfall.working.Pen;
import landfall.working.Rule;

/**
 * The printed lines of a band. Made of one line in which {@code ~} stands after each symbol that has two ends: it
 * becomes {@code _l} in the low line, {@code _h} in the high one, and nothing in the one between.
 */
public record BandRule(Rule low, Rule expected, Rule high) {
    private static final String END = "~";

    static BandRule of(Rule line) {
        return new BandRule(end(line, "_l", ", low"), end(line, "", ""), end(line, "_h", ", high"));
    }

    private static Rule end(Rule line, String mark, String means) {
        return new Rule(
                line.symbol().replace(END, mark),
                line.formula().replace(END, mark),
                line.unit(),
                line.source(),
                line.trust(),
                line.means() + means);
    }

    Band write(Band value, Pen pen) {
        return new Band(
                pen.write(low, value.low()), pen.write(expected, value.expected()), pen.write(high, value.high()));
    }
}
