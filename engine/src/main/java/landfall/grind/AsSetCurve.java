// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.Arrays;
import landfall.quantity.Angle;
import landfall.tap.Tap;
import landfall.working.Pen;

/**
 * Working relief over what is set, for many settings of one set-up: the formulas of {@link AsSet} in the form that
 * takes fewest operations, with no call and no branch inside, so that the machine works on several settings at once.
 *
 * <p>With t = tan of the chamfer angle that comes out, the two arcs of {@code α_n − η} are one, for tan α_n = f'/(r·√(1
 * + t²)) and tan η = tan λ·t/√(1 + t²): α = atan((x − y)/(1 + x·y)). Swivels up to 45 deg and reliefs up to tan α =
 * 0.35 are taken by series; others by the functions of the platform. Both agree with {@link AsSet} to 1e-12.
 *
 * @param slope of the cam where the edge is ground, 1/rad
 * @param perFluteLead 2π over the flutes' lead, 1/mm; 0 on straight flutes
 * @param radius at the middle of the chamfer, mm
 * @param advance tangent of the lead angle there
 */
record AsSetCurve(double slope, double perFluteLead, double radius, double advance) {
    private static final double RAD = Math.PI / 180;
    private static final double DEG = 180 / Math.PI;
    private static final double GREATEST_SWIVEL = 45;
    private static final double GREATEST_TANGENT = 0.35;

    static AsSetCurve of(GrindSetup setup) {
        ChamferPlace place = setup.shape().place();
        Cam cam = setup.fixture().cam();
        Angle atEdge = Angle.ofDeg(Math.max(0, -cam.lobe().riseStart().deg()));
        double slope = cam.curve().slope(atEdge, cam.lobe().riseAngle());
        double radius = place.midRadius().mm();
        return new AsSetCurve(
                slope, perFluteLead(setup.tap()), radius, place.leadFelt().mm() / (2 * Math.PI * radius));
    }

    private static double perFluteLead(Tap tap) {
        return tap.flutes().kind().isSpiral()
                ? 2
                        * Math.PI
                        / ChamferRelief.fluteLead(tap.thread(), tap.flutes(), Pen.NONE)
                                .mm()
                : 0;
    }

    /** Working relief of one setting, deg; swivel in deg, rises in mm. */
    double at(double swivel, double axial, double radial) {
        double[] working = new double[1];
        working(new double[] {swivel}, new double[] {axial}, new double[] {radial}, working);
        return working[0];
    }

    /** The same on a tap whose middle of the chamfer lies further out by so much, mm. */
    AsSetCurve onRadius(double further) {
        return new AsSetCurve(slope, perFluteLead, radius + further, advance * radius / (radius + further));
    }

    /**
     * Working relief of many settings.
     *
     * @param swivel deg
     * @param axial rise over the lobe, mm
     * @param radial rise over the lobe, mm
     * @param working deg, filled
     */
    void working(double[] swivel, double[] axial, double[] radial, double[] working) {
        if (greatest(swivel) <= GREATEST_SWIVEL) {
            sines(swivel, working);
            tangents(swivel, working);
        } else {
            Arrays.setAll(working, k -> Math.tan(swivel[k] * RAD));
        }
        reduce(axial, radial, working);
        if (greatest(working) <= GREATEST_TANGENT) {
            arcs(working);
        } else {
            Arrays.setAll(working, k -> Math.atan(working[k]) * DEG);
        }
    }

    /** Not a number counts as greater than anything. */
    private static double greatest(double[] values) {
        double most = 0;
        for (double value : values) {
            most = Math.max(most, Math.abs(value));
        }
        return most;
    }

    private static void sines(double[] deg, double[] out) {
        for (int k = 0; k < out.length; k++) {
            double x = deg[k] * RAD;
            double q = x * x;
            double s = -1.0 / 1307674368000.0;
            s = s * q + 1.0 / 6227020800.0;
            s = s * q + -1.0 / 39916800.0;
            s = s * q + 1.0 / 362880.0;
            s = s * q + -1.0 / 5040.0;
            s = s * q + 1.0 / 120.0;
            s = s * q + -1.0 / 6.0;
            s = s * q + 1;
            out[k] = s * x;
        }
    }

    private static void tangents(double[] deg, double[] sines) {
        for (int k = 0; k < sines.length; k++) {
            double x = deg[k] * RAD;
            double q = x * x;
            double c = 1.0 / 20922789888000.0;
            c = c * q + -1.0 / 87178291200.0;
            c = c * q + 1.0 / 479001600.0;
            c = c * q + -1.0 / 3628800.0;
            c = c * q + 1.0 / 40320.0;
            c = c * q + -1.0 / 720.0;
            c = c * q + 1.0 / 24.0;
            c = c * q + -1.0 / 2.0;
            c = c * q + 1;
            sines[k] = sines[k] / c;
        }
    }

    /** From tangents of the swivel to tangents of the working relief. */
    private void reduce(double[] axial, double[] radial, double[] tangents) {
        for (int k = 0; k < tangents.length; k++) {
            double fall = slope * (axial[k] * tangents[k] + radial[k]);
            double t = tangents[k] - fall * perFluteLead;
            double cosine = 1 / Math.sqrt(1 + t * t);
            double ground = fall * cosine / radius;
            double loss = advance * t * cosine;
            tangents[k] = (ground - loss) / (1 + ground * loss);
        }
    }

    private static void arcs(double[] tangents) {
        for (int k = 0; k < tangents.length; k++) {
            double x = tangents[k];
            double q = x * x;
            double a = -1.0 / 35;
            a = a * q + 1.0 / 33;
            a = a * q + -1.0 / 31;
            a = a * q + 1.0 / 29;
            a = a * q + -1.0 / 27;
            a = a * q + 1.0 / 25;
            a = a * q + -1.0 / 23;
            a = a * q + 1.0 / 21;
            a = a * q + -1.0 / 19;
            a = a * q + 1.0 / 17;
            a = a * q + -1.0 / 15;
            a = a * q + 1.0 / 13;
            a = a * q + -1.0 / 11;
            a = a * q + 1.0 / 9;
            a = a * q + -1.0 / 7;
            a = a * q + 1.0 / 5;
            a = a * q + -1.0 / 3;
            a = a * q + 1;
            tangents[k] = a * x * DEG;
        }
    }
}
