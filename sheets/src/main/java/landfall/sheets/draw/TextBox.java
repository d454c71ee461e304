// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The box of a text as placed and turned, from the metrics of the font: for keeping texts apart and inside their
 * drawing.
 *
 * @param corners in order round the box
 */
public record TextBox(String text, List<Spot> corners) {
    /** Depth below the base line of letters such as g and p, over the font size. */
    private static final double DESCENT = 0.24;

    /** Boxes that share no more than this each way only touch. */
    private static final double HAIR_MM = 0.3;

    public TextBox {
        corners = List.copyOf(corners);
    }

    static TextBox of(String text, Spot at, Lettering lettering) {
        double width = lettering.width(text);
        double left = -width * lettering.anchor().share;
        double up = lettering.turnDeg() + 90;
        Spot start = at.polar(lettering.turnDeg(), left);
        Spot end = start.polar(lettering.turnDeg(), width);
        double descent = lettering.size() * DESCENT;
        double height = lettering.capHeight();
        return new TextBox(
                text,
                List.of(
                        start.polar(up, -descent),
                        end.polar(up, -descent),
                        end.polar(up, height),
                        start.polar(up, height)));
    }

    public double left() {
        return least(Spot::x);
    }

    public double right() {
        return -least(spot -> -spot.x());
    }

    public double top() {
        return least(Spot::y);
    }

    public double foot() {
        return -least(spot -> -spot.y());
    }

    private double least(ToDoubleFunction<Spot> measure) {
        return corners.stream().mapToDouble(measure).min().orElseThrow();
    }

    /**
     * Whether two boxes share more than a hair, however they are turned: no side of either has the other wholly beyond
     * it.
     */
    public boolean overlaps(TextBox other) {
        List<Double> directions = new ArrayList<>();
        for (TextBox box : List.of(this, other)) {
            directions.add(box.corners.get(0).direction(box.corners.get(1)));
            directions.add(box.corners.get(1).direction(box.corners.get(2)));
        }
        return directions.stream().allMatch(direction -> sharedAlong(direction, other) > HAIR_MM);
    }

    private double sharedAlong(double directionDeg, TextBox other) {
        double c = Math.cos(Math.toRadians(directionDeg));
        double s = -Math.sin(Math.toRadians(directionDeg));
        ToDoubleFunction<Spot> along = spot -> c * spot.x() + s * spot.y();
        ToDoubleFunction<Spot> back = spot -> -along.applyAsDouble(spot);
        double end = Math.min(-least(back), -other.least(back));
        return end - Math.max(least(along), other.least(along));
    }
}
