// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.grind.Place;
import landfall.sheets.dial.Letters;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Scale;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;
import landfall.sheets.grind.FluteOutline.Point;
import landfall.thread.Hand;

/**
 * The tap seen from its point, an edge under the wheel: lands and flutes, the fall of the chamfer at the point, the
 * wheel's arc, the way to turn, where each stylus stands round the tap, and round it the cam's stroke: rise, then the
 * angle that the cam has to come back and the angle that it needs.
 */
public final class EndView {
    public static final Spot SIZE = Spot.at(90, 86);

    private static final double ROOM = 21;
    private static final Lettering SMALL = Lettering.NOTE.sized(3);

    private final TapShape tap;
    private final Stroke stroke;
    private final Figures figures;
    private final Scale scale;
    private final double sense;
    /** The rings stand on the side where the land lies, and need the room there. */
    private final Spot axis;

    public EndView(TapShape tap, Stroke stroke, Figures figures) {
        this.tap = tap;
        this.stroke = stroke;
        this.figures = figures;
        this.scale = Scale.fitting(tap.majorRadius(), ROOM);
        this.sense = tap.thread().hand() == Hand.RIGHT ? 1 : -1;
        this.axis = Spot.at(SIZE.x() / 2 - sense * 9, 42);
    }

    public Scale scale() {
        return scale;
    }

    public Drawing draw(String id, Ink ink) {
        String title = "Tap seen from its point, " + scale.words();
        Drawing drawing = new Drawing(id, title, description(), SIZE, ink);
        drawing.text(Spot.at(0, 3.6), "Seen from the point  " + scale.words(), Lettering.NOTE.bold());
        wheel(drawing);
        body(drawing);
        front(drawing);
        centreLines(drawing);
        double base = tap.majorRadius().mm() * scale.ratio();
        new StrokeRings(drawing, stroke, axis, sense, figures).draw(base, each());
        turning(drawing);
        styli(drawing);
        return drawing;
    }

    private String description() {
        return ("%d flutes, %s hand: to cut it turns %s as seen from the point. Land %s. The cam rises from %s to %s"
                        + " behind the edge. Angle to come back: needed %s, had %s, %s.")
                .formatted(
                        tap.flutes(),
                        tap.thread().hand().word(),
                        senseWord(),
                        figures.angle(tap.land()),
                        figures.angle(stroke.lobe().riseStart()),
                        Figures.number(stroke.riseEndDeg(), 1) + "\u00b0",
                        figures.angle(stroke.gap().needed()),
                        figures.angle(stroke.gap().have()),
                        stroke.gap().clear() ? "clear" : "not clear");
    }

    private String senseWord() {
        return sense > 0 ? "counter-clockwise" : "clockwise";
    }

    /** Direction on paper of a land angle counted back from the edge that stands under the wheel. */
    private double direction(double landDeg) {
        return 90 - sense * landDeg;
    }

    private Spot at(double radiusMm, double landDeg) {
        return axis.polar(direction(landDeg), radiusMm * scale.ratio());
    }

    private Spot at(Point point) {
        return axis.plus(sense * point.x() * scale.ratio(), -point.y() * scale.ratio());
    }

    private double each() {
        return 360.0 / tap.flutes();
    }

    private Optional<List<Point>> flute() {
        TapShape.FluteShape shape = tap.flute();
        if (shape == null) {
            return Optional.empty();
        }
        return new FluteOutline(tap.majorRadius().mm(), each() - tap.land().deg(), shape).outline();
    }

    private void body(Drawing drawing) {
        double major = tap.majorRadius().mm();
        Optional<List<Point>> flute = flute();
        if (flute.isEmpty()) {
            lands(drawing, major);
            return;
        }
        Outline outline = Outline.from(at(major, 0));
        for (int i = 0; i < tap.flutes(); i++) {
            outline.arc(axis, -sense * tap.land().deg());
            double turn = -(i + 1) * each();
            List<Point> points = new ArrayList<>(flute.get());
            java.util.Collections.reverse(points);
            points.forEach(point -> outline.lineTo(at(point.turned(turn))));
        }
        outline.close();
        drawing.fill(outline, Fill.TINT).path(outline, Line.OUTLINE);
    }

    /**
     * The card does not tell the whole flute: the lands alone, their sides broken off. The face stands at its rake and
     * the core circle is drawn when they are known; else a circle only says where the sides break off.
     */
    private void lands(Drawing drawing, double major) {
        TapShape.FluteShape shape = tap.flute();
        double core = shape == null ? major * 0.6 : shape.core().mm() / 2;
        double foot = core + (major - core) * (shape == null ? 0 : 0.4);
        double offset = shape == null || shape.rake() == null
                ? 0
                : major * Math.sin(shape.rake().rad());
        double hook = Math.toDegrees(Math.asin(Math.min(1, offset / foot)) - Math.asin(offset / major));
        for (int i = 0; i < tap.flutes(); i++) {
            double edge = i * each();
            double heel = edge + tap.land().deg();
            Outline land = Outline.from(at(foot, edge + hook))
                    .lineTo(at(major, edge))
                    .arc(axis, -sense * tap.land().deg())
                    .lineTo(at(foot, heel));
            drawing.path(land, Line.OUTLINE);
        }
        drawing.circle(axis, core * scale.ratio(), Line.PHANTOM);
    }

    /**
     * How far behind the edge a straight face lies at a smaller radius: asin(x/r) - asin(x/R), with x = R sin(rake).
     * Nought where the rake is not known.
     */
    private double hookDeg(double radius) {
        TapShape.FluteShape shape = tap.flute();
        if (shape == null || shape.rake() == null) {
            return 0;
        }
        double sine = Math.sin(shape.rake().rad());
        double offset = Math.min(1, tap.majorRadius().mm() * sine / radius);
        return Math.toDegrees(Math.asin(offset)) - shape.rake().deg();
    }

    /** The chamfer's small end on every land: point radius at the edge, falling towards the heel. */
    private void front(Drawing drawing) {
        int steps = 60;
        Optional<List<Point>> flute = flute();
        for (int land = 0; land < tap.flutes(); land++) {
            List<Spot> spots = new ArrayList<>();
            for (int i = 0; i <= steps; i++) {
                double deg = tap.land().deg() * i / steps;
                double radius = tap.pointRadius().mm() - stroke.perRadian().mm() * Math.toRadians(deg);
                boolean metal = flute.isEmpty() ? deg >= hookDeg(radius) : !inFlute(radius, deg, flute.get());
                if (metal) {
                    spots.add(at(radius, land * each() + deg));
                }
            }
            drawing.path(Outline.through(spots), Line.WANTED);
        }
    }

    /** Whether a place on the land lies in the flute ahead of its edge or behind its heel. */
    private boolean inFlute(double radius, double deg, List<Point> flute) {
        Point ahead = Point.polar(radius, -deg);
        Point behind = ahead.turned(each());
        return inside(ahead, flute) || inside(behind, flute);
    }

    private static boolean inside(Point point, List<Point> outline) {
        boolean inside = false;
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            if ((a.y() > point.y()) != (b.y() > point.y())
                    && point.x() < a.x() + (point.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                inside = !inside;
            }
        }
        return inside;
    }

    private void centreLines(Drawing drawing) {
        double reach = tap.majorRadius().mm() * scale.ratio() + 3;
        drawing.line(axis.plus(-reach, 0), axis.plus(reach, 0), Line.CENTRE);
        drawing.line(axis.plus(0, -reach - 1), axis.plus(0, reach), Line.CENTRE);
    }

    /** The wheel's rim touches the chamfer at mid-chamfer, straight above the axis. */
    private void wheel(Drawing drawing) {
        double rim = stroke.wheel().mm() / 2 * scale.ratio();
        double touch = tap.middleRadius().mm() * scale.ratio();
        Spot hub = axis.plus(0, -touch - rim);
        double half = Math.toDegrees(Math.asin(Math.min(1, (SIZE.x() / 2 - 11) / rim)));
        double out = 270 - sense * half;
        double stop = Math.toDegrees(Math.asin(Math.min(1, 13 / rim)));
        Outline arc = Outline.from(hub.polar(out, rim)).arc(hub, sense * (half + stop));
        Outline strip = Outline.from(hub.polar(out, rim))
                .arc(hub, sense * (half - stop))
                .lineTo(hub.polar(270 - sense * stop, rim - 3.5))
                .arc(hub, -sense * (half - stop))
                .close();
        drawing.hatch(strip, 1.6).path(arc, Line.OUTLINE);
        Spot label = hub.polar(out, rim - 5);
        Lettering lettering = sense > 0 ? SMALL : SMALL.end();
        drawing.text(label, "wheel " + figures.plainDiameter(stroke.wheel()), lettering);
    }

    /** The arrow of the turn in cutting sense, below the tap on the side where no ring stands. */
    private void turning(Drawing drawing) {
        double radius = tap.majorRadius().mm() * scale.ratio() + 5;
        double from = 90 + sense * 112;
        double to = 90 + sense * 160;
        drawing.path(Outline.from(axis.polar(from, radius)).arc(axis, to - from), Line.OUTLINE);
        Spot tip = axis.polar(to + sense * 8, radius);
        Outline head = Outline.through(
                        List.of(tip, axis.polar(to - sense, radius + 1.3), axis.polar(to - sense, radius - 1.3)))
                .close();
        drawing.fill(head, Fill.SOLID);
        Spot foot = Spot.at(sense > 0 ? 0 : SIZE.x(), SIZE.y() - 5);
        Lettering lettering = sense > 0 ? SMALL : SMALL.end();
        drawing.text(foot, "turn " + senseWord(), lettering.bold());
        drawing.text(foot.plus(0, 4), "to cut (" + tap.thread().hand().word() + " hand)", lettering);
        if (flute().isEmpty()) {
            String known = tap.flute() == null ? "the card: lands only" : "the card: core, lands";
            drawing.text(foot.plus(0, -8), "flute form not on", lettering);
            drawing.text(foot.plus(0, -4.5), known, lettering);
        }
    }

    private void styli(Drawing drawing) {
        Balloon balloon = new Balloon(drawing);
        double base = tap.majorRadius().mm() * scale.ratio();
        balloon.at(axis, Letters.of(Place.END));
        Spot below = axis.plus(0, base + 1);
        drawing.line(below, below.plus(0, 6), Line.OUTLINE);
        balloon.at(below.plus(-2.9, 8.6), Letters.of(Place.SHANK));
        balloon.at(below.plus(2.9, 8.6), Letters.of(Place.CREST));
        Spot side = axis.plus(-sense * (base - 1.5), 0);
        drawing.disc(side, 0.9, Fill.SOLID);
        balloon.at(side.plus(-sense * 7, 0), Letters.of(Place.FLANK));
        drawing.line(side, side.plus(-sense * 4.4, 0), Line.THIN);
        Spot top = axis.plus(-sense * 5.5, -tap.middleRadius().mm() * scale.ratio() - 4.6);
        balloon.at(top, Letters.of(Place.CHAMFER_WORKING));
    }
}
