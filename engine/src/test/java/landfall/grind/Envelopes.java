// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.function.DoubleUnaryOperator;
import landfall.quantity.Angle;
import landfall.quantity.Limits;
import landfall.tap.ChamferGiven;
import landfall.tap.FluteForm;
import landfall.tap.FluteKind;
import landfall.tap.Flutes;
import landfall.thread.CallOut;
import landfall.thread.ScrewThread;

/** Set-ups and brute-force wheels for the tests of the numerical grind. */
public final class Envelopes {
    private Envelopes() {}

    /** A call-out with this thread and nothing else. */
    public static CallOut bare(ScrewThread thread) {
        return new Bench.Bare(thread);
    }

    /** M10 plug, chamfer 9 deg, 6 deg working, on a straight cam. */
    public static GrindSetup m10(int flutes, double land, double rise, double back) {
        return Bench.setup(Bench.m10Plug(flutes, land), Bench.fixture(Bench.cam(flutes, rise, back)), Bench.working(6));
    }

    /** M10 with spiral flutes of 35 deg the way the thread runs, on a cam that reaches the lag of the edge. */
    public static GrindSetup m10Spiral() {
        var flutes = new Flutes(3, FluteKind.SPIRAL_RIGHT, FluteForm.UNKNOWN, Angle.ofDeg(35));
        var chamfer = new ChamferGiven(Angle.ofDeg(17), null, 2.0);
        return Bench.setup(
                Bench.tap(Bench.M10, flutes, Angle.ofDeg(40), chamfer),
                Bench.fixture(new Cam(
                        3,
                        new CamCurve.Straight(),
                        new Lobe(Angle.ofDeg(-20), Angle.ofDeg(85), Angle.ofDeg(30)),
                        Limits.ofMm(0, 8),
                        Limits.ofMm(0, 2))),
                Bench.working(6));
    }

    /** M10 plug on a fixture whose radial slide is short, so that both slides work. */
    public static GrindSetup m10Both() {
        var cam = new Cam(
                4,
                new CamCurve.Straight(),
                new Lobe(Angle.ofDeg(-4), Angle.ofDeg(58), Angle.ofDeg(20)),
                Limits.ofMm(0, 8),
                Limits.ofMm(0, 0.2));
        return Bench.setup(Bench.m10Plug(4, 40), Bench.fixture(cam), Bench.working(7));
    }

    /** Radius left at height z and azimuth theta by a wheel moved point by point; moves by spindle angle, mm. */
    public static double radius(GrindSetup setup, DoubleUnaryOperator share, double z, double theta) {
        var rises = setup.motion().setting().rises();
        double kappa = setup.motion().setting().swivel().rad();
        double length =
                setup.tap().chamfer().threads() * setup.tap().thread().pitch().mm();
        double middle = setup.shape().midRadius().mm();
        double foot = middle - length / 2 * Math.tan(kappa);
        var brute = new BruteWheel(
                foot,
                kappa,
                setup.fixture().wheel().radius().mm(),
                phi -> share.applyAsDouble(phi) * rises.axial().mm(),
                phi -> share.applyAsDouble(phi) * rises.radial().mm());
        double deg = Math.toDegrees(theta);
        return foot + z * Math.tan(kappa) - brute.below(z, theta, deg - 75, deg + 75);
    }

    /** Radius left at land angle theta, rad, by a wheel moved point by point. */
    public static double radius(double r, double kappa, double wheel, DoubleUnaryOperator radial, double theta) {
        var brute = new BruteWheel(r, kappa, wheel, phi -> 0, radial);
        double deg = Math.toDegrees(theta);
        return r - brute.below(0, theta, deg - 60, deg + 60);
    }
}
