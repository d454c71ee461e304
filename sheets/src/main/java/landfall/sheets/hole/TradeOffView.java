// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import landfall.hole.Drilled;
import landfall.hole.HoleChoice;
import landfall.hole.TradeOff;
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

/**
 * What a share of thread gives and costs: above, how long an engagement breaks the screw before it strips; below, the
 * torque of tapping against that at the wanted share. One line through both: the drill that was chosen.
 */
public final class TradeOffView {
    public static final Spot SIZE = Spot.at(88, 79);

    private static final double LEFT = 15;
    private static final double WIDE = 69;
    private static final double HIGH = 21;
    private static final double UPPER_Y = 16;
    private static final double LOWER_Y = 45;

    private final List<TradeOff> curve;
    private final Chosen chosen;
    private final Figures figures;
    private final Plot engagement;
    private final Plot torque;

    /** The drill chosen; its share by its own diameter, as a fraction. */
    record Chosen(String drill, double share) {}

    /** Of a choice that has a curve. */
    public static TradeOffView of(HoleChoice choice, Figures figures) {
        Drilled drilled = choice.tools().drill();
        return new TradeOffView(choice.curve(), new Chosen(drilled.drill().called(), drilled.share()), figures);
    }

    private TradeOffView(List<TradeOff> curve, Chosen chosen, Figures figures) {
        this.curve = List.copyOf(curve);
        this.chosen = chosen;
        this.figures = figures;
        double least = Math.min(50, 100 * chosen.share);
        double most = Math.max(80, 100 * chosen.share);
        Axis shares = Axis.around(Math.floor(least / 10) * 10, most, 6);
        this.engagement = plot(UPPER_Y, shares, row -> shown(row.engagement()));
        this.torque = plot(LOWER_Y, shares, TradeOff::torque);
    }

    private Plot plot(double y, Axis shares, ToDoubleFunction<TradeOff> value) {
        double most = curve.stream().mapToDouble(value).max().orElseThrow();
        Axis up = Axis.around(0, most * 1.05, 3);
        return new Plot(Spot.at(LEFT, y), Spot.at(WIDE, HIGH), shares, up);
    }

    private double shown(Length length) {
        return figures.isInch() ? length.inch() : length.mm();
    }

    public Drawing draw(String id, Ink ink) {
        Drawing drawing = new Drawing(id, "Share of thread against strength and torque", description(), SIZE, ink);
        drawing.text(Spot.at(0, 3.6), "Share of thread: what it gives and costs", Lettering.NOTE.bold());
        part(drawing, engagement, "engagement to break the screw, " + figures.unit(), row -> shown(row.engagement()));
        part(drawing, torque, "tapping torque, 1 at the wanted share", TradeOff::torque);
        torque.ticksAcross(drawing);
        drawing.text(
                Spot.at(LEFT + WIDE / 2, SIZE.y() - 1.4), "share of the full thread depth, %", Lettering.NOTE.middle());
        choice(drawing);
        return drawing;
    }

    private String description() {
        TradeOff first = curve.get(0);
        TradeOff last = curve.get(curve.size() - 1);
        return ("From %s to %s %% of thread the engagement that breaks the screw falls from %s to %s and the torque"
                        + " rises from %s to %s times that at the wanted share. Chosen: drill %s, %s %%.")
                .formatted(
                        Figures.number(100 * first.share(), 0),
                        Figures.number(100 * last.share(), 0),
                        figures.coarse(first.engagement()),
                        figures.coarse(last.engagement()),
                        Figures.number(first.torque(), 2),
                        Figures.number(last.torque(), 2),
                        chosen.drill,
                        Figures.number(100 * chosen.share, 1));
    }

    private void part(Drawing drawing, Plot plot, String title, ToDoubleFunction<TradeOff> value) {
        drawing.text(plot.corner().plus(0, -1.6), title, Lettering.NOTE);
        plot.frame(drawing);
        plot.ticksUp(drawing);
        List<Spot> spots = new ArrayList<>();
        for (TradeOff row : curve) {
            spots.add(plot.at(100 * row.share(), value.applyAsDouble(row)));
        }
        drawing.path(Outline.through(spots), Line.OUTLINE);
        spots.forEach(spot -> drawing.disc(spot, 0.7, Fill.SOLID));
    }

    private void choice(Drawing drawing) {
        double share = 100 * chosen.share;
        Spot top = Spot.at(engagement.at(share, 0).x(), UPPER_Y - 6);
        Spot foot = torque.at(share, 0);
        drawing.line(engagement.at(share, engagement.up().to()), engagement.at(share, 0), Line.WANTED);
        drawing.line(torque.at(share, torque.up().to()), foot, Line.WANTED);
        String words = "drill " + chosen.drill + ", " + Figures.number(share, 1) + " %";
        double half = Lettering.NOTE.bold().width(words) / 2;
        double x = Math.max(half, Math.min(SIZE.x() - half, top.x()));
        drawing.text(Spot.at(x, top.y() - 0.8), words, Lettering.NOTE.bold().middle(), Tone.ACCENT);
    }
}
