// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.gauge;

import java.util.ArrayList;
import java.util.List;
import landfall.gauge.Gauging;
import landfall.gauge.ThreeWires;
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
import landfall.sheets.draw.Stacked;
import landfall.sheets.figure.Figures;
import landfall.sheets.thread.Contour;
import landfall.sheets.thread.Contour.Corner;
import landfall.thread.ScrewThread;
import landfall.thread.Side;

/**
 * One groove with the wires that fit it: the best touches the flanks at the pitch line, the least is flush with the
 * crests, the greatest still touches the flanks. The wire in use is drawn thick.
 */
public final class GrooveView {
    private static final Lettering NOTE = Lettering.NOTE.sized(Lettering.FIGURE.size());
    private static final double WIDTH = 94;
    private static final double WINDOW = 54;
    private static final double TOP = 9;
    private static final double BAND = 6;

    private final ScrewThread thread;
    private final Figures figures;
    private final ThreeWires.Wires wires;
    private final Length wire;
    private final Scale scale;

    public GrooveView(Gauging gauging, Figures figures) {
        this.thread = gauging.callOut().thread();
        this.figures = figures;
        this.wires = gauging.wires();
        this.wire = gauging.wire();
        this.scale = Scale.fitting(thread.pitch().times(1.5), WINDOW);
    }

    public Scale scale() {
        return scale;
    }

    private double highest() {
        double greatest = WiresView.middle(thread, thread.pitchDiameter(), wires.greatest())
                + wires.greatest().mm() / 2;
        return Math.max(greatest, thread.major().mm() / 2);
    }

    private Spot at(double z, double r) {
        return Spot.at(1 + WINDOW / 2 + z * scale.ratio(), TOP + (highest() - r) * scale.ratio());
    }

    public Drawing draw(String id, Ink ink) {
        double foot = at(0, thread.minorDiameter().mm() / 2).y() + BAND;
        Drawing drawing =
                new Drawing(id, "Wires that fit, " + scale.words(), description(), Spot.at(WIDTH, foot + 7), ink);
        drawing.text(Spot.at(0, 3.6), "Wires that fit  %s  (%s)".formatted(scale.words(), figures.unit()), NOTE.bold());
        body(drawing, foot);
        circle(drawing, wires.greatest(), Line.PHANTOM);
        circle(drawing, wires.least(), Line.PHANTOM);
        circle(drawing, wires.best(), Line.FINE);
        circle(drawing, wire, Line.OUTLINE);
        labels(drawing, foot);
        drawing.text(Spot.at(0, foot + 5), "Thick: the wire in use. Each touches both flanks.", NOTE);
        return drawing;
    }

    private String description() {
        return "Best wire %s, least %s, greatest %s, in use %s."
                .formatted(
                        figures.length(wires.best()),
                        figures.length(wires.least()),
                        figures.length(wires.greatest()),
                        figures.length(wire));
    }

    private void body(Drawing drawing, double foot) {
        double P = thread.pitch().mm();
        List<Spot> metal = new ArrayList<>();
        for (Corner corner :
                Contour.basic(thread, Side.EXTERNAL, thread.pitchDiameter()).between(-0.25 * P, 1.25 * P)) {
            metal.add(at(corner.z() - P / 2, corner.r()));
        }
        List<Spot> body = new ArrayList<>(metal);
        body.add(Spot.at(metal.get(metal.size() - 1).x(), foot));
        body.add(Spot.at(metal.get(0).x(), foot));
        drawing.hatch(Outline.through(body).close(), 1.8, 135);
        drawing.path(Outline.through(metal), Line.OUTLINE);
        double r = thread.pitchDiameter().mm() / 2;
        drawing.line(at(-0.75 * P, r).plus(-1, 0), at(0.75 * P, r).plus(1, 0), Line.CENTRE);
    }

    private Spot middle(Length size) {
        return at(0, WiresView.middle(thread, thread.pitchDiameter(), size));
    }

    private void circle(Drawing drawing, Length size, Line line) {
        if (line == Line.OUTLINE) {
            drawing.disc(middle(size), scale.paper(size) / 2, Fill.TINT);
        }
        drawing.circle(middle(size), scale.paper(size) / 2, line);
    }

    private void labels(Drawing drawing, double foot) {
        List<Length> sizes = List.of(wires.greatest(), wires.best(), wires.least(), wire);
        List<String> names = List.of("greatest ", "best ", "least ", "in use ");
        List<Double> wanted = new ArrayList<>();
        List<Spot> tips = new ArrayList<>();
        for (Length size : sizes) {
            Spot tip = middle(size).polar(20, scale.paper(size) / 2);
            tips.add(tip);
            wanted.add(tip.y());
        }
        List<Double> places = Stacked.apart(wanted, 5, TOP, foot);
        double x = 1 + WINDOW + 3;
        for (int i = 0; i < sizes.size(); i++) {
            Spot knee = Spot.at(x, places.get(i));
            drawing.line(tips.get(i), knee, Line.THIN);
            new Dimensions(drawing).arrowhead(tips.get(i), knee.direction(tips.get(i)));
            drawing.text(knee.plus(0.8, 1.25), names.get(i) + figures.bare(sizes.get(i)), NOTE);
        }
    }
}
