// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.tap;

import java.util.List;
import landfall.choice.Reach;
import landfall.quantity.Length;
import landfall.sheets.draw.Dimensions;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Scale;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;
import landfall.tap.blank.TapBlank;
import landfall.thread.ScrewThread;

/**
 * A usual blank from the side, point to the left: overall length, thread, square, shank, and how deep it reaches. Short
 * dashes along it are the hole's minor diameter: a shank inside them follows into the hole.
 *
 * <p>Thread as ISO 6410 has it, with a chamfer of four pitches. To 3/8 in the point is a male centre, over that both
 * ends have centre holes (common practice, no source); their size is not listed and stands for the kind alone.
 */
public final class BlankView {
    public static final double WIDTH = 94;

    private static final Lettering NOTE = Lettering.NOTE.sized(Lettering.FIGURE.size());
    private static final double ROOM = 86;
    private static final double LEFT = 4;
    private static final double TOP = 24;
    private static final double TALLEST = 34;
    private static final double CHAMFER_PITCHES = 4;
    private static final Length LAST_MALE_CENTRE = Length.ofInch(3.0 / 8);

    private final ScrewThread thread;
    private final Reach reach;
    private final TapBlank blank;
    private final Figures figures;
    private final Scale scale;

    public BlankView(ScrewThread thread, Reach reach, Figures figures) {
        this.thread = thread;
        this.reach = reach;
        this.blank = reach.blank();
        this.figures = figures;
        this.scale = Scale.fitting(blank.lengths().overall(), ROOM).orSmaller(Scale.fitting(thickest(), TALLEST));
    }

    private Length thickest() {
        return thread.major().compareTo(blank.shank()) > 0 ? thread.major() : blank.shank();
    }

    public Scale scale() {
        return scale;
    }

    private double axisY() {
        return TOP + scale.paper(thickest()) / 2;
    }

    private double foot() {
        return axisY() + scale.paper(thickest()) / 2;
    }

    private Spot at(Length along, Length across) {
        return Spot.at(LEFT + scale.paper(along), axisY() - scale.paper(across));
    }

    private static Length half(Length diameter) {
        return diameter.times(0.5);
    }

    public Drawing draw(String id, Ink ink) {
        Drawing drawing = new Drawing(id, "Blank, " + scale.words(), description(), Spot.at(WIDTH, foot() + 37), ink);
        drawing.text(
                Spot.at(0, 3.6),
                "Blank, %s  %s  (%s)".formatted(blank.list(), scale.words(), figures.unit()),
                NOTE.bold());
        body(drawing);
        hole(drawing);
        centres(drawing);
        dimensions(drawing);
        words(drawing);
        return drawing;
    }

    private String description() {
        TapBlank.Lengths size = blank.lengths();
        return "%s: %s overall, thread %s, square %s long and %s across, shank %s. %s"
                .formatted(
                        blank.list(),
                        figures.length(size.overall()),
                        figures.length(size.thread()),
                        figures.length(size.square()),
                        figures.length(blank.square()),
                        figures.length(blank.shank()),
                        enters());
    }

    private String enters() {
        return reach.shankEnters() ? "The shank follows into the hole." : "The shank stops at the hole.";
    }

    private Length squareFrom() {
        return blank.lengths().overall().minus(blank.lengths().square());
    }

    private Length chamfer() {
        return thread.pitch().times(CHAMFER_PITCHES);
    }

    private void body(Drawing drawing) {
        Length R = half(thread.major());
        Length root = half(thread.minorDiameter());
        Length shank = half(blank.shank());
        Length flat = half(blank.square());
        Length none = Length.ZERO;
        Length end = blank.lengths().thread();
        Length all = blank.lengths().overall();
        List<Spot> upper = List.of(
                at(none, root),
                at(chamfer(), R),
                at(end, R),
                at(end, shank),
                at(squareFrom(), shank),
                at(squareFrom(), flat),
                at(all, flat));
        Outline outline = Outline.from(upper.get(0));
        upper.subList(1, upper.size()).forEach(outline::lineTo);
        for (int i = upper.size() - 1; i >= 0; i--) {
            outline.lineTo(Spot.at(upper.get(i).x(), 2 * axisY() - upper.get(i).y()));
        }
        outline.close();
        drawing.fill(outline, Fill.TINT).path(outline, Line.OUTLINE);
        drawing.line(at(end, R), at(end, R.times(-1)), Line.OUTLINE);
        drawing.line(at(squareFrom(), shank), at(squareFrom(), shank.times(-1)), Line.OUTLINE);
        for (int side : new int[] {1, -1}) {
            drawing.line(at(none, root.times(side)), at(end, root.times(side)), Line.THIN);
        }
        // the square's flat seen from the front: its two diagonals
        drawing.line(at(squareFrom(), flat), at(all, flat.times(-1)), Line.THIN);
        drawing.line(at(squareFrom(), flat.times(-1)), at(all, flat), Line.THIN);
        drawing.line(Spot.at(LEFT - 3.5, axisY()), Spot.at(at(all, none).x() + 3.5, axisY()), Line.CENTRE);
    }

    /** As far as it reaches, the hole that it must pass. */
    private void hole(Drawing drawing) {
        Length minor = half(thread.minorDiameter());
        for (int side : new int[] {1, -1}) {
            drawing.line(
                    at(blank.lengths().thread(), minor.times(side)), at(squareFrom(), minor.times(side)), Line.HIDDEN);
        }
    }

    private boolean hasMaleCentre() {
        return thread.major().compareTo(LAST_MALE_CENTRE) <= 0;
    }

    private void centres(Drawing drawing) {
        double r = scale.paper(half(thread.minorDiameter())) * 0.5;
        Spot point = at(Length.ZERO, Length.ZERO);
        Spot end = at(blank.lengths().overall(), Length.ZERO);
        if (hasMaleCentre()) {
            Outline cone = Outline.through(List.of(point.plus(0, -r), point.plus(-r, 0), point.plus(0, r)));
            drawing.path(cone, Line.OUTLINE);
            return;
        }
        drawing.path(
                Outline.through(List.of(point.plus(0, -r), point.plus(1.7 * r, 0), point.plus(0, r))), Line.HIDDEN);
        drawing.path(Outline.through(List.of(end.plus(0, -r), end.plus(-1.7 * r, 0), end.plus(0, r))), Line.HIDDEN);
    }

    private void dimensions(Drawing drawing) {
        Dimensions dimensions = new Dimensions(drawing);
        Length none = Length.ZERO;
        Spot point = at(none, half(thread.minorDiameter()));
        Spot end = at(blank.lengths().overall(), half(blank.square()));
        dimensions.across(point, end, 9.5, figures.bare(blank.lengths().overall()));
        dimensions.across(
                point,
                at(blank.lengths().thread(), half(thread.major())),
                17.5,
                "thread " + figures.bare(blank.lengths().thread()));
        Spot below = at(none, half(thread.minorDiameter()).times(-1));
        dimensions.across(
                below,
                at(reach.depth(), half(blank.shank()).times(-1)),
                foot() + 8,
                "reach " + figures.bare(reach.depth()));
    }

    private void words(Drawing drawing) {
        double y = foot() + 14;
        drawing.text(
                Spot.at(0, y),
                "shank %s, square %s, %s long"
                        .formatted(
                                figures.diameter(blank.shank()),
                                figures.bare(blank.square()),
                                figures.bare(blank.lengths().square())),
                Lettering.FIGURE.anchored(Lettering.Anchor.START));
        drawing.text(Spot.at(0, y + 5), enters() + " Dashes: minor " + figures.diameter(thread.minorDiameter()), NOTE);
        drawing.text(
                Spot.at(0, y + 10),
                hasMaleCentre()
                        ? "Male centre at the point (common practice)."
                        : "Centre holes in both ends (common practice).",
                NOTE);
        drawing.text(
                Spot.at(0, y + 15),
                blank.read() ? "No neck is listed: none is drawn." : "Lengths from memory; no neck is listed.",
                NOTE);
        drawing.text(Spot.at(0, y + 20), "Chamfer drawn four threads long.", NOTE);
    }
}
