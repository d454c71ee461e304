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
import landfall.sheets.figure.Figures;
import landfall.sheets.thread.Contour;
import landfall.sheets.thread.Contour.Corner;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import org.jspecify.annotations.Nullable;

/**
 * Three wires in the thread, in the axial plane: two above, one below, the anvils flat upon them. Where the thread is
 * too thick for the view its middle is left out, behind a break, and the sizes over it are marked as broken.
 */
public final class WiresView {
    private static final Lettering NOTE = Lettering.NOTE.sized(Lettering.FIGURE.size());
    private static final double WIDTH = 94;
    private static final double LEFT = 16;
    private static final double LENGTH = 50;
    private static final double TOP = 10;
    private static final double ANVIL = 5;
    private static final double PITCHES = 3;
    private static final double TALLEST = 52;
    private static final double BREAK = 6;

    private final ScrewThread thread;
    private final Figures figures;
    private final Length wire;
    private final ThreeWires.@Nullable Measurement measured;
    private final Length pitchDiameter;
    private final Scale scale;
    private final double omitted;

    public WiresView(Gauging gauging, Figures figures) {
        this.thread = gauging.callOut().thread();
        this.figures = figures;
        this.wire = gauging.wire();
        this.measured = gauging.measured();
        this.pitchDiameter = measured == null ? thread.pitchDiameter() : measured.pitchDiameter();
        this.scale = Scale.fitting(thread.pitch().times(PITCHES), LENGTH);
        double tall = 2 * top() * scale.ratio();
        this.omitted = tall > TALLEST ? (tall - TALLEST) / scale.ratio() : 0;
    }

    public Scale scale() {
        return scale;
    }

    /** Radius of the middle of a wire that touches both flanks. */
    static double middle(ScrewThread thread, Length pitchDiameter, Length wire) {
        double A = thread.profile().flankAngle().rad();
        double apex = pitchDiameter.mm() / 2 - thread.pitch().mm() / 4 / Math.tan(A);
        return apex + wire.mm() / 2 / Math.sin(A);
    }

    /** Radius of the anvil's face. */
    private double top() {
        return middle(thread, pitchDiameter, wire) + wire.mm() / 2;
    }

    private double axisY() {
        return TOP + ANVIL + (top() - omitted / 2) * scale.ratio();
    }

    /** What is left out in the middle draws both halves nearer. */
    private Spot at(double z, double r) {
        double nearer = r - Math.signum(r) * omitted / 2;
        return Spot.at(LEFT + z * scale.ratio(), axisY() - nearer * scale.ratio());
    }

    public Drawing draw(String id, Ink ink) {
        double foot = 2 * (axisY() - TOP) + TOP;
        Drawing drawing =
                new Drawing(id, "Over three wires, " + scale.words(), description(), Spot.at(WIDTH, foot + 10), ink);
        drawing.text(
                Spot.at(0, 3.6), "Over three wires  %s  (%s)".formatted(scale.words(), figures.unit()), NOTE.bold());
        half(drawing, 1);
        half(drawing, -1);
        drawing.line(Spot.at(LEFT - 4, axisY()), Spot.at(LEFT + PITCHES * pitch() + 4, axisY()), Line.CENTRE);
        wires(drawing);
        dimensions(drawing);
        drawing.text(
                Spot.at(0, foot + 7),
                omitted > 0 ? "The middle is left out between the breaks." : "Wires of one size, from one set.",
                NOTE);
        return drawing;
    }

    private double pitch() {
        return thread.pitch().mm() * scale.ratio();
    }

    private String description() {
        String words = "Wire %s, pitch diameter %s".formatted(figures.length(wire), figures.length(pitchDiameter));
        return measured == null ? words + "." : words + ", over the wires " + figures.length(measured.over()) + ".";
    }

    private void half(Drawing drawing, int sign) {
        double P = thread.pitch().mm();
        double shift = sign > 0 ? 0 : P / 2;
        List<Spot> metal = new ArrayList<>();
        for (Corner corner : Contour.basic(thread, Side.EXTERNAL, pitchDiameter).between(shift, PITCHES * P + shift)) {
            metal.add(at(corner.z() - shift, sign * corner.r()));
        }
        double edge = omitted > 0 ? axisY() - sign * BREAK / 2 : axisY();
        Spot right = Spot.at(metal.get(metal.size() - 1).x(), edge);
        Spot left = Spot.at(metal.get(0).x(), edge);
        List<Spot> body = new ArrayList<>(metal);
        body.add(right);
        body.add(left);
        drawing.hatch(Outline.through(body).close(), 1.8, 135);
        drawing.path(Outline.through(metal), Line.OUTLINE);
        if (omitted > 0) {
            breakLine(drawing, left, right);
        }
    }

    private static void breakLine(Drawing drawing, Spot left, Spot right) {
        Spot middle = left.towards(right, 0.5);
        drawing.path(
                Outline.through(List.of(
                        left,
                        middle.plus(-2, 0),
                        middle.plus(-0.7, -1.4),
                        middle.plus(0.7, 1.4),
                        middle.plus(2, 0),
                        right)),
                Line.THIN);
    }

    /** Grooves of the upper half stand half a pitch from its crests; the lower half is half a pitch on. */
    private void wires(Drawing drawing) {
        double P = thread.pitch().mm();
        double r = middle(thread, pitchDiameter, wire);
        for (Spot middle : List.of(at(0.5 * P, r), at(1.5 * P, r), at(P, -r))) {
            double radius = scale.paper(wire) / 2;
            drawing.disc(middle, radius, Fill.SHEET)
                    .disc(middle, radius, Fill.TINT)
                    .circle(middle, radius, Line.OUTLINE);
            drawing.line(middle.plus(-1.2, 0), middle.plus(1.2, 0), Line.FINE);
            drawing.line(middle.plus(0, -1.2), middle.plus(0, 1.2), Line.FINE);
        }
        for (int sign : new int[] {1, -1}) {
            Spot face = at(0, sign * top());
            Spot corner = sign > 0 ? face.plus(0, -ANVIL) : face;
            Outline anvil = Outline.rectangle(corner, 2.1 * P * scale.ratio(), ANVIL);
            drawing.fill(anvil, Fill.SHEET).hatch(anvil, 1.4).path(anvil, Line.OUTLINE);
        }
    }

    private void dimensions(Drawing drawing) {
        Dimensions dimensions = new Dimensions(drawing);
        double P = thread.pitch().mm();
        double right = LEFT + PITCHES * pitch();
        double E = pitchDiameter.mm() / 2;
        dimensions.upright(at(0, -top()), at(0, top()), LEFT - 9, over());
        Spot upper = at(PITCHES * P, E);
        Spot lower = at(PITCHES * P, -E);
        dimensions.upright(lower, upper, right + 7, "E " + figures.bare(pitchDiameter));
        Spot tip = at(1.5 * P, middle(thread, pitchDiameter, wire)).polar(45, scale.paper(wire) / 2);
        dimensions.leader(tip, Spot.at(right + 1, TOP + 2), "W " + figures.bare(wire));
        if (omitted > 0) {
            broken(drawing, LEFT - 9);
            broken(drawing, right + 7);
        }
    }

    private String over() {
        return measured == null ? "M" : "M " + figures.bare(measured.over());
    }

    /** Two short strokes through a size that is drawn shorter than it is; clear of the figure in its middle. */
    private void broken(Drawing drawing, double x) {
        Spot middle = Spot.at(x, axisY() + 15);
        drawing.line(middle.plus(-1.6, 1), middle.plus(1.6, -0.2), Line.THIN);
        drawing.line(middle.plus(-1.6, 2.2), middle.plus(1.6, 1), Line.THIN);
    }
}
