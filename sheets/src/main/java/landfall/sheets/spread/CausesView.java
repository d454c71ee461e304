// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.spread;

import java.util.List;
import java.util.stream.Collectors;
import landfall.cards.spread.SpreadCause;
import landfall.cards.spread.SpreadSetup;
import landfall.cards.spread.Watched;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Spot;
import landfall.spread.Summary;

/**
 * What a result moves with, the worst first: for each field a line from none to all of the variance, a full disc for
 * its total share, a ring for its share alone, and a thin bar for twice the sampling error.
 */
public final class CausesView {
    private static final double WIDE = 120;
    private static final double NAMES = 44;
    private static final double ROW = 8;
    private static final double HEAD = 9;

    private final Watched watched;
    private final List<SpreadCause> causes;

    /** @param result which of the watched results */
    public CausesView(SpreadSetup setup, Summary summary, int result) {
        this.watched = setup.watched().get(result);
        this.causes = SpreadCause.of(setup, summary).stream()
                .filter(cause -> cause.watched().equals(watched))
                .toList();
    }

    /** Whether there is more than one field to compare. */
    public boolean isThere() {
        return !causes.isEmpty();
    }

    public Drawing draw(String id, Ink ink) {
        Spot size = Spot.at(WIDE, HEAD + ROW * causes.size() + 9);
        Drawing drawing = new Drawing(id, "What " + watched.path() + " moves with", said(), size, ink);
        drawing.text(Spot.at(0, 3.6), watched.path() + " moves most with", Lettering.NOTE.bold());
        for (int row = 0; row < causes.size(); row++) {
            row(drawing, causes.get(row), HEAD + ROW * (row + 0.5));
        }
        double foot = size.y() - 2;
        drawing.text(Spot.at(NAMES, foot), "0", Lettering.NOTE.middle());
        drawing.text(Spot.at(WIDE - 6, foot), "100 %", Lettering.NOTE.middle());
        drawing.text(Spot.at((NAMES + WIDE) / 2, foot), "of the variance; ring: alone", Lettering.NOTE.middle());
        return drawing;
    }

    private static void row(Drawing drawing, SpreadCause cause, double y) {
        double total = at(cause.found().total());
        double error = 2 * cause.found().totalError() * (WIDE - 6 - NAMES);
        drawing.text(Spot.at(0, y + 1.2), cause.varied().path(), Lettering.NOTE);
        drawing.line(Spot.at(NAMES, y), Spot.at(WIDE - 6, y), Line.HATCH);
        drawing.line(Spot.at(NAMES, y), Spot.at(total, y), Line.OUTLINE);
        drawing.line(Spot.at(total - error, y - 1.8), Spot.at(total + error, y - 1.8), Line.THIN);
        drawing.disc(Spot.at(total, y), 1.2, Fill.SOLID);
        drawing.circle(Spot.at(at(cause.found().first()), y), 1.8, Line.THIN);
    }

    /** An estimate may lie a little under none or over all; it is drawn where it lies. */
    private static double at(double share) {
        return NAMES + share * (WIDE - 6 - NAMES);
    }

    /** The same in words. */
    public String said() {
        return watched.path() + " moves most with "
                + causes.stream()
                        .map(cause -> "%s %.0f %%"
                                .formatted(
                                        cause.varied().path(),
                                        100 * cause.found().total()))
                        .collect(Collectors.joining(", then "))
                + ".";
    }
}
