// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.tap;

import java.util.ArrayList;
import java.util.List;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Spot;

/**
 * A shank with its marking, every part of it numbered and explained below. Not to scale: a shank is too small to read.
 *
 * @param parts in the order of the marking
 */
public record MarkingView(List<Part> parts) {
    private static final Lettering NOTE = Lettering.NOTE.sized(Lettering.FIGURE.size());
    private static final Lettering STAMP = Lettering.FIGURE.sized(4.6);
    private static final double WIDTH = 94;
    private static final double GAP = 4;
    private static final double SHANK_TOP = 7;
    private static final double LINE = 9;
    private static final double TEXT_FROM = 9;

    /** A part as stamped, and what it means. */
    public record Part(String text, String means) {}

    public MarkingView {
        parts = List.copyOf(parts);
    }

    private record Placed(Part part, int number, Spot at) {}

    public Drawing draw(String id, Ink ink) {
        List<Placed> placed = place();
        double lines = placed.isEmpty() ? 0 : (placed.get(placed.size() - 1).at.y() - SHANK_TOP - 6) / LINE + 1;
        double shankFoot = SHANK_TOP + 3 + LINE * lines;
        List<List<String>> rows = parts.stream()
                .map(part -> wrapped(part.text() + ": " + part.means(), WIDTH - TEXT_FROM))
                .toList();
        double height = rows.stream().mapToDouble(row -> 4.8 * row.size() + 1.6).sum();
        Drawing drawing =
                new Drawing(id, "What the marking says", description(), Spot.at(WIDTH, shankFoot + 6 + height), ink);
        drawing.text(Spot.at(0, 3.6), "Marking, not to scale", NOTE.bold());
        shank(drawing, shankFoot);
        for (Placed each : placed) {
            drawing.text(each.at, each.part.text(), STAMP.anchored(Lettering.Anchor.START));
            double width = STAMP.width(each.part.text());
            drawing.line(each.at.plus(0, 1.2), each.at.plus(width, 1.2), Line.WANTED);
            drawing.text(each.at.plus(width + 0.6, -1.6), String.valueOf(each.number), Lettering.NOTE.bold());
        }
        rows(drawing, rows, shankFoot + 8);
        return drawing;
    }

    private String description() {
        List<String> words = new ArrayList<>();
        parts.forEach(part -> words.add(part.text() + " means " + part.means()));
        return String.join("; ", words) + ".";
    }

    private List<Placed> place() {
        List<Placed> placed = new ArrayList<>();
        double x = 8;
        double y = SHANK_TOP + 6;
        for (int i = 0; i < parts.size(); i++) {
            double width = STAMP.width(parts.get(i).text()) + GAP;
            if (x + width > WIDTH - 4 && x > 8) {
                x = 8;
                y += LINE;
            }
            placed.add(new Placed(parts.get(i), i + 1, Spot.at(x, y)));
            x += width;
        }
        return placed;
    }

    /** Broken off at both ends: the rest of the tap goes on. */
    private static void shank(Drawing drawing, double foot) {
        Outline body = Outline.rectangle(Spot.at(3, SHANK_TOP), WIDTH - 6, foot - SHANK_TOP);
        drawing.fill(body, Fill.TINT);
        drawing.line(Spot.at(3, SHANK_TOP), Spot.at(WIDTH - 3, SHANK_TOP), Line.OUTLINE);
        drawing.line(Spot.at(3, foot), Spot.at(WIDTH - 3, foot), Line.OUTLINE);
        for (double x : new double[] {3, WIDTH - 3}) {
            double middle = (SHANK_TOP + foot) / 2;
            drawing.path(
                    Outline.through(List.of(
                            Spot.at(x, SHANK_TOP),
                            Spot.at(x, middle - 1.4),
                            Spot.at(x + 1, middle - 0.5),
                            Spot.at(x - 1, middle + 0.5),
                            Spot.at(x, middle + 1.4),
                            Spot.at(x, foot))),
                    Line.THIN);
        }
    }

    private static void rows(Drawing drawing, List<List<String>> rows, double top) {
        double y = top;
        for (int i = 0; i < rows.size(); i++) {
            drawing.text(Spot.at(2, y), String.valueOf(i + 1), NOTE.bold());
            for (String line : rows.get(i)) {
                drawing.text(Spot.at(TEXT_FROM, y), line, NOTE);
                y += 4.8;
            }
            y += 1.6;
        }
    }

    /** Broken at blanks into lines that fit. */
    private static List<String> wrapped(String text, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (NOTE.width(longer) > width && !line.isEmpty()) {
                lines.add(line.toString());
                line = new StringBuilder(word);
            } else {
                line = new StringBuilder(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}
