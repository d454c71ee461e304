// SPDX-License-Identifier: Apache-2.0
package landfall.working;

/** One figure with the rule that made it. */
public record Step(Rule rule, double value) {
    public String symbol() {
        return rule.symbol();
    }
}
