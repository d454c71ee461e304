// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.spread;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Unit;
import landfall.cards.spread.Places;
import landfall.cards.spread.SpreadSetup;
import landfall.cards.spread.Watched;
import landfall.quantity.UnitSystem;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Spot;
import landfall.sheets.draw.Tone;
import landfall.sheets.plot.Axis;
import landfall.sheets.plot.Plot;
import landfall.spread.Summary;
import landfall.spread.Tally;

/** How a result spreads: its histogram, the limits, and the quantiles that hold nine of ten. */
public final class HistogramView {
    public static final Spot SIZE = Spot.at(120, 70);

    private static final int BARS = 60;
    private static final double LEFT = 4;
    private static final double TOP = 12;
    private static final double WIDE = 112;
    private static final double HIGH = 42;
    /** The tallest bar leaves so much above it. */
    private static final double HEADROOM = 1.1;

    private final Watched watched;
    private final Tally tally;
    private final UnitSystem units;
    private final Places places;

    /** @param result which of the watched results */
    public HistogramView(SpreadSetup setup, Summary summary, int result) {
        this.watched = setup.watched().get(result);
        this.tally = summary.results().get(result);
        this.units = setup.nominal().units();
        this.places = Places.of(tally.moments(), watched.unit(), units);
    }

    /** Whether there is a spread to draw. */
    public boolean isThere() {
        return tally.moments().count() > 1 && tally.quantile(0.999) > tally.quantile(0.001);
    }

    public Drawing draw(String id, Ink ink) {
        Drawing drawing = new Drawing(id, "Spread of " + watched.path(), said(), SIZE, ink);
        double low = tally.quantile(0.001);
        double high = tally.quantile(0.999);
        double width = (high - low) / BARS;
        List<Double> counts = new ArrayList<>();
        double most = 1;
        for (int bar = 0; bar < BARS; bar++) {
            double count = tally.between(low + bar * width, low + (bar + 1) * width);
            counts.add(count);
            most = Math.max(most, count);
        }
        Axis around = Axis.around(shown(low), shown(high), 8);
        Plot plot = new Plot(
                Spot.at(LEFT, TOP), Spot.at(WIDE, HIGH), around, new Axis(0, most * HEADROOM, most * HEADROOM));
        drawing.text(Spot.at(0, 3.6), watched.path() + sign(), Lettering.NOTE.bold());
        plot.frame(drawing);
        plot.ticksAcross(drawing);
        drawing.hatch(Outline.through(stairs(plot, counts, low, width)).close(), 2);
        drawing.path(Outline.through(stairs(plot, counts, low, width)), Line.OUTLINE);
        quantiles(drawing, plot);
        limits(drawing, plot);
        return drawing;
    }

    private List<Spot> stairs(Plot plot, List<Double> counts, double low, double width) {
        List<Spot> spots = new ArrayList<>();
        spots.add(plot.at(shown(low), 0));
        for (int bar = 0; bar < counts.size(); bar++) {
            spots.add(plot.at(shown(low + bar * width), counts.get(bar)));
            spots.add(plot.at(shown(low + (bar + 1) * width), counts.get(bar)));
        }
        spots.add(plot.at(shown(low + counts.size() * width), 0));
        return spots;
    }

    private void quantiles(Drawing drawing, Plot plot) {
        double foot = TOP + HIGH + 9;
        double from = plot.at(shown(tally.quantile(0.05)), 0).x();
        double to = plot.at(shown(tally.quantile(0.95)), 0).x();
        drawing.line(Spot.at(from, foot), Spot.at(to, foot), Line.OUTLINE);
        for (double end : new double[] {from, to}) {
            drawing.line(Spot.at(end, foot - 1.2), Spot.at(end, foot + 1.2), Line.OUTLINE);
        }
        String words = "nine of ten: " + places.of(tally.quantile(0.05)) + " to " + places.of(tally.quantile(0.95));
        drawing.text(Spot.at(SIZE.x() / 2, foot + 5), words, Lettering.NOTE.middle());
    }

    private void limits(Drawing drawing, Plot plot) {
        for (double limit :
                new double[] {watched.within().low(), watched.within().high()}) {
            double value = shown(limit);
            if (value >= plot.across().from() && value <= plot.across().to()) {
                drawing.line(plot.at(value, 0), plot.at(value, plot.up().to()), Line.WANTED);
            }
        }
        if (watched.within().isSet()) {
            drawing.text(Spot.at(0, TOP - 3), "limits: " + watched.typed(), Lettering.NOTE, Tone.ACCENT);
        }
    }

    private double shown(double held) {
        return watched.unit().in(units, held);
    }

    private String sign() {
        return watched.unit() == Unit.PURE ? "" : ", " + watched.unit().sign(units);
    }

    /** The same in words. */
    public String said() {
        return "%s: mean %s, nine of ten from %s to %s%s."
                .formatted(
                        watched.path(),
                        places.of(tally.moments().mean()),
                        places.of(tally.quantile(0.05)),
                        places.of(tally.quantile(0.95)),
                        sign().replace(",", ""));
    }
}
