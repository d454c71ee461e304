// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import java.util.List;

/** States by shape first: GO a ring with a tick, NOT GO a square with a bar, caution a triangle. */
public enum Mark {
    GO("go"),
    NOT_GO("not go"),
    CAUTION("caution");

    private static final double SIZE = 7;

    private final String word;

    Mark(String word) {
        this.word = word;
    }

    /** The mark as a small drawing of its own. */
    public Drawing draw(String id, Ink ink) {
        Drawing drawing = new Drawing(id, word, word, Spot.at(SIZE, SIZE), ink);
        Spot middle = Spot.at(SIZE / 2, SIZE / 2);
        switch (this) {
            case GO ->
                drawing.circle(middle, 3, Line.OUTLINE)
                        .path(
                                Outline.through(List.of(Spot.at(2, 3.6), Spot.at(3.2, 4.9), Spot.at(5, 2.2))),
                                Line.OUTLINE);
            case NOT_GO ->
                drawing.path(Outline.rectangle(Spot.at(0.7, 0.7), 5.6, 5.6), Line.OUTLINE)
                        .fill(Outline.rectangle(Spot.at(1.8, 2.9), 3.4, 1.2), Fill.SOLID);
            case CAUTION ->
                drawing.path(
                                Outline.through(List.of(Spot.at(3.5, 0.6), Spot.at(6.6, 6.2), Spot.at(0.4, 6.2)))
                                        .close(),
                                Line.OUTLINE)
                        .line(Spot.at(3.5, 2.4), Spot.at(3.5, 4.3), Line.OUTLINE)
                        .disc(Spot.at(3.5, 5.2), 0.35, Fill.SOLID);
        }
        return drawing;
    }
}
