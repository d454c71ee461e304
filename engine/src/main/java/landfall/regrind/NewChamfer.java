// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Chamfer;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * A plug tap made into a bottoming tap: a steeper chamfer with the same large end and the same point diameter.
 *
 * <p>The new cone lies inside the old one, so there is metal for it everywhere; the end is cut back to the new point.
 * No full thread is lost. The chip grows as the sine of the chamfer angle: check the tap's strength with it.
 *
 * @param angle of the new chamfer
 * @param cut to take off the end
 * @param chipRatio new chip over old
 */
public record NewChamfer(Angle angle, Length cut, double chipRatio) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/regrind.md");
    static final Rule MAJOR = Rule.given("d", "mm", "basic major diameter");
    static final Rule PITCH = Rule.given("P", "mm", "pitch");
    static final Rule POINT = Rule.given("d_p", "mm", "diameter at the point");
    static final Rule OLD = Rule.given("n_c", "1", "threads in the old chamfer");
    static final Rule OLD_ANGLE = Rule.given("κ", "deg", "old chamfer angle to the axis");
    static final Rule THREADS = Rule.given("n_b", "1", "threads in the new chamfer");
    static final Rule ANGLE = new Rule(
            "κ_b", "atan((d - d_p)/(2*n_b*P))", "deg", GEOMETRY, Trust.DERIVED, "new chamfer angle to the axis");
    static final Rule CUT =
            new Rule("s_b", "(n_c - n_b)*P", "mm", GEOMETRY, Trust.DERIVED, "length to cut off the end");
    static final Rule RATIO =
            new Rule("h_b", "sin(κ_b)/sin(κ)", "1", GEOMETRY, Trust.DERIVED, "new chip thickness over the old");

    /** The chamfer with fewer threads that the tap can be given. */
    public static NewChamfer of(Tap tap, double threads, Pen pen) {
        Chamfer old = tap.chamfer();
        if (!(threads >= 1 && threads < old.threads())) {
            throw new OutOfRange(
                    "threads of the new chamfer",
                    Double.toString(threads),
                    "from 1 to under the %.2f it has".formatted(old.threads()),
                    "1 to 2 make a bottoming tap; a longer chamfer is ground by setting the swivel flatter");
        }
        double d = pen.write(MAJOR, tap.thread().major().mm());
        double P = pen.write(PITCH, tap.thread().pitch().mm());
        double d_p = pen.write(POINT, old.pointDiameter().mm());
        double n_c = pen.write(OLD, old.threads());
        double kappa = pen.write(OLD_ANGLE, old.angle().deg());
        double n_b = pen.write(THREADS, threads);
        double kappa_b = pen.write(ANGLE, Math.toDegrees(Math.atan((d - d_p) / (2 * n_b * P))));
        double cut = pen.write(CUT, (n_c - n_b) * P);
        double ratio = pen.write(RATIO, Math.sin(Math.toRadians(kappa_b)) / Math.sin(Math.toRadians(kappa)));
        return new NewChamfer(Angle.ofDeg(kappa_b), Length.ofMm(cut), ratio);
    }
}
