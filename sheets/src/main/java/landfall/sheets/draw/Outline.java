// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * A path of straight lines and circular arcs. It is kept both as written (arcs as arcs) and as corners close enough
 * together that hatching clipped to them shows no gap: chords sag less than 0.02 mm on paper.
 */
public final class Outline {
    private static final double SAG_MM = 0.02;

    private final StringBuilder written = new StringBuilder();
    private final List<Spot> corners = new ArrayList<>();
    private boolean closed;

    private Outline(Spot start) {
        written.append('M').append(Coordinate.text(start));
        corners.add(start);
    }

    public static Outline from(Spot start) {
        return new Outline(start);
    }

    /** Straight lines through all the spots, in order. */
    public static Outline through(List<Spot> spots) {
        Outline outline = new Outline(spots.get(0));
        spots.subList(1, spots.size()).forEach(outline::lineTo);
        return outline;
    }

    public static Outline rectangle(Spot corner, double width, double height) {
        return from(corner)
                .lineTo(corner.plus(width, 0))
                .lineTo(corner.plus(width, height))
                .lineTo(corner.plus(0, height))
                .close();
    }

    public static Outline circle(Spot centre, double radius) {
        return from(centre.polar(0, radius)).arc(centre, 180).arc(centre, 180).close();
    }

    public Outline lineTo(Spot spot) {
        written.append('L').append(Coordinate.text(spot));
        corners.add(spot);
        return this;
    }

    /** An arc about a centre from where the path stands, turning so many degrees, anticlockwise as seen if positive. */
    public Outline arc(Spot centre, double turnDeg) {
        Spot start = last();
        double radius = centre.distance(start);
        double from = centre.direction(start);
        int steps = Math.max(2, (int) Math.ceil(Math.abs(turnDeg) / stepDeg(radius)));
        for (int i = 1; i <= steps; i++) {
            corners.add(centre.polar(from + turnDeg * i / steps, radius));
        }
        String r = Coordinate.text(radius);
        written.append('A').append(r).append(' ').append(r).append(" 0 ");
        written.append(Math.abs(turnDeg) > 180 ? '1' : '0')
                .append(' ')
                .append(turnDeg < 0 ? '1' : '0')
                .append(' ');
        written.append(Coordinate.text(last()));
        return this;
    }

    public Outline close() {
        written.append('Z');
        closed = true;
        return this;
    }

    private Spot last() {
        return corners.get(corners.size() - 1);
    }

    private static double stepDeg(double radius) {
        return radius <= SAG_MM ? 90 : Math.toDegrees(2 * Math.acos(1 - SAG_MM / radius));
    }

    boolean isClosed() {
        return closed;
    }

    /** As the value of the SVG attribute {@code d}. */
    String written() {
        return written.toString();
    }

    List<Spot> corners() {
        return List.copyOf(corners);
    }
}
