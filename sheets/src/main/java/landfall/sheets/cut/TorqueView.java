// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import landfall.cut.CurvePoint;
import landfall.cut.CurvePoint.Phase;
import landfall.cut.CutForecast;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.sheets.draw.Dimensions;
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
 * Torque over the way of the tap since it touched: up as the chamfer enters, on with the depth, down as it leaves a
 * through hole or back from the bottom of a blind one. Always as a band; above it the band in which the tap breaks, and
 * between them the margin.
 */
public final class TorqueView {
    public static final Spot SIZE = Spot.at(88, 71);

    private static final double LEFT = 13;
    private static final double TOP = 9;
    private static final double WIDE = 72;
    private static final double HIGH = 50;
    private static final double BACK = 4;

    private final CutForecast cut;
    private final Figures figures;
    private final double end;
    private final Plot plot;

    public TorqueView(CutForecast cut, Figures figures) {
        this.cut = cut;
        this.figures = figures;
        this.end = curve().get(curve().size() - 1).way().mm();
        Band breaking = cut.load().strength().breaking();
        Band full = cut.load().torque().full();
        double most = Math.max(breaking.high(), full.high()) * 1.06;
        double least = -Math.max(cut.load().torque().reversal().high() * 1.1, most * 0.09);
        Axis up = new Axis(least, most, Axis.upTo(most, 5).step());
        Axis across = Axis.upTo(shown(end) * (1 + 2 * BACK / WIDE), 6);
        this.plot = new Plot(Spot.at(LEFT, TOP), Spot.at(WIDE, HIGH), across, up);
    }

    private double shown(double mm) {
        return figures.isInch() ? mm / Length.MM_PER_INCH : mm;
    }

    public Drawing draw(String id, Ink ink) {
        Drawing drawing = new Drawing(id, "Torque over the way of the tap", description(), SIZE, ink);
        String unit = figures.isInch() ? "Torque, N\u00b7m  (1 N\u00b7m = 8.85 in\u00b7lb)" : "Torque, N\u00b7m";
        drawing.text(Spot.at(0, 3.6), unit, Lettering.NOTE.bold());
        breaking(drawing);
        plot.frame(drawing);
        plot.ticksUp(drawing);
        plot.ticksAcross(drawing);
        drawing.line(plot.left(0), plot.right(0), Line.THIN);
        drawing.text(
                Spot.at(LEFT + WIDE / 2, SIZE.y() - 1.2),
                "way of the tap since it touched, " + figures.unit(),
                Lettering.NOTE.middle());
        band(drawing);
        reversal(drawing);
        margin(drawing);
        return drawing;
    }

    private String description() {
        Band full = cut.load().torque().full();
        Band breaking = cut.load().strength().breaking();
        return "Torque %s N\u00b7m (%s to %s) in full cut; the %s breaks at %s to %s N\u00b7m. Margin %s (%s to %s)."
                .formatted(
                        one(full.expected()),
                        one(full.low()),
                        one(full.high()),
                        cut.load().strength().governing().part().words(),
                        one(breaking.low()),
                        one(breaking.high()),
                        one(cut.load().margin().expected()),
                        one(cut.load().margin().low()),
                        one(cut.load().margin().high()));
    }

    private static String one(double value) {
        return Figures.significant(value, 2);
    }

    private static String words(Band band) {
        return one(band.low()) + " to " + one(band.high());
    }

    private void breaking(Drawing drawing) {
        Band band = cut.load().strength().breaking();
        Spot top = plot.left(band.high());
        Spot foot = plot.left(band.low());
        Outline strip = Outline.rectangle(top, WIDE, foot.y() - top.y());
        drawing.hatch(strip, 2);
        drawing.line(plot.left(band.low()), plot.right(band.low()), Line.ALARM);
        drawing.line(plot.left(band.expected()), plot.right(band.expected()), Line.HIDDEN);
        String part = cut.load().strength().governing().part().words();
        String words = "breaks (" + part + "): " + words(band);
        label(drawing, Spot.at(LEFT + 2, (top.y() + foot.y()) / 2 + Lettering.NOTE.capHeight() / 2), words, Tone.RUST);
    }

    /** A text on its own patch of sheet. */
    private static void label(Drawing drawing, Spot at, String words, Tone tone) {
        Lettering lettering = Lettering.NOTE.bold();
        drawing.fill(
                Outline.rectangle(at.plus(-0.8, -lettering.capHeight() - 0.9), lettering.width(words) + 1.6, 4.2),
                Fill.SHEET);
        drawing.text(at, words, lettering, tone);
    }

    private void band(Drawing drawing) {
        List<Spot> around = new ArrayList<>(line(Band::high));
        List<Spot> low = line(Band::low);
        for (int i = low.size() - 1; i >= 0; i--) {
            around.add(low.get(i));
        }
        drawing.fill(Outline.through(around).close(), Fill.STEP_4);
        drawing.path(Outline.through(line(Band::high)), Line.FINE).path(Outline.through(low), Line.FINE);
        drawing.path(Outline.through(line(Band::expected)), Line.OUTLINE);
    }

    private List<CurvePoint> curve() {
        return cut.load().torque().curve();
    }

    private List<Spot> line(ToDoubleFunction<Band> which) {
        List<Spot> spots = new ArrayList<>();
        spots.add(plot.at(0, 0));
        for (CurvePoint point : curve()) {
            if (point.phase() != Phase.REVERSING) {
                spots.add(plot.at(shown(point.way().mm()), which.applyAsDouble(point.torque())));
            }
        }
        return spots;
    }

    /** Starting back: a bar under the line of nought, at the end of the way. A tap that is through turns back free. */
    private void reversal(Drawing drawing) {
        if (curve().stream().noneMatch(point -> point.phase() == Phase.REVERSING)) {
            return;
        }
        Band back = cut.load().torque().reversal();
        double x = plot.at(shown(end), 0).x();
        Spot top = Spot.at(x, plot.left(-back.low()).y());
        double foot = plot.left(-back.high()).y();
        drawing.line(plot.at(shown(end), cut.load().torque().full().high()), Spot.at(x, foot), Line.THIN);
        drawing.fill(Outline.rectangle(top, BACK, foot - top.y()), Fill.STEP_4);
        drawing.path(Outline.rectangle(top, BACK, foot - top.y()), Line.FINE);
        double middle = plot.left(-back.expected()).y();
        drawing.line(Spot.at(x, middle), Spot.at(x + BACK, middle), Line.OUTLINE);
        double y = (plot.left(0).y() + plot.left(plot.up().from()).y()) / 2 + Lettering.NOTE.capHeight() / 2;
        drawing.text(Spot.at(x - 1.2, y), "starting back " + words(back), Lettering.NOTE.end());
    }

    /** Way at which the thread is as deep as it is to be: the torque is greatest. */
    private double deepest() {
        return curve().stream()
                .filter(point -> point.phase() == Phase.CUTTING)
                .mapToDouble(point -> point.way().mm())
                .max()
                .orElseThrow();
    }

    private void margin(Drawing drawing) {
        Band full = cut.load().torque().full();
        Band breaking = cut.load().strength().breaking();
        Band margin = cut.load().margin();
        double x = plot.at(shown(deepest()), 0).x();
        double top = plot.left(breaking.low()).y();
        double foot = plot.left(full.high()).y();
        Spot text = Spot.at(LEFT + 2, foot - 1.4);
        String torque = "full cut: " + words(full);
        boolean apart = foot - top > 4;
        if (margin.low() >= 1 && apart) {
            Dimensions arrows = new Dimensions(drawing);
            drawing.line(Spot.at(x, top), Spot.at(x, foot), Line.WANTED);
            arrows.arrowhead(Spot.at(x, top), 90);
            arrows.arrowhead(Spot.at(x, foot), 270);
        }
        String words = margin.low() < 1 ? "bands meet: margin " + words(margin) : "margin " + words(margin);
        if (apart && foot - top > 11) {
            double start = x - 2.4 - Lettering.NOTE.bold().width(words);
            label(drawing, Spot.at(start, (top + foot) / 2 + 1), words, Tone.ACCENT);
            label(drawing, text, torque, Tone.INK);
        } else {
            String all = torque + "; " + words;
            drawing.text(
                    Spot.at(LEFT + WIDE, TOP - 1.4), all, Lettering.NOTE.bold().end());
        }
    }
}
