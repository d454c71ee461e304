// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import landfall.grind.ChamferRelief;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.Chamfer;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import landfall.thread.Profile;
import landfall.working.Pen;
import org.jspecify.annotations.Nullable;

/**
 * The surface of a tap's lands: thread, thread relief, back taper and chamfer, mm and radians.
 *
 * <p>Radius at height z, land angle θ, land i: the lesser of the thread's and the chamfer's. The thread's is that of
 * its profile at u = z − L·φ/2π, less the thread relief and half the back taper to that height.
 */
final class TapSurface {
    private static final double OVER_FLOOR = 0.02;

    final double major;
    final double root;
    final double pitch;
    final double lead;
    final int starts;
    final double division;
    final int lands;
    final double landAngle;
    /** Lag of the edges by height, rad/mm. */
    final double twist;

    final double length;
    final double chamferLength;
    final double tangent;
    private final double point;
    /** Least radius of a land: a relief that falls into the floor of the flute ends just over it. */
    private final double floor;

    private final double crestHalf;
    private final double flank;
    private final double taper;
    private final double reliefSlope;
    private final double margin;
    private final ChamferForm chamfer;

    TapSurface(Tap tap, double coreRadius, double length, ChamferForm chamfer) {
        var thread = tap.thread();
        Profile profile = thread.profile();
        Chamfer cone = tap.chamfer();
        major = thread.major().mm() / 2;
        root = thread.minorDiameter().mm() / 2;
        pitch = thread.pitch().mm();
        lead = thread.lead().perTurn().mm();
        starts = thread.lead().starts();
        lands = tap.flutes().count();
        division = tap.flutes().division().rad();
        landAngle = tap.landAngle().rad();
        twist = tap.flutes().kind().isSpiral()
                ? 2
                        * Math.PI
                        / ChamferRelief.fluteLead(thread, tap.flutes(), Pen.NONE)
                                .mm()
                : 0;
        this.length = length;
        floor = coreRadius + OVER_FLOOR * (root - coreRadius);
        chamferLength = cone.threads() * pitch;
        tangent = Math.tan(cone.angle().rad());
        point = cone.pointDiameter().mm() / 2;
        flank = Math.tan(profile.flankAngle().rad());
        crestHalf = pitch * profile.crestFlat() / 2 + oversize(tap) * flank / 2;
        Double back = tap.body().backTaper();
        taper = back == null ? 0 : back / 2;
        ThreadRelief relief = tap.cutting().relief();
        boolean relieved = relief.kind() != ThreadRelief.Kind.CONCENTRIC;
        reliefSlope = relieved ? major * Math.tan(relief.slope().rad()) : 0;
        margin = relief.margin().rad();
        this.chamfer = chamfer;
    }

    /** What the tap's pitch diameter has over the basic one: the middle of its limits, when it has any. */
    private static double oversize(Tap tap) {
        @Nullable Limits limit = tap.pitch().limit();
        if (limit == null || limit.min() == null || limit.max() == null) {
            return 0;
        }
        double middle = (limit.min().mm() + limit.max().mm()) / 2;
        return middle - tap.thread().pitchDiameter().mm();
    }

    /** Angle about the axis of a place at land angle theta. */
    double round(int land, double theta, double z) {
        return land * division + theta + twist * z;
    }

    /** u of a place: where on the thread's axial profile it lies. */
    double u(double z, double round) {
        return z - lead * round / (2 * Math.PI);
    }

    /** Height of the place of land angle theta on a row u. */
    double height(double u, int land, double theta) {
        double turn = lead / (2 * Math.PI);
        return (u + turn * (land * division + theta)) / (1 - turn * twist);
    }

    /** What thread relief and back taper take off the radius. */
    double lowered(double theta, double z) {
        return reliefSlope * Math.max(0, theta - margin) + taper * z;
    }

    /** Half the axial width of a tooth where its profile, not lowered, has a radius. */
    double half(double radius) {
        return crestHalf + (major - radius) * flank;
    }

    double chamfer(int land, double theta, double z) {
        return chamfer.radius(Length.ofMm(point + z * tangent), land, Angle.ofRad(theta), Length.ofMm(z))
                .mm();
    }

    private double profile(double u) {
        double off = Math.abs(u - pitch * Math.rint(u / pitch));
        return Math.min(major, Math.max(root, major - (off - crestHalf) / flank));
    }

    /** Radius of the surface; the profile comes round whole pitches higher, so that any turn's land will do. */
    double radius(int land, double theta, double z) {
        double thread = profile(u(z, round(land, theta, z))) - lowered(theta, z);
        return Math.max(floor, Math.min(thread, chamfer(land, theta, z)));
    }

    /** Steps over a land so small that the chamfer's end crosses half a crest at most in one. */
    int acrossCrests(Length perRadian) {
        return (int) Math.ceil(perRadian.mm() * landAngle / (tangent * crestHalf));
    }

    /** Radius under the thread: of its root or of the chamfer, whichever lies lower; it has no steps along the axis. */
    double under(int land, double theta, double z) {
        return Math.max(floor, Math.min(root - lowered(theta, z), chamfer(land, theta, z)));
    }
}
