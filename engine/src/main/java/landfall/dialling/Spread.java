// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import org.hipparchus.distribution.continuous.FDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How far one reading strays, and how well that is known.
 *
 * <p>sigma = max(resolution/sqrt 12, sqrt(SSR/(n - p))). Where the scatter is no more than rounding to the dial's
 * division explains, the spread is known and not estimated from a few readings: its degrees of freedom are infinite and
 * Student's factor is 1.960. Where the scatter is larger it is an estimate with n - p degrees of freedom. Taking t with
 * n - p in the first case as well covers 97 to 100 % instead of 95 where rounding is all there is (simulated, 3 to 20
 * spare readings); this rule covers 95 to 97 there and 94.5 to 96 wherever the hand shakes at all.
 *
 * @param sigma of one reading, mm
 * @param freedom degrees of freedom, infinite where the dial's division decides
 */
record Spread(double sigma, double freedom) {
    private static final double SHARE = 0.95;
    private static final double NORMAL = new NormalDistribution().inverseCumulativeProbability((1 + SHARE) / 2);

    static double ofRounding(double resolution) {
        return resolution / Math.sqrt(12);
    }

    static Spread of(double squares, int spare, double resolution) {
        double rounding = ofRounding(resolution);
        double scatter = spare > 0 ? Math.sqrt(squares / spare) : 0;
        return scatter > rounding ? new Spread(scatter, spare) : new Spread(rounding, Double.POSITIVE_INFINITY);
    }

    /** Student's t for 95 %, both sides. */
    double factor() {
        return Double.isInfinite(freedom) ? NORMAL : studentQuantile((1 + SHARE) / 2, freedom);
    }

    static double studentQuantile(double probability, double freedom) {
        return Double.isInfinite(freedom)
                ? new NormalDistribution().inverseCumulativeProbability(probability)
                : new TDistribution(freedom).inverseCumulativeProbability(probability);
    }

    /** The point of Fisher's F for a number of terms against this spread; chi squared over terms if it is known. */
    double fisher(int terms, double probability) {
        // F with 10^7 degrees of freedom below is chi squared over terms to seven digits
        double below = Double.isInfinite(freedom) ? 1e7 : freedom;
        return new FDistribution(terms, below).inverseCumulativeProbability(probability);
    }
}
