// SPDX-License-Identifier: Apache-2.0
package landfall.timing;

import landfall.cards.ask.GrindTrial;
import landfall.grind.GrindSetup;

/**
 * A grinding wheel moved point by point: a cylinder in space along the chamfer line, spindle steps of a fiftieth of a
 * degree, a straight cam on the radial slide. Knows no plane section and no slopes.
 */
final class Brute {
    private static final double STEP = Math.toRadians(0.02);

    private final double[] starts;
    private final double rise;
    private final double riseAngle;
    private final double returnAngle;
    private final double kappa;
    private final double point;
    private final double wheel;

    Brute(GrindTrial trial) {
        GrindSetup setup = trial.setup();
        var lobe = setup.fixture().cam().lobe();
        this.starts = starts(trial);
        this.rise = setup.motion().setting().rises().radial().mm();
        this.riseAngle = lobe.riseAngle().rad();
        this.returnAngle = lobe.returnAngle().rad();
        this.kappa = setup.motion().setting().swivel().rad();
        this.point = setup.tap().chamfer().pointDiameter().mm() / 2;
        this.wheel = setup.fixture().wheel().radius().mm();
    }

    /** Spindle angles at which the lobes begin to rise, radians. */
    static double[] starts(GrindTrial trial) {
        var index = trial.errors().index();
        double[] starts = new double[4];
        for (int i = 0; i < starts.length; i++) {
            starts[i] = i * Math.PI / 2
                    + trial.setup().fixture().cam().lobe().riseStart().rad()
                    + (index.isEmpty() ? 0 : index.get(i).rad());
        }
        return starts;
    }

    private double moved(double phi) {
        double most = 0;
        for (double start : starts) {
            double turn = phi - start - 2 * Math.PI * Math.floor((phi - start) / (2 * Math.PI));
            if (turn <= riseAngle) {
                most = Math.max(most, turn / riseAngle);
            } else if (turn < riseAngle + returnAngle) {
                most = Math.max(most, 1 - (turn - riseAngle) / returnAngle);
            }
        }
        return most * rise;
    }

    /** Radius left at an angle round the tap, radians, and a height over the point, mm. */
    double radius(double theta, double z) {
        double least = Double.POSITIVE_INFINITY;
        for (double phi = theta - 1.2; phi <= theta + 1.2; phi += STEP) {
            least = Math.min(least, left(theta - phi, z, moved(phi)));
        }
        return least;
    }

    private double left(double psi, double z, double moved) {
        double ux = Math.sin(kappa);
        double uz = Math.cos(kappa);
        double bx = moved - point - wheel * Math.cos(kappa);
        double bz = z + wheel * Math.sin(kappa);
        double cx = Math.cos(psi);
        double along0 = bx * ux + bz * uz;
        double along1 = cx * ux;
        double qa = 1 - along1 * along1;
        double qb = 2 * (bx * cx - along0 * along1);
        double qc = bx * bx + bz * bz - along0 * along0 - wheel * wheel;
        double root = qb * qb - 4 * qa * qc;
        return root < 0 || cx <= 0 ? Double.POSITIVE_INFINITY : (-qb - Math.sqrt(root)) / (2 * qa);
    }
}
