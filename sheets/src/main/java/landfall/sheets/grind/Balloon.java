// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Spot;

/** A letter in a ring, and the stylus that it stands at: the same letter stands in the table of readings. */
final class Balloon {
    private static final double RADIUS = 2.6;
    private static final Lettering LETTER = Lettering.NOTE.sized(3.4).bold().middle();

    private final Drawing drawing;

    Balloon(Drawing drawing) {
        this.drawing = drawing;
    }

    void at(Spot centre, String letter) {
        drawing.disc(centre, RADIUS, Fill.SHEET).circle(centre, RADIUS, Line.THIN);
        drawing.text(centre.plus(0, LETTER.capHeight() / 2), letter, LETTER);
    }

    /**
     * A stylus whose ball touches at the tip, coming from a direction in degrees; its balloon stands at its far end.
     */
    void stylus(Spot tip, double fromDeg, double length, String letter) {
        Spot ball = tip.polar(fromDeg, 0.9);
        drawing.line(ball, tip.polar(fromDeg, length), Line.OUTLINE).disc(ball, 0.9, Fill.SOLID);
        at(tip.polar(fromDeg, length + RADIUS), letter);
    }

    /** A flat anvil, as wide on paper as given, square to the direction that it comes from. */
    void anvil(Spot tip, double fromDeg, double width, String letter) {
        double length = 6;
        drawing.line(tip.polar(fromDeg + 90, width / 2), tip.polar(fromDeg - 90, width / 2), Line.OUTLINE);
        drawing.line(tip, tip.polar(fromDeg, length), Line.OUTLINE);
        at(tip.polar(fromDeg, length + RADIUS), letter);
    }
}
