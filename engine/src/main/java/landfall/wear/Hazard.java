// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import landfall.cut.WearFactor;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * How the danger of breaking grows with wear: as the fourth power of the torque, an estimate. Summed from a fresh edge
 * and counted in runs to due, so that a run from sharp to the usual wear limit counts 1.
 */
public final class Hazard {
    private static final Source NOTE = Source.of("derived", "docs/methods/wear-law.md");
    private static final double POWER = 4;
    private static final double WHOLE = sum(1);

    private Hazard() {}

    /** @param share wear land over the one at which a tap of this size is due */
    public static double at(double share) {
        return share <= 0 ? 0 : sum(share) / WHOLE;
    }

    /** The formula of {@link #at} for a share of wear. */
    public static Rule rule(String symbol, String share, String means) {
        String formula = "if(%1$s <= 1, ((1 + 0.5*%1$s)^5 - 1)/2.5, (1.5^5 - 1)/2.5 + ((2*%1$s - 0.5)^5 - 1.5^5)/10)"
                        .formatted(share)
                + "/((1.5^5 - 1)/2.5)";
        return new Rule(symbol, formula, "1", NOTE, Trust.ESTIMATE, means);
    }

    /** Integral of the fourth power of the factor of wear; its slope is 1/2 to due and 2 beyond. */
    private static double sum(double share) {
        double power = POWER + 1;
        if (share <= 1) {
            return (Math.pow(WearFactor.at(share), power) - 1) / (power * 0.5);
        }
        double due = Math.pow(WearFactor.at(1), power);
        return (due - 1) / (power * 0.5) + (Math.pow(WearFactor.at(share), power) - due) / (power * 2);
    }
}
