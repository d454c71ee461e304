// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.function.DoubleUnaryOperator;

/** Set-ups and brute-force wheels for the tests of the numerical grind. */
public final class Envelopes {
    private Envelopes() {}

    /** M10 plug, chamfer 9 deg, 6 deg working, on a straight cam. */
    public static GrindSetup m10(int flutes, double land, double rise, double back) {
        return Bench.setup(Bench.m10Plug(flutes, land), Bench.fixture(Bench.cam(flutes, rise, back)), Bench.working(6));
    }

    /** Radius left at land angle theta, rad, by a wheel moved point by point. */
    public static double radius(double r, double kappa, double wheel, DoubleUnaryOperator radial, double theta) {
        var brute = new BruteWheel(r, kappa, wheel, phi -> 0, radial);
        double deg = Math.toDegrees(theta);
        return r - brute.below(0, theta, deg - 60, deg + 60);
    }
}
