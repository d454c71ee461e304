// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * Hatch lines clipped to a closed outline, as segments of their own: patterns and clip paths do not survive every
 * renderer. Even-odd: the crossings of one hatch line with the outline, sorted, are taken in pairs.
 */
final class Hatching {
    private final double directionDeg;
    private final double spacing;

    Hatching(double directionDeg, double spacing) {
        this.directionDeg = directionDeg;
        this.spacing = spacing;
    }

    /** One path with all the segments; empty when the outline holds none. */
    String within(Outline outline) {
        List<Spot> turned = new ArrayList<>();
        for (Spot corner : outline.corners()) {
            turned.add(turn(corner, directionDeg));
        }
        double top = turned.stream().mapToDouble(Spot::y).min().orElse(0);
        double bottom = turned.stream().mapToDouble(Spot::y).max().orElse(0);
        StringBuilder path = new StringBuilder();
        for (double y = Math.ceil(top / spacing) * spacing; y <= bottom; y += spacing) {
            List<Double> crossings = crossings(turned, y);
            for (int i = 0; i + 1 < crossings.size(); i += 2) {
                path.append('M').append(Coordinate.text(turn(new Spot(crossings.get(i), y), -directionDeg)));
                path.append('L').append(Coordinate.text(turn(new Spot(crossings.get(i + 1), y), -directionDeg)));
            }
        }
        return path.toString();
    }

    private static List<Double> crossings(List<Spot> corners, double y) {
        List<Double> crossings = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Spot a = corners.get(i);
            Spot b = corners.get((i + 1) % corners.size());
            if ((a.y() <= y) != (b.y() <= y)) {
                crossings.add(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
            }
        }
        crossings.sort(Double::compare);
        return crossings;
    }

    private static Spot turn(Spot spot, double deg) {
        double c = Math.cos(Math.toRadians(deg));
        double s = Math.sin(Math.toRadians(deg));
        return new Spot(c * spot.x() - s * spot.y(), s * spot.x() + c * spot.y());
    }
}
