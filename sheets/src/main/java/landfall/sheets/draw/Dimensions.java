// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import java.util.List;

/**
 * Dimensions as a drawing office draws them: thin lines, slim filled arrowheads, the figure above the line and readable
 * from below or from the right. Arrows go outside when there is no room between the extension lines; the figure then
 * stands beside the line.
 */
public final class Dimensions {
    private static final double ARROW = 2.4;
    private static final double HALF_BREADTH = 0.42;
    private static final double GAP = 0.8;
    private static final double OVERRUN = 1.2;

    private final Drawing drawing;
    private final Lettering lettering;

    public Dimensions(Drawing drawing) {
        this(drawing, Lettering.FIGURE);
    }

    public Dimensions(Drawing drawing, Lettering lettering) {
        this.drawing = drawing;
        this.lettering = lettering.middle();
    }

    /**
     * The distance between two places, measured along the line through them. The dimension line stands so far to the
     * left of the way from the first to the second; negative: to the right.
     */
    public void along(Spot from, Spot to, double offset, String text) {
        double left = from.direction(to) + 90;
        between(from, to, from.polar(left, offset), to.polar(left, offset), text);
    }

    /** The horizontal distance between two places, drawn at a height on paper. */
    public void across(Spot from, Spot to, double y, String text) {
        between(from, to, new Spot(from.x(), y), new Spot(to.x(), y), text);
    }

    /** The vertical distance between two places, drawn at a place across the paper. */
    public void upright(Spot from, Spot to, double x, String text) {
        between(from, to, new Spot(x, from.y()), new Spot(x, to.y()), text);
    }

    private void between(Spot from, Spot to, Spot a, Spot b, String text) {
        extension(from, a);
        extension(to, b);
        double length = a.distance(b);
        boolean inside = length >= 2.6 * ARROW;
        double direction = a.direction(b);
        if (inside) {
            drawing.line(a, b, Line.THIN);
            arrowhead(a, direction + 180);
            arrowhead(b, direction);
        } else {
            drawing.line(a.polar(direction + 180, 2 * ARROW), b.polar(direction, 2 * ARROW), Line.THIN);
            arrowhead(a, direction);
            arrowhead(b, direction + 180);
        }
        figure(a, b, text, inside);
    }

    private void figure(Spot a, Spot b, String text, boolean inside) {
        double read = readable(a.direction(b));
        double width = lettering.width(text);
        if (inside && width <= a.distance(b) - 1) {
            drawing.text(a.towards(b, 0.5).polar(read + 90, GAP), text, lettering.turned(read));
            return;
        }
        if (Math.abs(read - 90) < 0.01) {
            Spot beside = a.towards(b, 0.5).plus(1.6, lettering.capHeight() / 2);
            drawing.text(beside, text, lettering.anchored(Lettering.Anchor.START));
            return;
        }
        Spot end = inside ? b : b.polar(a.direction(b), 2 * ARROW);
        Spot middle = end.polar(a.direction(b), 0.8 + width / 2);
        drawing.text(middle.polar(read - 90, lettering.capHeight() / 2), text, lettering.turned(read));
    }

    /** Text reads from below or from the right: directions from over -90 up to 90 degrees. */
    private static double readable(double direction) {
        double d = direction;
        while (d > 90.001) {
            d -= 180;
        }
        while (d <= -89.999) {
            d += 180;
        }
        return Math.abs(d) < 0.001 ? 0 : d;
    }

    private void extension(Spot from, Spot to) {
        if (from.distance(to) > GAP) {
            double direction = from.direction(to);
            drawing.line(from.polar(direction, GAP), to.polar(direction, OVERRUN), Line.THIN);
        }
    }

    /** A filled arrowhead with its tip at a place, pointing in a direction. */
    public void arrowhead(Spot tip, double directionDeg) {
        Spot back = tip.polar(directionDeg + 180, ARROW);
        drawing.fill(
                Outline.through(List.of(
                                tip,
                                back.polar(directionDeg + 90, HALF_BREADTH),
                                back.polar(directionDeg - 90, HALF_BREADTH)))
                        .close(),
                Fill.SOLID);
    }

    /**
     * The angle about a centre from one direction to another (degrees, anticlockwise as seen), figure at the middle of
     * the arc.
     */
    public void angle(Spot centre, double radius, double fromDeg, double toDeg, String text) {
        arc(centre, radius, fromDeg, toDeg);
        double middle = (fromDeg + toDeg) / 2;
        double chord = 2 * radius * Math.sin(Math.toRadians(Math.min(180, Math.abs(toDeg - fromDeg)) / 2));
        double width = lettering.width(text);
        boolean upright = Math.abs(Math.sin(Math.toRadians(middle))) > 0.9 && chord > width;
        double out = upright ? GAP : 1 + width / 2 * Math.abs(Math.cos(Math.toRadians(middle)));
        Spot on = centre.polar(middle, radius + out);
        double down = Math.sin(Math.toRadians(middle)) > 0.9 ? 0 : lettering.capHeight() / 2;
        drawing.text(on.plus(0, down), text, lettering);
    }

    /** The arc of an angle with its arrowheads alone; arrows stand outside when the arc is short. */
    public void arc(Spot centre, double radius, double fromDeg, double toDeg) {
        double turn = toDeg - fromDeg;
        double length = Math.toRadians(Math.abs(turn)) * radius;
        double sense = Math.signum(turn);
        double half = Math.toDegrees(ARROW / 2 / radius);
        boolean inside = length >= 2.6 * ARROW;
        double lead = inside ? 0 : Math.toDegrees(2 * ARROW / radius);
        Spot start = centre.polar(fromDeg - sense * lead, radius);
        drawing.path(Outline.from(start).arc(centre, turn + 2 * sense * lead), Line.THIN);
        double way = inside ? 1 : -1;
        arrowhead(centre.polar(toDeg, radius), toDeg + sense * way * (90 - half));
        arrowhead(centre.polar(fromDeg, radius), fromDeg - sense * way * (90 - half));
    }

    /** A line from a text to what it speaks of, with an arrow at the tip; the text starts or ends at the knee. */
    public void leader(Spot tip, Spot knee, String text) {
        boolean right = knee.x() >= tip.x();
        Spot shelf = knee.plus(right ? 2 : -2, 0);
        drawing.path(Outline.through(List.of(tip, knee, shelf)), Line.THIN);
        arrowhead(tip, knee.direction(tip));
        Lettering anchored = right ? lettering.anchored(Lettering.Anchor.START) : lettering.end();
        drawing.text(shelf.plus(right ? 0.8 : -0.8, lettering.capHeight() / 2), text, anchored);
    }
}
