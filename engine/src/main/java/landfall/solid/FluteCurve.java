// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.FluteArc;
import landfall.tap.FluteForm;
import landfall.tap.Tap;

/**
 * The outline of one flute square to the axis, from the heel of the land before it to the face behind it, by a running
 * length s in mm; both ends run on outwards as far as anybody asks. The edge of the land behind it lies at φ = 0.
 *
 * <p>With a rake: tangent to the heel (s under 0), arc (0 to its length), straight face (beyond). Without: one arc.
 */
final class FluteCurve {
    private final double cx;
    private final double cy;
    private final double rho;
    /** Direction from the arc's centre where s = 0, and the length of the arc; φ grows with s along the floor. */
    private final double from;

    private final double arc;
    private final boolean straights;

    /** Centre and radius of the arc, mm. */
    private record Circle(double cx, double cy, double rho) {}

    private FluteCurve(Circle circle, double from, double arc, boolean straights) {
        this.cx = circle.cx;
        this.cy = circle.cy;
        this.rho = circle.rho;
        this.from = from;
        this.arc = arc;
        this.straights = straights;
    }

    /** The flute of a tap whose core and flute radius are known. */
    static FluteCurve of(Tap tap, double coreRadius, double rho) {
        FluteForm form = tap.flutes().form();
        double R = tap.thread().major().mm() / 2;
        double heel = tap.flutes().division().rad() - tap.landAngle().rad();
        Angle rake = form.rake();
        if (rake == null) {
            double centre = coreRadius + rho;
            double edge = Math.acos((R * R + centre * centre - rho * rho) / (2 * R * centre));
            double inwards = Math.PI - edge;
            // the floor's middle lies half a flute before the edge
            return new FluteCurve(
                    new Circle(centre * Math.cos(edge), -centre * Math.sin(edge), rho),
                    inwards - Math.PI,
                    2 * Math.PI * rho,
                    false);
        }
        var bed = new FluteArc.Bed(Length.ofMm(coreRadius), Length.ofMm(rho));
        FluteArc of = FluteArc.behindFace(Length.ofMm(R), rake, bed, Angle.ofRad(heel));
        // FluteArc counts forwards from the edge; here angles count back, so y and directions change their sign
        return new FluteCurve(
                new Circle(of.cx().mm(), -of.cy().mm(), rho),
                -of.end().rad(),
                of.sweep().rad() * rho,
                true);
    }

    /** Place at s: x and y about the axis. */
    double[] at(double s) {
        if (straights && s < 0) {
            return along(from, s);
        }
        if (straights && s > arc) {
            return along(direction(arc), s - arc);
        }
        double angle = direction(s);
        return new double[] {cx + rho * Math.cos(angle), cy + rho * Math.sin(angle)};
    }

    private double direction(double s) {
        return from - s / rho;
    }

    /** On the tangent of the arc where its radius has a direction; the arc runs clockwise as s grows. */
    private double[] along(double angle, double far) {
        double x = cx + rho * Math.cos(angle);
        double y = cy + rho * Math.sin(angle);
        return new double[] {x + far * Math.sin(angle), y - far * Math.cos(angle)};
    }

    /** s of the floor, where the curve is nearest to the axis. */
    double floor() {
        double inward = Math.atan2(-cy, -cx);
        return rho * turned(from - inward);
    }

    /** s on the heel's side where the curve has radius r. */
    double heel(double r) {
        double s = floor() - rho * offFloor(r);
        return straights && (Double.isNaN(s) || s < 0) ? -reach(from, r, -1) : s;
    }

    /** s on the face's side where the curve has radius r. */
    double face(double r) {
        double s = floor() + rho * offFloor(r);
        return straights && (Double.isNaN(s) || s > arc) ? arc + reach(direction(arc), r, 1) : s;
    }

    /** Angle about the arc's centre, from the floor, where the circle has radius r about the axis; NaN beyond it. */
    private double offFloor(double r) {
        double centre = Math.hypot(cx, cy);
        return Math.acos((rho * rho + centre * centre - r * r) / (2 * rho * centre));
    }

    /** Length on a tangent, in its own sense, to where it has radius r. */
    private double reach(double angle, double r, int sense) {
        double[] start = along(angle, 0);
        double dx = sense * Math.sin(angle);
        double dy = -sense * Math.cos(angle);
        double b = start[0] * dx + start[1] * dy;
        double c = start[0] * start[0] + start[1] * start[1] - r * r;
        return -b + Math.sqrt(Math.max(0, b * b - c));
    }

    /** Length of arc, on the longer side, between two radii about the axis; 0 where the wall is straight there. */
    double arcOver(double low, double high) {
        double end = straights ? arc : Double.POSITIVE_INFINITY;
        double start = straights ? 0 : Double.NEGATIVE_INFINITY;
        double face = Math.min(end, face(high)) - Math.min(end, face(low));
        double heel = Math.max(start, heel(low)) - Math.max(start, heel(high));
        return Math.max(face, heel);
    }

    private static double turned(double angle) {
        double turn = angle % (2 * Math.PI);
        return turn < 0 ? turn + 2 * Math.PI : turn;
    }
}
