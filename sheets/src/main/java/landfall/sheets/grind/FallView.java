// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Angle;
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

/**
 * The fall over the land, unrolled at mid-chamfer, both ways to one scale so that the slopes are the true angles: the
 * circle through the edge, the surface that the wheel leaves, and the way the work comes up because the tap advances
 * while it turns. What lies between the last two is the working gap.
 */
public final class FallView {
    public static final Spot SIZE = Spot.at(94, 43);

    private static final double EDGE_X = 6;
    private static final double EDGE_Y = 15;
    private static final double ROOM_LAND = 60;
    private static final double ROOM_FALL = 13;

    private final Course course;
    private final Figures figures;
    private final Scale scale;

    /**
     * The fall over the land at one radius.
     *
     * @param radius where it is unrolled: mid-chamfer
     * @param ground radial fall that the set-up grinds, edge first, heel last
     * @param advance what the tap's advance takes of it at the heel
     * @param dying land before the heel over which the slope dies because the rise ends early; 0 when it holds
     */
    public record Course(Length radius, List<At> ground, Length advance, Angle dying) {
        /** The fall at a land angle. */
        public record At(Angle land, Length fall) {}

        public Course {
            ground = List.copyOf(ground);
            if (ground.size() < 2) {
                throw new IllegalArgumentException("a course needs edge and heel: " + ground);
            }
        }

        public Angle land() {
            return ground.get(ground.size() - 1).land();
        }

        /** At the heel. */
        public Length fall() {
            return ground.get(ground.size() - 1).fall();
        }
    }

    public FallView(Course course, Figures figures) {
        this.course = course;
        this.figures = figures;
        Length width = course.radius().times(course.land().rad());
        this.scale = Scale.fitting(width, ROOM_LAND).orSmaller(Scale.fitting(course.fall(), ROOM_FALL));
    }

    public Scale scale() {
        return scale;
    }

    public Drawing draw(String id, Ink ink) {
        String title = "Fall over the land, unrolled at mid-chamfer, " + scale.words();
        String description =
                "Edge to heel, land %s. Fall at the heel %s; the tap's advance takes %s; the working gap is %s."
                        .formatted(
                                figures.angle(course.land()),
                                figures.length(course.fall()),
                                figures.length(course.advance()),
                                figures.length(course.fall().minus(course.advance())));
        Drawing drawing = new Drawing(id, title, description, SIZE, ink);
        drawing.text(
                Spot.at(0, 3.6),
                "Land unrolled at mid-chamfer  " + scale.words() + "  (" + figures.unit() + ")",
                Lettering.NOTE.bold());
        surfaces(drawing);
        ticks(drawing);
        dimensions(drawing);
        dead(drawing);
        return drawing;
    }

    private Spot at(double landDeg, double fallMm) {
        double along = course.radius().mm() * Math.toRadians(landDeg) * scale.ratio();
        return Spot.at(EDGE_X + along, EDGE_Y + fallMm * scale.ratio());
    }

    private void surfaces(Drawing drawing) {
        double land = course.land().deg();
        Spot edge = at(0, 0);
        Spot heel = at(land, course.fall().mm());
        Spot path = at(land, course.advance().mm());
        List<Spot> surface = new ArrayList<>();
        course.ground()
                .forEach(
                        point -> surface.add(at(point.land().deg(), point.fall().mm())));
        List<Spot> round = new ArrayList<>(surface);
        round.add(path);
        Outline gap = Outline.through(round).close();
        drawing.hatch(gap, 1.4);
        double deep = SIZE.y() - 13;
        List<Spot> body = new ArrayList<>(surface);
        body.add(0, Spot.at(edge.x() + 2, deep));
        body.add(Spot.at(heel.x() - 1.5, deep));
        drawing.fill(Outline.through(body).close(), Fill.TINT).path(Outline.through(body), Line.OUTLINE);
        drawing.line(edge, path, Line.HIDDEN);
        drawing.line(edge.plus(-4, 0), at(land, 0).plus(12, 0), Line.THIN);
    }

    /** Every ten degrees a tick on the circle through the edge. */
    private void ticks(Drawing drawing) {
        double land = course.land().deg();
        int named = at(10, 0).x() - at(0, 0).x() > 8 ? 10 : 30;
        double room = 7 / (at(1, 0).x() - at(0, 0).x());
        for (int deg = 0; deg <= land + 1e-9; deg += 5) {
            Spot on = at(deg, 0);
            boolean tenth = deg % 10 == 0;
            drawing.line(on, on.plus(0, tenth ? -2 : -1.2), Line.THIN);
            if (deg % named == 0 && land - deg > room) {
                drawing.text(
                        on.plus(0, -2.8),
                        deg + "\u00b0",
                        Lettering.NOTE.sized(3).middle());
            }
        }
        Spot end = at(land, 0);
        drawing.line(end, end.plus(0, -2), Line.THIN);
        drawing.text(
                end.plus(0, -2.8),
                figures.angle(course.land()),
                Lettering.NOTE.sized(3).bold().middle());
        drawing.text(
                Spot.at(EDGE_X, EDGE_Y - 7), "edge", Lettering.NOTE.sized(3).middle());
        drawing.text(end.plus(0, -7), "heel", Lettering.NOTE.sized(3).middle());
    }

    private void dimensions(Drawing drawing) {
        double land = course.land().deg();
        Spot circle = at(land, 0);
        Spot heel = at(land, course.fall().mm());
        Dimensions dimensions = new Dimensions(drawing);
        dimensions.upright(circle, heel, heel.x() + 8, "fall " + figures.bare(course.fall()));
        words(drawing);
    }

    private void words(Drawing drawing) {
        Lettering note = Lettering.NOTE.sized(3);
        Spot line = Spot.at(EDGE_X, SIZE.y() - 9);
        String gap = figures.bare(course.fall().minus(course.advance()));
        drawing.text(line, "gap left when cutting " + gap + " (hatched)", note.bold());
        drawing.text(line.plus(0, 4), "advance takes " + figures.bare(course.advance()) + " (dashed)", note);
        if (course.dying().deg() > 0.05) {
            String from = figures.angle(course.land().minus(course.dying()));
            drawing.text(line.plus(0, 8), "slope dies off from " + from + " (bar)", note);
        }
    }

    /** A bar under the last of the land, where the rise has ended and only the wheel's arc still relieves. */
    private void dead(Drawing drawing) {
        if (course.dying().deg() <= 0.05) {
            return;
        }
        double from = course.land().deg() - course.dying().deg();
        Spot start = Spot.at(at(from, 0).x(), at(0, course.fall().mm()).y() + 1.5);
        Spot end = Spot.at(at(course.land().deg(), 0).x() - 1, start.y());
        drawing.line(start, end, Line.ALARM).line(start.plus(0, -1), start.plus(0, 1), Line.ALARM);
    }
}
