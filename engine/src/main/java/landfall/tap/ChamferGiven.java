// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * The chamfer as it was measured: two of angle, point diameter and threads; the third follows from tan κ = (d −
 * d_p)/(2·n·P), with d the basic major diameter.
 */
public record ChamferGiven(
        @Nullable Angle angle,
        @Nullable Length pointDiameter,
        @Nullable Double threads) {
    static final Source GEOMETRY = Source.of("derived", "docs/methods/chamfer-relief.md");
    static final Rule MAJOR = Rule.given("d", "mm", "basic major diameter");
    static final Rule PITCH = Rule.given("P", "mm", "pitch");
    static final Rule ANGLE = Rule.given("κ", "deg", "chamfer angle to the axis");
    static final Rule POINT = Rule.given("d_p", "mm", "diameter at the point");
    static final Rule THREADS = Rule.given("n_c", "1", "threads in the chamfer");
    static final Rule ANGLE_FROM =
            new Rule("κ", "atan((d - d_p)/(2*n_c*P))", "deg", GEOMETRY, Trust.DERIVED, "chamfer angle to the axis");
    static final Rule POINT_FROM =
            new Rule("d_p", "d - 2*n_c*P*tan(κ)", "mm", GEOMETRY, Trust.DERIVED, "diameter at the point");
    static final Rule THREADS_FROM =
            new Rule("n_c", "(d - d_p)/(2*P*tan(κ))", "1", GEOMETRY, Trust.DERIVED, "threads in the chamfer");

    /** How far a third figure may part from the other two. */
    private static final double AGREEMENT = 0.01;

    private static final double GREATEST_DEG = 45;

    /** The chamfer on a thread. */
    public Chamfer resolve(ScrewThread thread, Pen pen) {
        double d = pen.write(MAJOR, thread.major().mm());
        double P = pen.write(PITCH, thread.pitch().mm());
        Chamfer chamfer = angle == null ? fromPointAndThreads(d, P, pen) : withAngle(angle, d, P, pen);
        judge(chamfer, d);
        return chamfer;
    }

    private Chamfer fromPointAndThreads(double d, double P, Pen pen) {
        if (pointDiameter == null || threads == null) {
            throw tooFew("measure the chamfer's angle and the diameter at the point");
        }
        double d_p = pen.write(POINT, pointDiameter.mm());
        double n_c = pen.write(THREADS, threads);
        double kappa = pen.write(ANGLE_FROM, Math.toDegrees(Math.atan((d - d_p) / (2 * n_c * P))));
        return new Chamfer(Angle.ofDeg(kappa), pointDiameter, n_c);
    }

    private Chamfer withAngle(Angle angle, double d, double P, Pen pen) {
        double kappa = pen.write(ANGLE, angle.deg());
        double slope = Math.tan(angle.rad());
        if (pointDiameter != null) {
            double d_p = pen.write(POINT, pointDiameter.mm());
            double n_c = pen.write(THREADS_FROM, (d - d_p) / (2 * P * slope));
            if (threads != null && Math.abs(threads / n_c - 1) > AGREEMENT) {
                throw new OutOfRange(
                        "chamfer.threads",
                        threads.toString(),
                        "%.2f, as angle and point diameter make it (within 1 %%)".formatted(n_c),
                        "leave one of the three out");
            }
            return new Chamfer(Angle.ofDeg(kappa), pointDiameter, n_c);
        }
        if (threads == null) {
            throw tooFew("measure the diameter at the point, or count the threads of the chamfer");
        }
        double n_c = pen.write(THREADS, threads);
        double d_p = pen.write(POINT_FROM, d - 2 * n_c * P * slope);
        return new Chamfer(Angle.ofDeg(kappa), Length.ofMm(d_p), n_c);
    }

    private static OutOfRange tooFew(String mend) {
        return new OutOfRange("chamfer", "fewer than two figures", "two of angle, pointDiameter and threads", mend);
    }

    private static void judge(Chamfer chamfer, double d) {
        double kappa = chamfer.angle().deg();
        if (!(kappa >= 1 && kappa <= GREATEST_DEG)) {
            throw new OutOfRange(
                    "chamfer.angle",
                    "%.3f deg".formatted(kappa),
                    "from 1 to 45 deg, measured to the axis",
                    "give the angle of one side, not the included angle; the point must be smaller than the thread");
        }
        double d_p = chamfer.pointDiameter().mm();
        if (!(d_p > 0 && d_p < d)) {
            throw new OutOfRange(
                    "chamfer.pointDiameter",
                    Length.ofMm(d_p).words(),
                    "over 0 and under the basic major diameter, "
                            + Length.ofMm(d).words(),
                    "measure across the lands at the very point, and count the chamfer's threads again");
        }
    }
}
