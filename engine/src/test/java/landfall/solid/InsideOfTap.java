// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import java.awt.geom.Path2D;
import java.util.Random;
import landfall.grind.ChamferShape;
import landfall.grind.GrindWish;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import landfall.working.Pen;

/**
 * Whether a place lies in a tap, from the card's figures alone: profile, chamfer, relief and flutes written again,
 * place by place and without a mesh.
 */
final class InsideOfTap {
    private static final int ROUND = 1800;
    private static final int OUT = 500;
    private final Tap tap;
    private final double R;
    private final double division;
    private final double fall;
    private final double twist;
    private static final int SIDES = 600;
    private final Path2D.Double flute = new Path2D.Double();
    private final double[][] outline = new double[SIDES + 1][];

    InsideOfTap(Tap tap) {
        this.tap = tap;
        this.R = tap.thread().major().mm() / 2;
        this.division = tap.flutes().division().rad();
        this.fall = ChamferShape.of(tap, GrindWish.USUAL, new java.util.ArrayList<>(), Pen.NONE)
                .fall()
                .perRadian()
                .mm();
        var kind = tap.flutes().kind();
        boolean along =
                (kind == landfall.tap.FluteKind.SPIRAL_RIGHT) == (tap.thread().hand() == landfall.thread.Hand.RIGHT);
        double sign = !kind.isSpiral() ? 0 : along ? 1 : -1;
        this.twist = sign * Math.tan(tap.flutes().helix().rad()) / R;
        drawFlute();
    }

    private void drawFlute() {
        var curve = FluteCurve.of(
                tap,
                tap.flutes().form().core().mm() / 2,
                tap.flutes().form().radius().mm());
        boolean one = tap.flutes().form().rake() == null;
        double from = curve.heel(one ? R : 1.5 * R);
        double to = curve.face(one ? R : 1.5 * R);
        for (int i = 0; i <= SIDES; i++) {
            double[] at = curve.at(from + (to - from) * i / SIDES);
            outline[i] = at;
            if (i == 0) {
                flute.moveTo(at[0], at[1]);
            } else {
                flute.lineTo(at[0], at[1]);
            }
        }
        if (one) {
            // the chord of a one-arc flute lies under the crest circle; out to well over it
            flute.lineTo(1.5 * R * 1, 0);
            double heel = tap.landAngle().rad() - division;
            flute.lineTo(1.5 * R * Math.cos(heel / 2), 1.5 * R * Math.sin(heel / 2));
            flute.lineTo(1.5 * R * Math.cos(heel), 1.5 * R * Math.sin(heel));
        }
        flute.closePath();
    }

    /** Radius of the land's surface at a place, from the edge of its own land. */
    double surface(double round, double z) {
        double turned = round - twist * z;
        // a land reaches a little before its edge's angle where the face leans back, never by a fifth of the division
        double theta = turned - Math.floor(turned / division + 0.2) * division;
        var thread = tap.thread();
        double P = thread.pitch().mm();
        double u = z - thread.lead().perTurn().mm() * round / (2 * Math.PI);
        double off = Math.abs(u - P * Math.rint(u / P));
        double over =
                (tap.pitch().limit().min().mm() + tap.pitch().limit().max().mm()) / 2
                        - thread.pitchDiameter().mm();
        double tangent = Math.tan(Math.toRadians(30));
        double crest = P / 16 + over * tangent / 2;
        double profile = Math.min(R, Math.max(thread.minorDiameter().mm() / 2, R - (off - crest) / tangent));
        ThreadRelief relief = tap.cutting().relief();
        if (relief.kind() != ThreadRelief.Kind.CONCENTRIC) {
            profile -= R
                    * Math.tan(relief.slope().rad())
                    * Math.max(0, theta - relief.margin().rad());
        }
        profile -= z * tap.body().backTaper() / 2;
        var cone = tap.chamfer();
        double chamfer =
                cone.pointDiameter().mm() / 2 + z * Math.tan(cone.angle().rad()) - fall * theta;
        return Math.min(profile, chamfer);
    }

    private boolean inFlute(double x, double y, double z) {
        double r = Math.hypot(x, y);
        double back = Math.atan2(y, x) - twist * z;
        // the flute before an edge lies behind it by no more than half a division where the face leans back
        back -= Math.floor(back / division + 0.5) * division;
        return in(r, back) || in(r, back - division);
    }

    private boolean in(double r, double angle) {
        return flute.contains(r * Math.cos(angle), r * Math.sin(angle));
    }

    /** Area of the section at a height, mm²: a sum over rings and rays. */
    double section(double z) {
        double area = 0;
        double out = R / OUT;
        for (int i = 0; i < ROUND; i++) {
            double round = 2 * Math.PI * (i + 0.5) / ROUND;
            double top = surface(round, z);
            for (int k = 0; (k + 0.5) * out < top; k++) {
                double r = (k + 0.5) * out;
                if (!inFlute(r * Math.cos(round), r * Math.sin(round), z)) {
                    area += r * out * 2 * Math.PI / ROUND;
                }
            }
        }
        return area;
    }

    /** The largest distance, mm, of seeded places of the mesh's thread and flutes from the surface, to first order. */
    double farthest(Mesh mesh, int places, Random random) {
        double worst = 0;
        double end = tap.body().threadLength().mm();
        double[] xyz = mesh.xyz();
        int[] corners = mesh.corners();
        for (int i = 0; i < places; i++) {
            int t = 3 * random.nextInt(mesh.triangles());
            double a = random.nextDouble();
            double b = random.nextDouble() * (1 - a);
            double[] at = new double[3];
            for (int k = 0; k < 3; k++) {
                at[k] = a * xyz[3 * corners[t] + k]
                        + b * xyz[3 * corners[t + 1] + k]
                        + (1 - a - b) * xyz[3 * corners[t + 2] + k];
            }
            if (at[2] > 1e-6 && at[2] < end - 1e-6) {
                worst = Math.max(worst, Math.min(offLand(at), offFlute(at)));
            }
        }
        return worst;
    }

    /** Radial distance from the land's surface, turned square to it by the surface's slope along the axis. */
    private double offLand(double[] at) {
        double round = Math.atan2(at[1], at[0]);
        double r = Math.hypot(at[0], at[1]);
        double h = 1e-5;
        double slope = (surface(round, at[2] + h) - surface(round, at[2] - h)) / (2 * h);
        return Math.abs(r - surface(round, at[2])) / Math.hypot(1, slope);
    }

    /** Distance from the nearest flute's outline in the plane square to the axis. */
    private double offFlute(double[] at) {
        double r = Math.hypot(at[0], at[1]);
        double back = Math.atan2(at[1], at[0]) - twist * at[2];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < tap.flutes().count(); i++) {
            double x = r * Math.cos(back - i * division);
            double y = r * Math.sin(back - i * division);
            for (int k = 0; k < SIDES; k++) {
                double[] p = outline[k];
                double[] q = outline[k + 1];
                least = Math.min(least, java.awt.geom.Line2D.ptSegDist(p[0], p[1], q[0], q[1], x, y));
            }
        }
        return least;
    }
}
