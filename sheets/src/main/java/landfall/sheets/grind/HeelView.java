// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import java.util.List;
import landfall.grind.Fall;
import landfall.quantity.Angle;
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
 * The fall at the heel, magnified: the chamfer line at the edge, and where it lies at the heel. One right-angled
 * triangle between the two lines shows all three measures: upright the radial fall, along the axis the axial fall, and
 * the height on its long side the fall square to the chamfer.
 */
public final class HeelView {
    public static final Spot SIZE = Spot.at(94, 38);

    private static final double ROOM_AXIAL = 36;
    private static final double ROOM_RADIAL = 9;
    private static final double OVERRUN = 12;

    private final Fall falls;
    private final Angle chamfer;
    private final Figures figures;
    private final Scale scale;

    public HeelView(Fall falls, Angle chamfer, Figures figures) {
        this.falls = falls;
        this.chamfer = chamfer;
        this.figures = figures;
        this.scale = Scale.fitting(falls.axial(), ROOM_AXIAL).orSmaller(Scale.fitting(falls.radial(), ROOM_RADIAL));
    }

    public Scale scale() {
        return scale;
    }

    public Drawing draw(String id, Ink ink) {
        String title = "Fall at the heel, " + scale.words();
        String description =
                "Chamfer line at the edge and at the heel. Fall at the heel: radial %s, axial %s, square %s."
                        .formatted(
                                figures.length(falls.radial()),
                                figures.length(falls.axial()),
                                figures.length(falls.square()));
        Drawing drawing = new Drawing(id, title, description, SIZE, ink);
        drawing.text(
                Spot.at(0, 3.6),
                "Fall at the heel  " + scale.words() + "  (" + figures.unit() + ")",
                Lettering.NOTE.bold());
        double axial = scale.paper(falls.axial());
        double radial = scale.paper(falls.radial());
        double direction = chamfer.deg();
        Spot edge = Spot.at(edgeX(axial), edgeY(radial));
        Spot heel = edge.plus(axial, 0);
        lines(drawing, edge, heel, radial);
        dimensions(drawing, edge, heel, radial);
        Spot start = edge.polar(direction + 180, OVERRUN).polar(direction + 90, 0.9);
        drawing.text(start, "edge", Lettering.NOTE.turned(direction));
        Spot end = heel.polar(direction, OVERRUN).polar(direction - 90, 3.4);
        drawing.text(end, "heel", Lettering.NOTE.end().turned(direction));
        return drawing;
    }

    private void lines(Drawing drawing, Spot edge, Spot heel, double radial) {
        double direction = chamfer.deg();
        Spot above = heel.plus(0, -radial);
        Spot edgeStart = edge.polar(direction + 180, OVERRUN);
        Spot edgeEnd = above.polar(direction, OVERRUN);
        Spot heelEnd = Spot.at(edgeEnd.x(), edgeEnd.y() + radial);
        Spot heelStart = Spot.at(edgeStart.x(), edgeStart.y() + radial);
        Outline missing =
                Outline.through(List.of(edgeStart, edgeEnd, heelEnd, heelStart)).close();
        drawing.hatch(missing, 1.6);
        drawing.line(edgeStart, edgeEnd, Line.OUTLINE).line(heelStart, heelEnd, Line.WANTED);
        Outline triangle = Outline.through(List.of(edge, heel, above)).close();
        drawing.fill(triangle, Fill.SHEET).path(triangle, Line.THIN);
        drawing.line(edgeStart, edgeEnd, Line.OUTLINE);
    }

    private void dimensions(Drawing drawing, Spot edge, Spot heel, double radial) {
        Dimensions dimensions = new Dimensions(drawing, Lettering.NOTE.bold());
        double direction = chamfer.deg();
        dimensions.across(edge, heel, edge.y() + radial + 5.5, "axial " + figures.bare(falls.axial()));
        Spot above = heel.plus(0, -radial);
        dimensions.upright(
                above,
                heel,
                heel.x() + OVERRUN * Math.cos(chamfer.rad()) + 3,
                "radial " + figures.bare(falls.radial()));
        double square = scale.paper(falls.square());
        Spot foot = heel.polar(direction + 90, square);
        drawing.line(heel, foot, Line.THIN);
        Spot knee = foot.polar(direction + 90, 7).plus(-5, 0);
        dimensions.leader(heel.towards(foot, 0.6), knee, "square " + figures.bare(falls.square()));
    }

    /** Both lines and the radial figure stand in the middle of the drawing. */
    private double edgeX(double axial) {
        double over = OVERRUN * Math.cos(chamfer.rad());
        double figure = 5 + Lettering.NOTE.bold().width("radial " + figures.bare(falls.radial()));
        return over + Math.max(0.5, (SIZE.x() - 2 * over - axial - figure) / 2);
    }

    /** Places the triangle so that title, both lines and the axial dimension find room. */
    private double edgeY(double radial) {
        double climb = OVERRUN * Math.sin(chamfer.rad());
        double room = SIZE.y() - 6 - 2 * radial - 2 * climb;
        return 6 + radial + climb + Math.max(0, room) / 2;
    }
}
