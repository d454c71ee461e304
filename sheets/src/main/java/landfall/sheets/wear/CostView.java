// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.wear;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import landfall.cost.LimitChoice;
import landfall.cost.LimitPoint;
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
import org.jspecify.annotations.Nullable;

/**
 * What a hole costs against the wear limit at which taps are sharpened: the whole cost, of it what broken taps spoil,
 * the best limit with the band of its cost, and hatched the limits that are as good within 5 %.
 */
public final class CostView {
    public static final Spot SIZE = Spot.at(94, 78);

    private static final double LEFT = 18;
    private static final double TOP = 13;
    private static final double WIDE = 73;
    private static final double HIGH = 50;
    /** Dearer than this many times the best is not drawn. */
    private static final double DEAREST = 3;

    private final LimitChoice choice;
    private final String currency;
    private final Figures figures;
    private final Plot plot;

    public CostView(LimitChoice choice, String currency, Figures figures) {
        this.choice = choice;
        this.currency = currency;
        this.figures = figures;
        List<LimitPoint> curve = choice.curve();
        Axis across = new Axis(
                0,
                shown(curve.get(curve.size() - 1).limit()),
                Axis.upTo(shown(last()), 6).step());
        double best = choice.best().perHole().amount();
        Axis up = Axis.upTo(Math.max(choice.perHole().high() * 1.1, DEAREST * best), 5);
        this.plot = new Plot(Spot.at(LEFT, TOP), Spot.at(WIDE, HIGH), across, up);
    }

    private Length last() {
        return choice.curve().get(choice.curve().size() - 1).limit();
    }

    private double shown(@Nullable Length length) {
        if (length == null) {
            return 0;
        }
        return figures.isInch() ? length.inch() : length.mm();
    }

    public Drawing draw(String id, Ink ink) {
        Drawing drawing = new Drawing(id, "Cost of a hole against the wear limit", said(), SIZE, ink);
        String unit = currency.isEmpty() ? "money" : currency;
        drawing.text(Spot.at(0, 3.6), "A hole costs, " + unit, Lettering.NOTE.bold());
        alike(drawing);
        plot.frame(drawing);
        plot.ticksUp(drawing);
        plot.ticksAcross(drawing);
        drawing.path(Outline.through(line(point -> point.spoilt().amount())), Line.HIDDEN);
        drawing.path(Outline.through(line(point -> point.perHole().amount())), Line.OUTLINE);
        best(drawing);
        Spot foot = Spot.at(LEFT + WIDE / 2, SIZE.y() - 5.2);
        drawing.text(foot, "wear limit, " + figures.unit() + "; hatched: as good within 5 %", Lettering.NOTE.middle());
        drawing.text(foot.plus(0, 4.2), "dashed: of it, spoilt by broken taps", Lettering.NOTE.middle());
        return drawing;
    }

    /** The same in words. */
    public String said() {
        LimitPoint best = choice.best();
        return ("A hole is cheapest, %s (%s to %s), when taps are sharpened at a wear land of %s; from %s to %s it is"
                        + " as good within 5 %%. Of it, broken taps spoil %s.")
                .formatted(
                        money(best.perHole().amount()),
                        money(choice.perHole().low()),
                        money(choice.perHole().high()),
                        figures.length(best.limit()),
                        wear(choice.alike().min()),
                        wear(choice.alike().max()),
                        money(best.spoilt().amount()));
    }

    private String wear(@Nullable Length limit) {
        return limit == null ? "" : figures.length(limit);
    }

    private String money(double amount) {
        return (Figures.significant(amount, 2) + " " + currency).strip();
    }

    private List<Spot> line(ToDoubleFunction<LimitPoint> cost) {
        List<Spot> spots = new ArrayList<>();
        for (LimitPoint point : choice.curve()) {
            double amount = cost.applyAsDouble(point);
            if (amount <= plot.up().to()) {
                spots.add(plot.at(shown(point.limit()), amount));
            }
        }
        return spots;
    }

    private void alike(Drawing drawing) {
        double from = plot.at(shown(choice.alike().min()), 0).x();
        double to = Math.max(from + 0.8, plot.at(shown(choice.alike().max()), 0).x());
        drawing.hatch(Outline.rectangle(Spot.at(from, TOP), to - from, HIGH), 3);
    }

    private void best(Drawing drawing) {
        LimitPoint best = choice.best();
        double limit = shown(best.limit());
        Spot at = plot.at(limit, best.perHole().amount());
        drawing.line(plot.at(limit, 0), plot.at(limit, plot.up().to()), Line.WANTED);
        Spot low = plot.at(limit, choice.perHole().low());
        Spot high = plot.at(limit, choice.perHole().high());
        for (Spot end : List.of(low, high)) {
            drawing.line(end.plus(-1.4, 0), end.plus(1.4, 0), Line.OUTLINE);
        }
        drawing.disc(at, 1.1, Fill.SHEET).circle(at, 1.1, Line.OUTLINE);
        String words = "best at " + figures.length(best.limit()) + ": "
                + money(best.perHole().amount()) + " (" + money(choice.perHole().low()) + " to "
                + money(choice.perHole().high()) + ")";
        Lettering lettering = Lettering.NOTE.bold();
        double half = lettering.width(words) / 2;
        double x = Math.max(half, Math.min(SIZE.x() - half, at.x()));
        drawing.text(Spot.at(x, TOP - 2), words, lettering.middle(), Tone.ACCENT);
    }
}
