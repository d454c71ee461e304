// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.function.DoubleUnaryOperator;

/**
 * A grinding wheel moved point by point, for tests: a cylinder whose axis lies along the chamfer line, fixed; the tap
 * is turned in steps and moved by its cam. Lengths in mm, angles in radians unless named.
 */
final class BruteWheel {
    private static final double STEP = Math.toRadians(0.02);

    private final double r0;
    private final double kappa;
    private final double wheelRadius;
    private final DoubleUnaryOperator axial;
    private final DoubleUnaryOperator radial;

    /** @param axial move towards the point by spindle angle, {@code radial} move towards the wheel by spindle angle */
    BruteWheel(double r0, double kappa, double wheelRadius, DoubleUnaryOperator axial, DoubleUnaryOperator radial) {
        this.r0 = r0;
        this.kappa = kappa;
        this.wheelRadius = wheelRadius;
        this.axial = axial;
        this.radial = radial;
    }

    /** Radial metal missing at land angle theta against land angle 0 at the same z, over a turn from..to degrees. */
    double fall(double z, double theta, double fromDeg, double toDeg) {
        return surface(z, 0, fromDeg, toDeg)[0] - surface(z, theta, fromDeg, toDeg)[0];
    }

    /** Radial metal missing at land angle theta below the chamfer line with the cam at rest. */
    double below(double z, double theta, double fromDeg, double toDeg) {
        return r0 + z * Math.tan(kappa) - surface(z, theta, fromDeg, toDeg)[0];
    }

    /** Spindle angle at which land angle theta is ground to its last. */
    double contact(double z, double theta, double fromDeg, double toDeg) {
        return surface(z, theta, fromDeg, toDeg)[1];
    }

    private double[] surface(double z, double theta, double fromDeg, double toDeg) {
        double least = Double.POSITIVE_INFINITY;
        double at = 0;
        for (double phi = Math.toRadians(fromDeg); phi <= Math.toRadians(toDeg); phi += STEP) {
            double radius = left(z, theta, phi);
            if (radius < least) {
                least = radius;
                at = phi;
            }
        }
        return new double[] {least, at};
    }

    /** Radius at which the ray of (z, theta) enters the wheel when the spindle stands at phi. */
    private double left(double z, double theta, double phi) {
        double ux = Math.sin(kappa);
        double uz = Math.cos(kappa);
        // the wheel's axis passes through the chamfer line's foot, one wheel radius out along the normal
        double px = r0 + wheelRadius * Math.cos(kappa);
        double pz = -wheelRadius * Math.sin(kappa);
        double b = radial.applyAsDouble(phi);
        double a = axial.applyAsDouble(phi);
        double psi = theta - phi;
        double cx = Math.cos(psi);
        // point = (b + R cx, R sin psi, z - a) relative to the axis foot: base + R * dir
        double bx = b - px;
        double bz = z - a - pz;
        double along0 = bx * ux + bz * uz;
        double along1 = cx * ux;
        double qa = 1 - along1 * along1;
        double qb = 2 * (bx * cx - along0 * along1);
        double qc = bx * bx + bz * bz - along0 * along0 - wheelRadius * wheelRadius;
        double root = qb * qb - 4 * qa * qc;
        if (root < 0 || cx <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double radius = (-qb - Math.sqrt(root)) / (2 * qa);
        return radius > 0 ? radius : Double.POSITIVE_INFINITY;
    }

    /** A plate cam with straight rise and return, in the plane square to the axis, lobe after lobe. */
    static Lobes transverse(double r, double wheelRadius, int lobes, double riseDeg, double backDeg, double perRadian) {
        double pitch = 2 * Math.PI / lobes;
        double rise = Math.toRadians(riseDeg);
        double back = Math.toRadians(backDeg);
        DoubleUnaryOperator cam = phi -> {
            double turn = phi - Math.floor(phi / pitch) * pitch;
            if (turn <= rise) {
                return perRadian * turn;
            }
            return turn <= rise + back ? perRadian * rise * (1 - (turn - rise) / back) : 0;
        };
        return new Lobes(new BruteWheel(r, 0, wheelRadius, phi -> 0, cam), r);
    }

    record Lobes(BruteWheel wheel, double r) {
        /**
         * How far the next edge is cut below the depth that its own lobe gives it: its own lobe starts with it on the
         * centre line and lowers it a little; what is below that is the last lobe's work.
         */
        double cutOfNextEdge() {
            double own = wheel.surface(0, 0, -0.001, 40)[0];
            double all = wheel.surface(0, 0, -80, 40)[0];
            return own - all;
        }
    }
}
