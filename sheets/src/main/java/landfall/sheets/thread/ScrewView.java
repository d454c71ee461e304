// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.thread;

import static landfall.sheets.thread.Letters.NOTE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import landfall.quantity.Length;
import landfall.sheets.draw.Dimensions;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Scale;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;
import landfall.sheets.thread.Contour.Corner;
import landfall.thread.Hand;
import landfall.thread.LimitsOfSize;
import landfall.thread.ScrewThread;
import landfall.thread.Side;

/**
 * The screw from the side, and the nut in section about it: how coarse the thread is, how many starts it has, which way
 * it winds. A turn of the crest leans over half a lead from the upper outline to the lower: for a right-hand thread
 * with its axis level, from the left above to the right below. Crests closer than 2 mm on paper are drawn as ISO 6410
 * has it, by a thin line at the minor diameter.
 */
public final class ScrewView {
    private static final double WIDTH = 94;
    private static final double LENGTH = 62;
    private static final double LEFT = 14;
    private static final double ROOM = 34;
    private static final double TOP = 17;
    private static final double WALL = 7;
    private static final double CLOSEST = 2;
    private static final double NUT_FROM = 0.5;

    private final Mating mating;
    private final ScrewThread thread;
    private final Figures figures;
    private final Scale scale;
    private final double axisY;
    private final double length;

    public ScrewView(LimitsOfSize limits, Figures figures) {
        this.mating = new Mating(limits);
        this.thread = mating.thread();
        this.figures = figures;
        Scale byHeight = Scale.fitting(thread.major(), ROOM);
        Scale byTurns = Scale.fitting(thread.lead().perTurn().times(2.5), LENGTH);
        this.scale = byHeight.orSmaller(byTurns);
        this.axisY = TOP + WALL + scale.paper(thread.major()) / 2;
        this.length = LENGTH / scale.ratio();
    }

    public Scale scale() {
        return scale;
    }

    private double height() {
        return 2 * (axisY - TOP) + TOP;
    }

    public Drawing draw(String id, Ink ink) {
        Drawing drawing =
                new Drawing(id, "Screw and nut, " + scale.words(), description(), Spot.at(WIDTH, height() + 12), ink);
        drawing.text(
                Spot.at(0, 3.6),
                "%s  %s  (%s)".formatted(mating.isHoleOnly() ? "Hole" : "Screw and nut", scale.words(), figures.unit()),
                NOTE.bold());
        nut(drawing);
        if (!mating.isHoleOnly()) {
            screw(drawing);
        }
        drawing.line(Spot.at(LEFT - 5, axisY), Spot.at(LEFT + LENGTH + 6, axisY), Line.CENTRE);
        dimensions(drawing);
        return drawing;
    }

    private String description() {
        int starts = thread.lead().starts();
        return "Seen from the side: %s-hand thread, %d start%s, advance %s in one turn."
                .formatted(
                        thread.hand().word(),
                        starts,
                        starts == 1 ? "" : "s",
                        figures.length(thread.lead().perTurn()));
    }

    private boolean isSimplified() {
        return scale.paper(thread.pitch()) < CLOSEST;
    }

    private Spot at(double z, double r) {
        return Spot.at(LEFT + z * scale.ratio(), axisY - r * scale.ratio());
    }

    /** How far a crest has moved along between the upper and the lower outline; negative for left hand. */
    private double lean() {
        double half = thread.lead().perTurn().mm() / 2;
        return thread.hand() == Hand.LEFT ? -half : half;
    }

    private List<Spot> outline(Contour contour, double from, double to, boolean upper) {
        double shift = upper ? 0 : lean();
        Function<Corner, Spot> place = upper ? c -> at(c.z(), c.r()) : c -> at(c.z() + shift, -c.r());
        return contour.between(from - shift, to - shift).stream().map(place).toList();
    }

    private void screw(Drawing drawing) {
        Contour contour = mating.most(Side.EXTERNAL);
        List<Spot> upper = isSimplified() ? level(contour.heights().peak()) : outline(contour, 0, length, true);
        List<Spot> lower = isSimplified() ? level(-contour.heights().peak()) : outline(contour, 0, length, false);
        List<Spot> all = new ArrayList<>(upper);
        for (int i = lower.size() - 1; i >= 0; i--) {
            all.add(lower.get(i));
        }
        Outline outline = Outline.through(all).close();
        drawing.fill(outline, Fill.SHEET).fill(outline, Fill.TINT).path(outline, Line.OUTLINE);
        if (isSimplified()) {
            double root = contour.heights().valley();
            drawing.line(at(0, root), at(length, root), Line.THIN).line(at(0, -root), at(length, -root), Line.THIN);
        } else {
            turns(drawing, contour);
        }
    }

    private List<Spot> level(double r) {
        return List.of(at(0, r), at(length, r));
    }

    /** Crests and roots across the screw; the first start thick, the other starts thin. */
    private void turns(Drawing drawing, Contour contour) {
        double P = thread.pitch().mm();
        int starts = thread.lead().starts();
        int first = (int) Math.floor(-Math.abs(lean()) / P) - 1;
        for (int k = first; k * P < length + Math.abs(lean()) + P; k++) {
            double flat = contour.peakFlat() / 2;
            Line line = Math.floorMod(k, starts) == 0 ? Line.OUTLINE : Line.THIN;
            across(drawing, k * P - flat, contour.heights().peak(), line);
            if (flat * scale.ratio() > 0.3) {
                across(drawing, k * P + flat, contour.heights().peak(), line);
            }
            across(drawing, k * P + P / 2, contour.heights().valley(), Line.THIN);
        }
    }

    /** One line from the upper outline to the lower, cut off at the ends of what is shown. */
    private void across(Drawing drawing, double z, double r, Line line) {
        double from = Math.max(0, lean() >= 0 ? -z / lean() : (length - z) / lean());
        double to = Math.min(1, lean() >= 0 ? (length - z) / lean() : -z / lean());
        if (to - from > 0.02) {
            drawing.line(along(z, r, from), along(z, r, to), line);
        }
    }

    private Spot along(double z, double r, double share) {
        return at(z + share * lean(), r * (1 - 2 * share));
    }

    private void nut(Drawing drawing) {
        double from = mating.isHoleOnly() ? 0 : NUT_FROM * length;
        Contour contour = mating.most(Side.INTERNAL);
        for (boolean upper : new boolean[] {true, false}) {
            double edge = upper ? axisY - wall() : axisY + wall();
            List<Spot> bore = isSimplified()
                    ? List.of(
                            at(from, (upper ? 1 : -1) * contour.heights().valley()),
                            at(length, (upper ? 1 : -1) * contour.heights().valley()))
                    : outline(contour, from, length, upper);
            List<Spot> metal = new ArrayList<>(bore);
            metal.add(Spot.at(bore.get(bore.size() - 1).x(), edge));
            metal.add(Spot.at(bore.get(0).x(), edge));
            Outline body = Outline.through(metal).close();
            drawing.hatch(body, 1.8).path(body, Line.OUTLINE);
            if (isSimplified() && mating.isHoleOnly()) {
                double root = (upper ? 1 : -1) * contour.heights().peak();
                drawing.line(at(from, root), at(length, root), Line.THIN);
            }
        }
    }

    private double wall() {
        return scale.paper(thread.major()) / 2 + WALL;
    }

    private void dimensions(Drawing drawing) {
        Dimensions dimensions = new Dimensions(drawing);
        double R = thread.major().mm() / 2;
        double r = thread.minorDiameter().mm() / 2;
        if (!mating.isHoleOnly()) {
            dimensions.upright(at(0, -R), at(0, R), LEFT - 7, figures.diameter(thread.major()));
        }
        dimensions.upright(at(length, -r), at(length, r), LEFT + LENGTH + 10, figures.diameter(thread.minorDiameter()));
        lead(drawing, dimensions);
        String hand = thread.hand() == Hand.LEFT ? "left hand" : "right hand";
        int starts = thread.lead().starts();
        drawing.text(
                Spot.at(0, height() + 5),
                starts == 1 ? hand + ", one start" : hand + ", %d starts; the first is drawn thick".formatted(starts),
                NOTE);
        drawing.text(
                Spot.at(0, height() + 9.6),
                isSimplified() ? "basic diameters; thin line at the minor: crests too close" : "basic diameters",
                NOTE);
    }

    private void lead(Drawing drawing, Dimensions dimensions) {
        if (isSimplified() || mating.isHoleOnly()) {
            return;
        }
        double P = thread.pitch().mm();
        double L = thread.lead().perTurn().mm();
        double crest = mating.most(Side.EXTERNAL).heights().peak();
        boolean several = thread.lead().starts() > 1;
        Length shown = several ? thread.lead().perTurn() : thread.pitch();
        String text = (several ? "lead " : "P ") + figures.bare(Length.ofMm(shown.mm()));
        double from = several ? 0 : P;
        dimensions.across(at(from, crest), at(from + (several ? L : P), crest), TOP - 4, text);
    }
}
