// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet of paper being drawn on; {@link #svg()} is the finished drawing.
 *
 * <p>Every drawing carries a title and a description, read out instead of it by a screen reader. The id must be unique
 * in the page that the drawing stands in.
 */
public final class Drawing {
    private final String id;
    private final String title;
    private final String description;
    private final Spot size;
    private final Ink ink;
    private final StringBuilder body = new StringBuilder();
    private final List<TextBox> texts = new ArrayList<>();

    public Drawing(String id, String title, String description, Spot size, Ink ink) {
        this.id = id;
        this.title = title;
        this.description = description;
        this.size = size;
        this.ink = ink;
    }

    public Drawing line(Spot from, Spot to, Line line) {
        return path(Outline.from(from).lineTo(to), line);
    }

    public Drawing path(Outline outline, Line line) {
        body.append("<path ")
                .append(line.attributes(ink))
                .append(" d=\"")
                .append(outline.written())
                .append("\"/>\n");
        return this;
    }

    public Drawing circle(Spot centre, double radius, Line line) {
        body.append("<circle ").append(line.attributes(ink)).append(round(centre, radius));
        return this;
    }

    public Drawing disc(Spot centre, double radius, Fill fill) {
        body.append("<circle ").append(fill.attributes(ink)).append(round(centre, radius));
        return this;
    }

    private static String round(Spot centre, double radius) {
        return " cx=\"%s\" cy=\"%s\" r=\"%s\"/>%n"
                .formatted(Coordinate.text(centre.x()), Coordinate.text(centre.y()), Coordinate.text(radius))
                .replace("\r", "");
    }

    public Drawing fill(Outline outline, Fill fill) {
        return fill(List.of(outline), fill);
    }

    /** Several closed outlines filled as one: one that runs round the other way is a hole in those around it. */
    public Drawing fill(List<Outline> outlines, Fill fill) {
        StringBuilder written = new StringBuilder();
        for (Outline outline : outlines) {
            requireClosed(outline);
            written.append(outline.written());
        }
        if (!written.isEmpty()) {
            body.append("<path ")
                    .append(fill.attributes(ink))
                    .append(" d=\"")
                    .append(written)
                    .append("\"/>\n");
        }
        return this;
    }

    /** Hatched at 45 degrees, lines so far apart on paper. */
    public Drawing hatch(Outline outline, double spacing) {
        return hatch(outline, spacing, 45);
    }

    /** Hatched in a direction: two parts that touch are hatched in two. */
    public Drawing hatch(Outline outline, double spacing, double directionDeg) {
        requireClosed(outline);
        String path = new Hatching(directionDeg, spacing).within(outline);
        if (!path.isEmpty()) {
            body.append("<path ")
                    .append(Line.HATCH.attributes(ink))
                    .append(" d=\"")
                    .append(path)
                    .append("\"/>\n");
        }
        return this;
    }

    private static void requireClosed(Outline outline) {
        if (!outline.isClosed()) {
            throw new IllegalArgumentException("only a closed outline can be filled: " + outline.written());
        }
    }

    /** A text with its spot on the base line. */
    public Drawing text(Spot at, String text, Lettering lettering) {
        return text(at, text, lettering, Tone.INK);
    }

    public Drawing text(Spot at, String text, Lettering lettering, Tone tone) {
        texts.add(TextBox.of(text, at, lettering));
        String x = Coordinate.text(at.x());
        String y = Coordinate.text(at.y());
        body.append("<text x=\"").append(x).append("\" y=\"").append(y).append("\" font-size=\"");
        body.append(Coordinate.text(lettering.size())).append('"');
        if (lettering.face() == Typeface.BOLD) {
            body.append(" font-weight=\"bold\"");
        }
        if (lettering.anchor() != Lettering.Anchor.START) {
            body.append(" text-anchor=\"").append(lettering.anchor().word).append('"');
        }
        if (lettering.turnDeg() != 0) {
            String turn = Coordinate.text(-lettering.turnDeg());
            body.append(" transform=\"rotate(%s %s %s)\"".formatted(turn, x, y));
        }
        body.append(" fill=\"")
                .append(ink.colour(tone))
                .append("\">")
                .append(escape(text))
                .append("</text>\n");
        return this;
    }

    /** What is drawn until {@link #endPart()} is one part, which a script of the page can turn about a spot. */
    public Drawing beginPart(String name, Spot pivot) {
        body.append("<g data-part=\"%s\" data-pivot=\"%s %s\">%n"
                .formatted(escape(name), Coordinate.text(pivot.x()), Coordinate.text(pivot.y()))
                .replace("\r", ""));
        return this;
    }

    public Drawing endPart() {
        body.append("</g>\n");
        return this;
    }

    public Spot size() {
        return size;
    }

    /** The boxes of all texts written so far. */
    public List<TextBox> texts() {
        return List.copyOf(texts);
    }

    /** The drawing as one {@code svg} element, to stand in a page or in a file of its own. */
    public String svg() {
        String width = Coordinate.text(size.x());
        String height = Coordinate.text(size.y());
        return """
                <svg xmlns="http://www.w3.org/2000/svg" version="1.1" class="lf-drawing" role="img" \
                aria-labelledby="%1$s-title %1$s-desc" width="%2$smm" height="%3$smm" viewBox="0 0 %2$s %3$s" \
                font-family="%6$s">
                <title id="%1$s-title">%4$s</title>
                <desc id="%1$s-desc">%5$s</desc>
                %7$s</svg>
                """.formatted(id, width, height, escape(title), escape(description), families(), body);
    }

    /** A page may lack the bundled font; a PDF always has it, and its renderer takes the first name only. */
    private String families() {
        return ink == Ink.PAPER ? "'" + Typeface.FAMILY + "'" : "'" + Typeface.FAMILY + "', system-ui, sans-serif";
    }

    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
