// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.wear;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Spot;
import landfall.sheets.draw.Tone;
import landfall.sheets.figure.Figures;
import landfall.sheets.plot.Axis;
import landfall.sheets.plot.Plot;
import landfall.wear.Due;
import landfall.wear.WearCurve;

/**
 * The wear land of a tap over the holes since it was sharp: the expected line in its hatched band, the limit at which
 * it is due, where it stands now, and what was measured.
 */
public final class WearView {
    public static final Spot SIZE = Spot.at(94, 74);

    private static final double LEFT = 14;
    private static final double TOP = 9;
    private static final double WIDE = 75;
    private static final double HIGH = 52;
    /** Beyond this share of the limit nothing is known of wear; drawn further only where it was measured. */
    private static final double FARTHEST = 1.5;

    private final WearCurve curve;
    private final Figures figures;
    private final Plot plot;

    public WearView(WearCurve curve, Figures figures) {
        this.curve = curve;
        this.figures = figures;
        double most = curve.points().get(curve.points().size() - 1).holes();
        Axis across = Axis.upTo(most, 6);
        double seen = curve.seen().stream()
                .mapToDouble(one -> shown(one.land()))
                .max()
                .orElse(0);
        Axis up = Axis.upTo(Math.max(shown(curve.limit()) * FARTHEST, seen * 1.1), 5);
        this.plot = new Plot(Spot.at(LEFT, TOP), Spot.at(WIDE, HIGH), across, up);
    }

    private double shown(Length length) {
        return figures.isInch() ? length.inch() : length.mm();
    }

    public Drawing draw(String id, Ink ink) {
        Drawing drawing = new Drawing(id, "Wear over the holes since it was sharp", said(), SIZE, ink);
        drawing.text(Spot.at(0, 3.6), "Wear land, " + figures.unit(), Lettering.NOTE.bold());
        drawing.hatch(Outline.through(around()).close(), 2);
        drawing.path(Outline.through(line(WearCurve.Point::low)), Line.FINE);
        drawing.path(Outline.through(line(WearCurve.Point::high)), Line.FINE);
        drawing.path(Outline.through(line(WearCurve.Point::expected)), Line.OUTLINE);
        plot.frame(drawing);
        plot.ticksUp(drawing);
        plot.ticksAcross(drawing);
        limit(drawing);
        now(drawing);
        for (WearCurve.Seen seen : curve.seen()) {
            measured(drawing, seen);
        }
        drawing.text(
                Spot.at(LEFT + WIDE / 2, SIZE.y() - 4.6),
                "holes since it was sharp; hatched: eight in ten",
                Lettering.NOTE.middle());
        drawing.text(Spot.at(LEFT, SIZE.y() - 0.8), curve.seen().isEmpty() ? "" : "cross: as measured", Lettering.NOTE);
        return drawing;
    }

    /** The same in words. */
    public String said() {
        Due due = curve.due();
        return ("The tap is due at a wear land of %s, after %s holes (%s to %s in eight of ten); it has cut %s since it"
                        + " was sharp.")
                .formatted(
                        figures.length(curve.limit()),
                        count(due.life().expected()),
                        count(due.life().low()),
                        count(due.life().high()),
                        count(due.used().expected()));
    }

    private static String count(double holes) {
        return Figures.plain(holes, 0);
    }

    private List<Spot> around() {
        List<Spot> spots = new ArrayList<>(line(WearCurve.Point::high));
        Spot end = spots.get(spots.size() - 1);
        List<Spot> back = line(WearCurve.Point::low);
        Spot foot = back.get(back.size() - 1);
        if (end.x() < foot.x() && end.y() <= TOP + 1e-6) {
            spots.add(Spot.at(foot.x(), TOP));
        }
        for (int i = back.size() - 1; i >= 0; i--) {
            spots.add(back.get(i));
        }
        return spots;
    }

    /** A line from the first point on, cut off where it leaves the frame. */
    private List<Spot> line(Function<WearCurve.Point, Length> which) {
        List<Spot> spots = new ArrayList<>();
        double most = plot.up().to();
        double last = 0;
        double lastHoles = 0;
        for (WearCurve.Point point : curve.points()) {
            double wear = shown(which.apply(point));
            if (wear > most) {
                double share = (most - last) / (wear - last);
                spots.add(plot.at(lastHoles + share * (point.holes() - lastHoles), most));
                return spots;
            }
            spots.add(plot.at(point.holes(), wear));
            last = wear;
            lastHoles = point.holes();
        }
        return spots;
    }

    private void limit(Drawing drawing) {
        double limit = shown(curve.limit());
        drawing.line(plot.left(limit), plot.right(limit), Line.ALARM);
        Band life = curve.due().life();
        String words =
                "due: %s (%s to %s) holes".formatted(count(life.expected()), count(life.low()), count(life.high()));
        label(drawing, plot.right(limit).plus(-1, -1.2), words, Tone.RUST);
    }

    private void now(Drawing drawing) {
        double used = curve.due().used().expected();
        Spot foot = plot.at(used, 0);
        drawing.line(foot, plot.at(used, plot.up().to()), Line.WANTED);
        String words = "now " + count(used);
        boolean right = foot.x() > LEFT + WIDE - 2 - Lettering.NOTE.bold().width(words);
        Lettering lettering = right ? Lettering.NOTE.bold().end() : Lettering.NOTE.bold();
        drawing.text(Spot.at(foot.x() + (right ? -1 : 1), TOP - 1.4), words, lettering, Tone.ACCENT);
    }

    private void measured(Drawing drawing, WearCurve.Seen seen) {
        Spot at = plot.at(seen.holes(), shown(seen.land()));
        drawing.line(at.plus(-1.5, -1.5), at.plus(1.5, 1.5), Line.OUTLINE);
        drawing.line(at.plus(-1.5, 1.5), at.plus(1.5, -1.5), Line.OUTLINE);
    }

    /** A text on its own patch of sheet, ending here. */
    private static void label(Drawing drawing, Spot end, String words, Tone tone) {
        Lettering lettering = Lettering.NOTE.bold();
        double wide = lettering.width(words);
        drawing.fill(
                Outline.rectangle(end.plus(-wide - 0.8, -lettering.capHeight() - 0.9), wide + 1.6, 4.2), Fill.SHEET);
        drawing.text(end, words, lettering.end(), tone);
    }
}
