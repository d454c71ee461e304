// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dialling;

import java.util.List;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Spot;

/** The mark of a land's readings: a shape of its own for each of six lands, then the shapes come round again. */
enum LandMark {
    DISC,
    RING,
    SQUARE,
    FRAME,
    WEDGE,
    TRIANGLE;

    private static final double HALF = 0.95;

    static LandMark of(int land) {
        return values()[(land - 1) % values().length];
    }

    void draw(Drawing drawing, Spot at) {
        switch (this) {
            case DISC -> drawing.disc(at, HALF, Fill.SOLID);
            case RING -> drawing.disc(at, HALF, Fill.SHEET).circle(at, HALF, Line.THIN);
            case SQUARE -> drawing.fill(square(at), Fill.SOLID);
            case FRAME -> drawing.fill(square(at), Fill.SHEET).path(square(at), Line.THIN);
            case WEDGE -> drawing.fill(triangle(at), Fill.SOLID);
            case TRIANGLE -> drawing.fill(triangle(at), Fill.SHEET).path(triangle(at), Line.THIN);
        }
    }

    private static Outline square(Spot at) {
        return Outline.rectangle(at.plus(-HALF, -HALF), 2 * HALF, 2 * HALF);
    }

    private static Outline triangle(Spot at) {
        return Outline.through(List.of(at.plus(0, -1.2), at.plus(1.1, 0.8), at.plus(-1.1, 0.8)))
                .close();
    }
}
