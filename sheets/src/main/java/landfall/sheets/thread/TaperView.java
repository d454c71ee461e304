// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.thread;

import static landfall.sheets.thread.Letters.NOTE;

import java.util.ArrayList;
import java.util.List;
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
import landfall.sheets.thread.Contour.Corner;
import landfall.thread.LimitsOfSize;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.Taper;

/**
 * The walls of pipe and fitting where a taper thread is hand-tight, the pipe's small end to the left, with the planes
 * where the thread is made and gauged. Taper and thread are to scale; the axis is brought nearer, behind a break. The
 * face of the fitting stands in the gauge plane; what the gauge may be out by is the strip about it.
 */
public final class TaperView {
    private static final double WIDTH = 94;
    private static final double LENGTH = 78;
    private static final double LEFT = 9;
    private static final double TOP = 15;
    private static final double WALL = 8;
    private static final double AT = 74;
    private static final double ROW = 6.2;

    private final Taper taper;
    private final ScrewThread thread;
    private final Figures figures;
    private final Scale scale;
    private final Mating mating;
    private final double first;
    private final double last;
    private final double reference;

    public TaperView(LimitsOfSize limits, Figures figures) {
        this.taper = limits.taper()
                .orElseThrow(() -> new IllegalArgumentException(
                        "not a taper thread: " + limits.callOut().normal()));
        this.thread = limits.callOut().thread();
        this.figures = figures;
        this.mating = new Mating(limits);
        double P = thread.pitch().mm();
        this.first = Math.min(0, taper.planes().get(0).at().mm()) - P;
        this.last = taper.planes().get(taper.planes().size() - 1).at().mm() + 2.5 * P;
        this.scale = Scale.fitting(Length.ofMm(last - first), LENGTH);
        this.reference = taper.turns().handTight().mm();
    }

    public Scale scale() {
        return scale;
    }

    private double depth() {
        return thread.major().minus(thread.minorDiameter()).mm() / 2;
    }

    /** Height on paper of the pitch line in the gauge plane. */
    private double pitchY() {
        return TOP + WALL + (depth() / 2 + (last - reference) * slope()) * scale.ratio() + 2;
    }

    private double slope() {
        return taper.perLength() / 2;
    }

    private double axisY() {
        return pitchY() + scale.ratio() * depth() + WALL + 10;
    }

    private double rowsY() {
        return axisY() + 14 + ROW * (isAmerican() ? 2 : 1);
    }

    public Drawing draw(String id, Ink ink) {
        double height = rowsY() + 4.8 * taper.planes().size() + 12;
        Drawing drawing =
                new Drawing(id, "Planes of the taper, " + scale.words(), description(), Spot.at(WIDTH, height), ink);
        drawing.text(
                Spot.at(0, 3.6),
                "Pipe in fitting, hand-tight  %s  (%s)".formatted(scale.words(), figures.unit()),
                NOTE.bold());
        fitting(drawing);
        pipe(drawing);
        planes(drawing);
        axis(drawing);
        lengths(drawing);
        rows(drawing);
        return drawing;
    }

    private String description() {
        List<String> words = new ArrayList<>();
        taper.planes()
                .forEach(plane -> words.add("%s at %s, pitch diameter %s"
                        .formatted(plane.name(), figures.bare(plane.at()), figures.bare(plane.pitch()))));
        return "Taper of %s on the diameter. %s.".formatted("1 in 16", String.join("; ", words));
    }

    /** A place on the wall: z from the small end, h over the pitch line, which rises with the taper. */
    private Spot at(double z, double h) {
        double rise = (z - reference) * slope() + h;
        return Spot.at(LEFT + (z - first) * scale.ratio(), pitchY() - rise * scale.ratio());
    }

    private List<Spot> line(Contour contour, double from, double to) {
        double pitchLine = thread.pitchDiameter().mm() / 2;
        List<Spot> line = new ArrayList<>();
        for (Corner corner : contour.between(from, to)) {
            line.add(at(corner.z(), corner.r() - pitchLine));
        }
        return line;
    }

    private void fitting(Drawing drawing) {
        List<Spot> metal = new ArrayList<>(line(mating.most(Side.INTERNAL), first, reference));
        double top = metal.stream().mapToDouble(Spot::y).min().orElseThrow() - WALL;
        metal.add(Spot.at(metal.get(metal.size() - 1).x(), top));
        metal.add(Spot.at(metal.get(0).x(), top));
        Outline body = Outline.through(metal).close();
        drawing.hatch(body, 1.8).path(body, Line.OUTLINE);
        name(drawing, Spot.at(metal.get(0).x() + 3, top + 4.4), "fitting");
    }

    private void pipe(Drawing drawing) {
        List<Spot> metal = new ArrayList<>(line(mating.most(Side.EXTERNAL), 0, last));
        double foot = metal.stream().mapToDouble(Spot::y).max().orElseThrow() + WALL;
        metal.add(Spot.at(metal.get(metal.size() - 1).x(), foot));
        metal.add(Spot.at(metal.get(0).x(), foot));
        Outline body = Outline.through(metal).close();
        drawing.fill(body, Fill.SHEET).hatch(body, 1.8, 135).path(body, Line.OUTLINE);
        name(drawing, Spot.at(metal.get(0).x() + 3, foot - 1.8), "pipe");
    }

    private static void name(Drawing drawing, Spot base, String text) {
        double width = NOTE.bold().width(text);
        drawing.fill(Outline.rectangle(base.plus(-0.6, -3.2), width + 1.2, 4.2), Fill.SHEET);
        drawing.text(base, text, NOTE.bold());
    }

    private static String letter(int plane) {
        return String.valueOf((char) ('A' + plane));
    }

    private void planes(Drawing drawing) {
        double turn = thread.pitch().mm();
        double plus = taper.turns().minus() * turn;
        double minus = taper.turns().plus() * turn;
        for (double z : new double[] {reference - minus, reference + plus}) {
            drawing.line(Spot.at(at(z, 0).x(), TOP - 1), Spot.at(at(z, 0).x(), axisY() - 8), Line.HIDDEN);
        }
        for (int i = 0; i < taper.planes().size(); i++) {
            double x = at(taper.planes().get(i).at().mm(), 0).x();
            drawing.line(Spot.at(x, TOP - 3), Spot.at(x, axisY() + 3), Line.PHANTOM);
            drawing.circle(Spot.at(x, TOP - 6), 3, Line.THIN);
            drawing.text(Spot.at(x, TOP - 6 + Lettering.FIGURE.capHeight() / 2), letter(i), Lettering.FIGURE);
        }
    }

    /** Nearer than it is: two short strokes say so. */
    private void axis(Drawing drawing) {
        double right = LEFT + (last - first) * scale.ratio();
        drawing.line(Spot.at(LEFT - 4, axisY()), Spot.at(right + 4, axisY()), Line.CENTRE);
        double x = right + 2;
        double y = axisY() - 4;
        drawing.line(Spot.at(x, axisY()), Spot.at(x, y + 0.9), Line.THIN);
        drawing.line(Spot.at(x - 1.6, y + 1.5), Spot.at(x + 1.6, y + 0.3), Line.THIN);
        drawing.line(Spot.at(x - 1.6, y - 0.3), Spot.at(x + 1.6, y - 1.5), Line.THIN);
        drawing.line(Spot.at(x, y - 0.9), Spot.at(x, y - 4), Line.THIN);
    }

    /** As the trade names them: L1, L2 and L3 of the American thread, gauge length and useful length of ISO 7. */
    private void lengths(Drawing drawing) {
        List<Taper.Plane> planes = taper.planes();
        Taper.Plane end = planes.get(planes.size() - 1);
        length(drawing, Length.ZERO, taper.turns().handTight(), isAmerican() ? "L1 " : "gauge length ", 0);
        length(drawing, Length.ZERO, end.at(), isAmerican() ? "L2 " : "useful ", 1);
        if (isAmerican()) {
            length(drawing, planes.get(0).at(), Length.ZERO, "L3 ", 2);
        }
    }

    private void length(Drawing drawing, Length from, Length to, String name, int row) {
        Spot a = Spot.at(at(from.mm(), 0).x(), axisY());
        Spot b = Spot.at(at(to.mm(), 0).x(), axisY());
        new Dimensions(drawing).across(a, b, axisY() + 7 + ROW * row, name + figures.bare(to.minus(from)));
    }

    private boolean isAmerican() {
        return taper.planes().get(0).at().mm() < 0;
    }

    private void rows(Drawing drawing) {
        double y = rowsY();
        drawing.text(Spot.at(0, y), "plane", NOTE);
        drawing.text(Spot.at(AT, y), "from small end", NOTE.end());
        drawing.text(Spot.at(WIDTH, y), "pitch Ø", NOTE.end());
        y += 5;
        for (int i = 0; i < taper.planes().size(); i++) {
            Taper.Plane plane = taper.planes().get(i);
            drawing.text(Spot.at(0, y), letter(i), NOTE.bold());
            drawing.text(Spot.at(4.5, y), plane.name(), NOTE);
            drawing.text(Spot.at(AT, y), figures.bare(plane.at()), Lettering.FIGURE.end());
            drawing.text(Spot.at(WIDTH, y), figures.diameter(plane.pitch()), Lettering.FIGURE.end());
            y += 4.8;
        }
        Taper.Turns turns = taper.turns();
        drawing.text(
                Spot.at(0, y + 0.5),
                "By hand %s, then %s with the wrench."
                        .formatted(figures.bare(turns.handTight()), figures.bare(turns.wrench())),
                NOTE);
        drawing.text(
                Spot.at(0, y + 5.1),
                "Short dashes: gauge %s turn deeper or %s out."
                        .formatted(Figures.plain(turns.plus(), 2), Figures.plain(turns.minus(), 2)),
                NOTE);
    }
}
