// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.sheets.grind.TapShape.FluteShape;

/**
 * The outline of one flute in the plane square to the axis, from the cutting edge down to the floor and up to the heel
 * of the land ahead, all on the basic major diameter. In mm; x to the right, y up, the edge straight up (0, R), the
 * land behind it to the right, as a right-handed tap is seen from its point.
 *
 * <p>With rake: straight face through the edge, offset R sin(rake) behind the axis; one arc of the floor radius tangent
 * to that face and touching the core circle; straight tangent to the heel. Without rake: one arc touching the core
 * circle through edge and heel.
 */
final class FluteOutline {
    private static final int ARC_STEPS = 48;

    private final double major;
    private final double heelDeg;
    private final FluteShape shape;

    /** heelDeg: how far ahead of the edge (anticlockwise) the heel of the land ahead lies. */
    FluteOutline(double majorRadius, double heelDeg, FluteShape shape) {
        this.major = majorRadius;
        this.heelDeg = heelDeg;
        this.shape = shape;
    }

    record Point(double x, double y) {
        static Point polar(double radius, double anticlockwiseFromUpDeg) {
            double rad = Math.toRadians(anticlockwiseFromUpDeg);
            return new Point(-radius * Math.sin(rad), radius * Math.cos(rad));
        }

        Point turned(double anticlockwiseDeg) {
            double c = Math.cos(Math.toRadians(anticlockwiseDeg));
            double s = Math.sin(Math.toRadians(anticlockwiseDeg));
            return new Point(c * x - s * y, s * x + c * y);
        }

        double radius() {
            return Math.hypot(x, y);
        }
    }

    /** Edge to heel; empty when the radius is not known, or core, radius and land do not close to a flute. */
    Optional<List<Point>> outline() {
        if (shape.radius() == null) {
            return Optional.empty();
        }
        double rho = shape.radius().mm();
        return shape.rake() == null
                ? oneArc(rho)
                : faceArcTangent(rho, shape.rake().rad());
    }

    private Optional<List<Point>> oneArc(double rho) {
        double reach = shape.core().mm() / 2 + rho;
        double cosine = (reach * reach + rho * rho - major * major) / (2 * reach * rho);
        if (Math.abs(cosine) > 1) {
            return Optional.empty();
        }
        double half = Math.acos(cosine);
        Point centre = Point.polar(reach, heelDeg / 2);
        double inward = Math.toRadians(heelDeg / 2 + 270);
        List<Point> points = new ArrayList<>();
        points.add(Point.polar(major, 0));
        for (int i = 1; i < ARC_STEPS; i++) {
            double at = inward + half * (1 - 2.0 * i / ARC_STEPS);
            points.add(new Point(centre.x() + rho * Math.cos(at), centre.y() + rho * Math.sin(at)));
        }
        points.add(Point.polar(major, heelDeg));
        return Optional.of(points);
    }

    /** Worked with the face upright at x = R sin(rake), then turned so that the edge stands straight up. */
    private Optional<List<Point>> faceArcTangent(double rho, double rake) {
        double reach = shape.core().mm() / 2 + rho;
        double faceX = major * Math.sin(rake);
        double centreX = faceX - rho;
        double square = reach * reach - centreX * centreX;
        double edgeY = major * Math.cos(rake);
        if (square < 0 || Math.sqrt(square) > edgeY) {
            return Optional.empty();
        }
        Point centre = new Point(centreX, Math.sqrt(square));
        double turn = Math.toDegrees(rake);
        Point heel = Point.polar(major, heelDeg).turned(-turn);
        double away = Math.hypot(heel.x() - centre.x(), heel.y() - centre.y());
        if (away < rho) {
            return Optional.empty();
        }
        double toHeel = Math.atan2(heel.y() - centre.y(), heel.x() - centre.x());
        double end = toHeel + Math.acos(rho / away);
        while (end > 0) {
            end -= 2 * Math.PI;
        }
        List<Point> points = new ArrayList<>();
        points.add(new Point(faceX, edgeY));
        for (int i = 0; i <= ARC_STEPS; i++) {
            double at = end * i / ARC_STEPS;
            points.add(new Point(centre.x() + rho * Math.cos(at), centre.y() + rho * Math.sin(at)));
        }
        points.add(heel);
        return Optional.of(points.stream().map(point -> point.turned(turn)).toList());
    }
}
