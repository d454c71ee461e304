// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.grind.Place;
import landfall.quantity.Angle;
import org.jspecify.annotations.Nullable;

/**
 * Run-out of the chamfer against the tap's own thread or shank, dialled in the same chucking.
 *
 * <p>A dial square to the chamfer sees cos(chamfer angle) of a radial run-out, so that share of the reference is taken
 * off, as a vector: {@code En = E - cos(kap) Er}, {@code Fn = F - cos(kap) Fr}. The variances add; the degrees of
 * freedom of the sum are by Welch and Satterthwaite.
 *
 * @param reference run-out of the reference, radially
 * @param net what is left, in the direction of the dial
 */
public record Against(RunOut reference, RunOut net) {

    static Against of(Solution found, Solution reference, double share) {
        double[] vector = DialFit.vector(found);
        double[][] covariance = DialFit.covariance(found);
        double[] other = DialFit.vector(reference);
        double[][] itsCovariance = DialFit.covariance(reference);
        double own = covariance[0][0] + covariance[1][1];
        double theirs = share * share * (itsCovariance[0][0] + itsCovariance[1][1]);
        for (int i = 0; i < 2; i++) {
            vector[i] -= share * other[i];
            for (int j = 0; j < 2; j++) {
                covariance[i][j] += share * share * itsCovariance[i][j];
            }
        }
        Spread both = combined(own, found.spread, theirs, reference.spread);
        return new Against(DialFit.runOut(reference), RunOut.of(vector, covariance, both));
    }

    /** Spread of a sum of two independent figures of variances u and v. */
    static Spread combined(double u, Spread ofU, double v, Spread ofV) {
        double freedom = (u + v) * (u + v) / (u * u / ofU.freedom() + v * v / ofV.freedom());
        return new Spread(ofU.sigma(), freedom);
    }

    /** The share of a radial run-out that a dial sees in a place. */
    static double share(Place place, Angle chamfer) {
        return isOnChamfer(place) ? Math.cos(chamfer.rad()) : 1;
    }

    static boolean isOnChamfer(@Nullable Place place) {
        return place == Place.CHAMFER_STILL || place == Place.CHAMFER_WORKING;
    }
}
