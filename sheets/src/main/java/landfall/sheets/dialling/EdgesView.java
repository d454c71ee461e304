// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dialling;

import java.util.ArrayList;
import java.util.List;
import landfall.dialling.DialFindings;
import landfall.dialling.Fitted;
import landfall.dialling.FittedAngle;
import landfall.dialling.LandFound;
import landfall.dialling.RunOut;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.sheets.draw.Dimensions;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Scale;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;
import landfall.thread.Hand;
import org.jspecify.annotations.Nullable;

/**
 * The edges round the tap, seen from its point: each land as far outside or inside the mean circle as its edge stands
 * off, greatly magnified, the circle of the run-out beside it, and where its high side lies.
 */
public final class EdgesView {
    public static final Spot SIZE = Spot.at(92, 86);

    private static final Spot AXIS = Spot.at(46, 42);
    private static final double MEAN = 18;
    private static final double ROOM = 6;
    private static final double NAMES = 28.5;
    private static final Lettering SMALL = Lettering.NOTE.sized(3);

    private final DialFindings found;
    private final Round round;
    private final Figures figures;
    private final Scale scale;

    /** How the lands lie round the tap. */
    public record Round(int flutes, Angle land, Hand hand) {}

    public EdgesView(DialFindings found, Round round, Figures figures) {
        this.found = found;
        this.round = round;
        this.figures = figures;
        double most = 1e-6;
        for (LandFound land : found.lands().lands()) {
            Fitted edge = land.edge();
            most = edge == null ? most : Math.max(most, Math.abs(edge.value().mm()));
        }
        RunOut runOut = found.runOut();
        if (runOut != null) {
            most = Math.max(most, runOut.eccentricity().value().mm());
        }
        this.scale = Scale.fitting(Length.ofMm(most), ROOM);
    }

    /** Whether the edges are told at all: without run-out there is nothing to draw. */
    public static boolean isTold(DialFindings found) {
        return found.runOut() != null;
    }

    public Drawing draw(String id, Ink ink) {
        String title = "Edges seen from the point";
        Drawing drawing = new Drawing(id, title + ", off the mean circle " + scale.words(), description(), SIZE, ink);
        drawing.text(
                Spot.at(0, 3.6),
                title + ", off the circle  " + scale.words() + "  (" + figures.unit() + ")",
                Lettering.NOTE.bold());
        drawing.circle(AXIS, MEAN, Line.CENTRE);
        for (double across : new double[] {-3, 3}) {
            drawing.line(AXIS.plus(-across, 0), AXIS.plus(across, 0), Line.THIN);
        }
        drawing.line(AXIS.plus(0, -3), AXIS.plus(0, 3), Line.THIN);
        found.lands().lands().forEach(land -> land(drawing, land));
        RunOut runOut = found.runOut();
        if (runOut != null) {
            highSide(drawing, runOut);
        }
        return drawing;
    }

    private String description() {
        List<String> words = new ArrayList<>();
        for (LandFound land : found.lands().lands()) {
            Fitted edge = land.edge();
            words.add("land %d %s".formatted(land.land(), edge == null ? "not told" : told(edge)));
        }
        return "Edges off their mean, in " + figures.unit() + ": " + String.join("; ", words) + ". " + highWords()
                + ".";
    }

    private String told(Fitted fitted) {
        return figures.signed(fitted.value()) + " \u00b1 " + figures.bare(fitted.uncertainty());
    }

    private String highWords() {
        RunOut runOut = found.runOut();
        FittedAngle direction = runOut == null ? null : runOut.direction();
        if (direction == null) {
            return "high side not told";
        }
        return "high side " + Figures.plain(direction.value().deg(), 0) + "\u00b0 \u00b1 "
                + Figures.plain(direction.uncertainty().deg(), 0) + "\u00b0 behind the edge of land 1";
    }

    /** Direction on paper of an angle counted back from the edge of land 1, which stands at the top. */
    private double direction(double deg) {
        return 90 - (round.hand() == Hand.RIGHT ? deg : -deg);
    }

    private void land(Drawing drawing, LandFound land) {
        double edge = 360.0 * (land.land() - 1) / round.flutes();
        Spot on = AXIS.polar(direction(edge), MEAN);
        Fitted stands = land.edge();
        if (stands != null) {
            double radius = MEAN + scale.paper(stands.value());
            double turn = direction(edge + round.land().deg()) - direction(edge);
            Spot start = AXIS.polar(direction(edge), radius);
            drawing.path(Outline.from(start).arc(AXIS, turn), Line.OUTLINE);
            drawing.line(on, start, Line.OUTLINE);
            LandMark.of(land.land()).draw(drawing, start);
        }
        name(drawing, land.land(), edge, stands);
    }

    private void name(Drawing drawing, int land, double edge, @Nullable Fitted stands) {
        double way = direction(edge);
        Spot at = AXIS.polar(way, NAMES);
        double cosine = Math.cos(Math.toRadians(way));
        Lettering.Anchor anchor = Math.abs(cosine) < 0.3
                ? Lettering.Anchor.MIDDLE
                : cosine > 0 ? Lettering.Anchor.START : Lettering.Anchor.END;
        // at the top the lines grow away from the tap
        double up = Math.max(0, 4 * Math.sin(Math.toRadians(way)));
        drawing.text(at.plus(0, -0.6 - up), "land " + land, SMALL.bold().anchored(anchor));
        if (stands == null) {
            drawing.text(at.plus(0, 3.4 - up), "not told", SMALL.anchored(anchor));
        } else {
            drawing.text(at.plus(0, 3.4 - up), figures.signed(stands.value()), SMALL.anchored(anchor));
            drawing.text(at.plus(0, 7.4 - up), "\u00b1 " + figures.bare(stands.uncertainty()), SMALL.anchored(anchor));
        }
    }

    /** The circle that the run-out alone would give, and an arrow to its high side. */
    private void highSide(Drawing drawing, RunOut runOut) {
        FittedAngle direction = runOut.direction();
        Lettering note = SMALL.middle();
        if (direction == null) {
            drawing.text(Spot.at(AXIS.x(), SIZE.y() - 1), "eccentricity not told apart from none", note);
            return;
        }
        double way = direction(direction.value().deg());
        Spot centre = AXIS.polar(way, scale.paper(runOut.eccentricity().value()));
        drawing.circle(centre, MEAN, Line.HIDDEN);
        Dimensions dimensions = new Dimensions(drawing);
        Spot tip = AXIS.polar(way, MEAN - 2.5);
        drawing.line(AXIS, tip, Line.THIN);
        dimensions.arrowhead(tip, way);
        double within = Math.min(179, direction.uncertainty().deg());
        drawing.path(Outline.from(AXIS.polar(way - within, MEAN - 5)).arc(AXIS, 2 * within), Line.FINE);
        drawing.text(Spot.at(AXIS.x(), SIZE.y() - 1), highWords(), note);
    }
}
