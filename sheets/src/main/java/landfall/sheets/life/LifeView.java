// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.life;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import landfall.regrind.LeftByWay;
import landfall.regrind.LifeLimit;
import landfall.regrind.LifeLine;
import landfall.regrind.LifeLine.Way;
import landfall.regrind.SharpeningsLeft;
import landfall.sheets.draw.Dimensions;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;
import org.jspecify.annotations.Nullable;

/**
 * The life of a tap as lines from now to scrap. A chamfer ground is a stroke above the line, a face ground a stroke
 * below it; every tenth is longer and carries its number. A cross is the end.
 */
public final class LifeView {
    public static final Spot SIZE = Spot.at(94, 66);

    private static final double FROM = 3;
    private static final double ROOM = 84;
    /** Marks closer than this could not be told apart. */
    private static final double LEAST_STEP = 0.55;

    private static final double MOST_STEP = 5;
    private static final Lettering SMALL = Lettering.NOTE.sized(3);

    private final SharpeningsLeft left;
    private final Figures figures;
    private final List<Row> rows;
    private final double step;
    private final int every;

    /**
     * One line.
     *
     * @param ways how each sharpening is done, in order; null where nothing known ends them
     * @param end what ends it
     * @param done whether this way is gone at all
     */
    private record Row(String name, @Nullable List<Way> ways, String end, boolean done) {
        int count() {
            return ways == null ? 0 : ways.size();
        }
    }

    public LifeView(SharpeningsLeft left, Figures figures) {
        this.left = left;
        this.figures = figures;
        this.rows = rows(left);
        int most = Math.max(1, rows.stream().mapToInt(Row::count).max().orElse(1));
        this.every = Stream.of(1, 10, 100, 1000)
                .filter(n -> ROOM * n / most >= LEAST_STEP)
                .findFirst()
                .orElse(10_000);
        this.step = Math.min(MOST_STEP, ROOM / most);
    }

    private static List<Row> rows(SharpeningsLeft left) {
        List<Row> rows = new ArrayList<>();
        LeftByWay.ByChamfer chamfer = left.chamfer();
        rows.add(new Row("Chamfer alone", repeated(Way.CHAMFER, chamfer.count()), ends(chamfer.limit()), true));
        LeftByWay.ByFace face = left.face();
        rows.add(
                face == null
                        ? new Row("Faces alone: not ground on this tap", List.of(), "", false)
                        : new Row("Faces alone", repeated(Way.FACE, face.count()), ends(face.limit()), true));
        LifeLine line = left.line();
        rows.add(new Row(
                "Best of both",
                line == null
                        ? null
                        : line.stations().stream()
                                .map(LifeLine.Station::way)
                                .filter(way -> way != Way.NOW)
                                .toList(),
                "",
                true));
        return rows;
    }

    private static @Nullable List<Way> repeated(Way way, @Nullable Integer count) {
        return count == null ? null : Collections.nCopies(count, way);
    }

    private static String ends(@Nullable LifeLimit limit) {
        return limit == null ? "" : ", ended by " + LifeWords.limit(limit);
    }

    public Drawing draw(String id, Ink ink) {
        String title = "Sharpenings left, from now to scrap";
        Drawing drawing = new Drawing(id, title, String.join(" ", new LifeWords(left, figures).sentences()), SIZE, ink);
        drawing.text(Spot.at(0, 3.6), title, Lettering.NOTE.bold());
        double y = 16;
        for (Row row : rows) {
            row(drawing, row, y);
            y += 18;
        }
        String strokes = every == 1 ? "" : ", one stroke for " + every;
        drawing.text(Spot.at(0, SIZE.y() - 1), "above: chamfer, below: face; tenths numbered" + strokes, SMALL);
        return drawing;
    }

    private void row(Drawing drawing, Row row, double y) {
        List<Way> ways = row.ways();
        if (!row.done()) {
            drawing.text(Spot.at(0, y - 5.6), row.name(), SMALL.bold());
            return;
        }
        String count = ways == null ? ": no limit known" : ": " + ways.size();
        drawing.text(Spot.at(0, y - 5.6), row.name() + count + row.end(), SMALL.bold());
        Spot now = Spot.at(FROM, y);
        Spot end = now.plus(ways == null ? ROOM : Math.max(1, ways.size()) * step, 0);
        if (ways == null) {
            drawing.line(now, end, Line.HIDDEN);
            new Dimensions(drawing).arrowhead(end, 0);
        } else {
            drawing.line(now, end, Line.OUTLINE);
            strokes(drawing, ways, y);
            scrap(drawing, end);
        }
        drawing.disc(now, 1.1, Fill.SHEET).circle(now, 1.1, Line.OUTLINE);
    }

    private void strokes(Drawing drawing, List<Way> ways, double y) {
        for (int i = every; i <= ways.size(); i += every) {
            boolean tenth = i % (10 * every) == 0;
            double tall = tenth ? 3.4 : 2.2;
            Spot on = Spot.at(FROM + i * step, y);
            boolean above = ways.get(i - 1) == Way.CHAMFER;
            drawing.line(on, on.plus(0, above ? -tall : tall), Line.THIN);
            if (tenth && 10 * every * step > 7) {
                drawing.text(on.plus(0, 7), String.valueOf(i), SMALL.middle());
            }
        }
    }

    /** A cross at the end. */
    private static void scrap(Drawing drawing, Spot end) {
        Spot at = end.plus(2.2, 0);
        drawing.line(at.plus(-1.3, -1.3), at.plus(1.3, 1.3), Line.OUTLINE);
        drawing.line(at.plus(-1.3, 1.3), at.plus(1.3, -1.3), Line.OUTLINE);
    }

    /** How many sharpenings one stroke stands for. */
    int every() {
        return every;
    }
}
