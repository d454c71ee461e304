// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import landfall.quantity.Band;
import org.hipparchus.distribution.continuous.GammaDistribution;

/**
 * Broken taps for each run from sharp to due: a Gamma law, which practice starts and every run moves.
 *
 * @param shape broken taps, practice's own among them
 * @param rate runs, practice's own among them
 */
record Breakage(double shape, double rate) {
    private static final double TENTH = 0.1;

    static Breakage of(Prior.Breaks prior, int broken, double runs) {
        return new Breakage(prior.worth() + broken, prior.worth() / prior.perRun() + runs);
    }

    double perRun() {
        return shape / rate;
    }

    /** Eight in ten inside. */
    Band band() {
        GammaDistribution law = new GammaDistribution(shape, 1 / rate);
        double low = law.inverseCumulativeProbability(TENTH);
        double high = law.inverseCumulativeProbability(1 - TENTH);
        return new Band(low, perRun(), high);
    }

    /** Chance of coming through so much of a run, all that is known of the danger weighed. */
    double survival(double runs) {
        return Math.pow(rate / (rate + runs), shape);
    }
}
