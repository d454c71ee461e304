// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.spread;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import landfall.cards.answer.Unit;
import landfall.cards.spread.AlongPoint;
import landfall.cards.spread.SpreadSetup;
import landfall.cards.spread.Varied;
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

/** A result along a field while everything else varies: the mean in its hatched band of two standard deviations. */
public final class AlongView {
    public static final Spot SIZE = Spot.at(120, 76);

    private static final double LEFT = 16;
    private static final double TOP = 12;
    private static final double WIDE = 100;
    private static final double HIGH = 50;

    private final Watched watched;
    private final Varied varied;
    private final List<AlongPoint> points;
    private final UnitSystem units;

    /**
     * @param result which of the watched results
     * @param input which of the fields that vary
     */
    public AlongView(SpreadSetup setup, Summary summary, int result, int input) {
        this.watched = setup.watched().get(result);
        this.varied = setup.varied().get(input);
        this.points = AlongPoint.of(watched, varied, summary.along(result, input));
        this.units = setup.nominal().units();
    }

    /** Whether there is a curve to draw: two steps at least, of a field that is no word, and a result that moves. */
    public boolean isThere() {
        return points.size() > 1 && !varied.isWords() && high() > low();
    }

    private double low() {
        return points.stream().mapToDouble(at -> y(at, -2)).min().orElse(0);
    }

    private double high() {
        return points.stream().mapToDouble(at -> y(at, 2)).max().orElse(0);
    }

    private double x(AlongPoint at) {
        return varied.unit().in(units, at.value());
    }

    private double y(AlongPoint at, double deviations) {
        return watched.unit()
                .in(units, at.moments().mean() + deviations * at.moments().deviation());
    }

    public Drawing draw(String id, Ink ink) {
        Drawing drawing = new Drawing(id, watched.path() + " along " + varied.path(), said(), SIZE, ink);
        List<AlongPoint> sorted =
                points.stream().sorted((a, b) -> Double.compare(x(a), x(b))).toList();
        Axis across = Axis.around(x(sorted.get(0)), x(sorted.get(sorted.size() - 1)), 8);
        Plot plot = new Plot(Spot.at(LEFT, TOP), Spot.at(WIDE, HIGH), across, Axis.around(low(), high(), 6));
        drawing.text(Spot.at(0, 3.6), watched.path() + sign(watched.unit()), Lettering.NOTE.bold());
        List<Spot> band = new ArrayList<>();
        sorted.forEach(at -> band.add(plot.at(x(at), y(at, 2))));
        List<AlongPoint> back = new ArrayList<>(sorted);
        Collections.reverse(back);
        back.forEach(at -> band.add(plot.at(x(at), y(at, -2))));
        drawing.hatch(Outline.through(band).close(), 2);
        plot.frame(drawing);
        plot.ticksUp(drawing);
        plot.ticksAcross(drawing);
        drawing.path(
                Outline.through(
                        sorted.stream().map(at -> plot.at(x(at), y(at, 0))).toList()),
                Line.OUTLINE);
        limits(drawing, plot);
        String foot = varied.path() + sign(varied.unit()) + "; hatched: two standard deviations";
        drawing.text(Spot.at(LEFT + WIDE / 2, SIZE.y() - 3), foot, Lettering.NOTE.middle());
        return drawing;
    }

    private void limits(Drawing drawing, Plot plot) {
        for (double limit :
                new double[] {watched.within().low(), watched.within().high()}) {
            double value = watched.unit().in(units, limit);
            if (value >= plot.up().from() && value <= plot.up().to()) {
                drawing.line(plot.left(value), plot.right(value), Line.WANTED);
            }
        }
        if (watched.within().isSet()) {
            drawing.text(Spot.at(0, TOP - 3), "limits: " + watched.typed(), Lettering.NOTE, Tone.ACCENT);
        }
    }

    private String sign(Unit unit) {
        return unit == Unit.PURE ? "" : ", " + unit.sign(units);
    }

    /** The same in words. */
    public String said() {
        return "%s along %s: the mean in its band of two standard deviations while all else varies."
                .formatted(watched.path(), varied.path());
    }
}
