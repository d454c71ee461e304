// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import landfall.sheets.draw.Dimensions;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;

/**
 * The cam's stroke round the tap: inner ring the rise and then the angle that there is up to the next edge, outer ring
 * the angle that the cam and the wheel need.
 */
final class StrokeRings {
    private static final Lettering SMALL = Lettering.NOTE.sized(3);

    private final Drawing drawing;
    private final Stroke stroke;
    private final Spot axis;
    private final double sense;
    private final Figures figures;

    /** sense: 1 when land angles run clockwise on paper, as on a right-hand tap; -1 when they run the other way. */
    StrokeRings(Drawing drawing, Stroke stroke, Spot axis, double sense, Figures figures) {
        this.drawing = drawing;
        this.stroke = stroke;
        this.axis = axis;
        this.sense = sense;
        this.figures = figures;
    }

    private double direction(double landDeg) {
        return 90 - sense * landDeg;
    }

    /** base: radius of the tap on paper; nextDeg: land angle of the next edge. */
    void draw(double base, double nextDeg) {
        double end = stroke.riseEndDeg();
        Dimensions dimensions =
                new Dimensions(drawing, Lettering.NOTE.sized(3.2).bold());
        for (double deg : new double[] {stroke.lobe().riseStart().deg(), end, nextDeg}) {
            drawing.line(axis.polar(direction(deg), base + 1), axis.polar(direction(deg), base + 14), Line.THIN);
        }
        double needed = end + stroke.gap().needed().deg();
        drawing.line(axis.polar(direction(needed), base + 10.4), axis.polar(direction(needed), base + 14), Line.ALARM);
        dimensions.arc(axis, base + 5, direction(stroke.lobe().riseStart().deg()), direction(end));
        dimensions.arc(axis, base + 5, direction(end), direction(nextDeg));
        dimensions.arc(axis, base + 12, direction(end), direction(needed));
        rise(base, end);
        String needs = "needs " + figures.angle(stroke.gap().needed());
        String has = "has " + figures.angle(stroke.gap().have());
        double middle = end + stroke.gap().needed().deg() / 2;
        Spot label = beside(base + 14, middle, needs);
        double room = Math.toRadians(stroke.gap().have().deg()) * (base + 8);
        if (room > SMALL.bold().width(has) + 3) {
            inRing(base + 8.2, end, has);
        } else {
            drawing.text(label.plus(0, 4), has, anchored(direction(middle)));
        }
    }

    /** Outside its arc; a short arc's figure stands before its start, where the next figure does not reach. */
    private void rise(double base, double end) {
        double start = stroke.lobe().riseStart().deg();
        String text = "rise " + figures.angle(stroke.lobe().riseAngle());
        if (end - start > 50) {
            beside(base + 7, (start + end) / 2, text);
            return;
        }
        Spot spot = axis.polar(direction(start), base + 13.5).plus(-sense * 1.2, 0);
        drawing.text(spot, text, sense > 0 ? SMALL.bold().end() : SMALL.bold());
    }

    /** A text outside a ring, reading away from it. */
    private Spot beside(double radius, double deg, String text) {
        double direction = direction(deg);
        double c = Math.cos(Math.toRadians(direction));
        double down = Math.sin(Math.toRadians(direction)) > 0 ? 0.5 : SMALL.capHeight();
        Spot spot = axis.polar(direction, radius).plus(Math.signum(c) * 0.5, down);
        drawing.text(spot, text, anchored(direction));
        return spot;
    }

    private static Lettering anchored(double directionDeg) {
        double c = Math.cos(Math.toRadians(directionDeg));
        Lettering lettering = SMALL.bold();
        if (Math.abs(c) < 0.25) {
            return lettering.middle();
        }
        return c < 0 ? lettering.end() : lettering;
    }

    private void inRing(double radius, double endDeg, String text) {
        double middle = endDeg + stroke.gap().have().deg() / 2;
        double direction = direction(middle);
        double turn = direction < 0 ? direction + 90 : direction - 90;
        while (turn > 90) {
            turn -= 180;
        }
        while (turn <= -90) {
            turn += 180;
        }
        Lettering lettering = SMALL.bold().middle().turned(turn);
        double inward = Math.cos(Math.toRadians(turn - (direction - 90))) > 0
                ? -lettering.capHeight() / 2
                : lettering.capHeight() / 2;
        drawing.text(axis.polar(direction, radius + inward), text, lettering);
    }
}
