// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.thread;

import static landfall.sheets.thread.Letters.NOTE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import landfall.quantity.Length;
import landfall.quantity.Limits;
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
import landfall.thread.LimitsOfSize;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import org.jspecify.annotations.Nullable;

/**
 * The limits of the three diameters as zones on one scale, each against its own basic size: nut hatched, screw tinted,
 * the side that the call-out does not name in phantom lines. A zone that the standard leaves open ends in an arrow.
 */
public final class LimitsView {
    public static final Spot SIZE = Spot.at(94, 90);

    private static final double TOP = 18;
    private static final double FOOT = 76;
    private static final double ROOM = 44;
    private static final double COLUMN = 31.5;
    private static final double BAR = 8;
    private static final double BAR_AT = 3;
    private static final double OPEN = 6;

    private final Mating mating;
    private final Figures figures;
    private final List<Column> columns;
    private final Scale scale;
    private final double basicY;

    /** One diameter: its basic size, and the limits of both sides where they are held. */
    private record Column(
            String name,
            Length basic,
            @Nullable Limits nut,
            @Nullable Limits screw) {
        List<Length> ends() {
            List<Length> ends = new ArrayList<>();
            for (Limits each : new Limits[] {nut, screw}) {
                if (each != null && each.min() != null) {
                    ends.add(each.min().minus(basic));
                }
                if (each != null && each.max() != null) {
                    ends.add(each.max().minus(basic));
                }
            }
            return ends;
        }
    }

    public LimitsView(LimitsOfSize limits, Figures figures) {
        this.mating = new Mating(limits);
        this.figures = figures;
        ScrewThread thread = mating.thread();
        SideLimits nut = mating.limits(Side.INTERNAL);
        SideLimits screw = mating.limits(Side.EXTERNAL);
        if (nut == null && screw == null) {
            throw new IllegalArgumentException(
                    "no limits to draw: " + limits.callOut().normal());
        }
        this.columns = List.of(
                column("major", thread.major(), nut == null ? null : nut.major(), screw == null ? null : screw.major()),
                column(
                        "pitch",
                        thread.pitchDiameter(),
                        nut == null ? null : nut.pitch(),
                        screw == null ? null : screw.pitch()),
                column(
                        "minor",
                        thread.minorDiameter(),
                        nut == null ? null : nut.minor(),
                        screw == null ? null : screw.minor()));
        double high = Math.max(
                0,
                columns.stream()
                        .flatMap(c -> c.ends().stream())
                        .mapToDouble(Length::mm)
                        .max()
                        .orElse(0));
        double low = Math.min(
                0,
                columns.stream()
                        .flatMap(c -> c.ends().stream())
                        .mapToDouble(Length::mm)
                        .min()
                        .orElse(0));
        this.scale = Scale.fitting(Length.ofMm(high - low), ROOM);
        double slack = FOOT - TOP - 2 * OPEN - (high - low) * scale.ratio();
        this.basicY = TOP + OPEN + slack / 2 + high * scale.ratio();
    }

    private static Column column(String name, Length basic, @Nullable Limits nut, @Nullable Limits screw) {
        return new Column(name, basic, nut, screw);
    }

    public Scale scale() {
        return scale;
    }

    public Drawing draw(String id, Ink ink) {
        Drawing drawing = new Drawing(id, "Limits as zones, diameters " + scale.words(), description(), SIZE, ink);
        drawing.text(
                Spot.at(0, 3.6), "Limits, diameters  %s  (%s)".formatted(scale.words(), figures.unit()), NOTE.bold());
        for (int i = 0; i < columns.size(); i++) {
            column(drawing, columns.get(i), i * COLUMN);
        }
        key(drawing);
        return drawing;
    }

    private String description() {
        List<String> words = new ArrayList<>();
        for (Column column : columns) {
            words.add(column.name() + ": inside " + words(column.nut()) + ", outside " + words(column.screw()));
        }
        return String.join("; ", words) + ".";
    }

    private String words(@Nullable Limits limits) {
        if (limits == null) {
            return "none held";
        }
        return "%s to %s"
                .formatted(
                        limits.min() == null ? "open" : figures.bare(limits.min()),
                        limits.max() == null ? "open" : figures.bare(limits.max()));
    }

    private double y(Column column, Length size) {
        return basicY - scale.paper(size.minus(column.basic()));
    }

    private void column(Drawing drawing, Column column, double x) {
        drawing.text(Spot.at(x, 9.4), column.name(), NOTE.bold());
        drawing.text(Spot.at(x, 13.6), "basic " + figures.bare(column.basic()), NOTE);
        drawing.line(Spot.at(x, basicY), Spot.at(x + BAR_AT + BAR + 1.5, basicY), Line.CENTRE);
        zone(drawing, column, x, Side.INTERNAL);
        zone(drawing, column, x, Side.EXTERNAL);
        List<Length> sizes = new ArrayList<>();
        for (Limits each : new Limits[] {column.nut(), column.screw()}) {
            if (each != null && each.max() != null) {
                sizes.add(each.max());
            }
            if (each != null && each.min() != null) {
                sizes.add(each.min());
            }
        }
        List<Double> wanted = sizes.stream().map(size -> y(column, size)).toList();
        List<Double> places = Stacked.apart(wanted, 4.6, TOP + 2, FOOT);
        double edge = x + BAR_AT + BAR;
        for (int i = 0; i < sizes.size(); i++) {
            drawing.path(
                    Outline.through(List.of(
                            Spot.at(edge + 0.6, wanted.get(i)),
                            Spot.at(edge + 1.8, wanted.get(i)),
                            Spot.at(edge + 3.4, places.get(i)),
                            Spot.at(edge + 4.2, places.get(i)))),
                    Line.THIN);
            drawing.text(
                    Spot.at(edge + 4.8, places.get(i) + 1.25),
                    figures.bare(sizes.get(i)),
                    Lettering.FIGURE.anchored(Lettering.Anchor.START));
        }
    }

    private void zone(Drawing drawing, Column column, double x, Side side) {
        Limits zone = side == Side.INTERNAL ? column.nut() : column.screw();
        if (zone == null || zone.min() == null && zone.max() == null) {
            return;
        }
        boolean noMost = zone.max() == null;
        boolean noLeast = zone.min() == null;
        double top = noMost
                ? y(column, Objects.requireNonNull(zone.min())) - OPEN
                : y(column, Objects.requireNonNull(zone.max()));
        double foot = noLeast
                ? y(column, Objects.requireNonNull(zone.max())) + OPEN
                : y(column, Objects.requireNonNull(zone.min()));
        Spot corner = Spot.at(x + BAR_AT, top);
        Outline bar = Outline.rectangle(corner, BAR, foot - top);
        boolean neighbour = mating.isUsual(side);
        if (!neighbour) {
            fill(drawing, bar, side);
        }
        Line line = neighbour ? Line.PHANTOM : Line.OUTLINE;
        if (noMost || noLeast) {
            double closed = noMost ? foot : top;
            double open = noMost ? top : foot;
            drawing.line(Spot.at(corner.x(), closed), Spot.at(corner.x() + BAR, closed), line);
            drawing.line(Spot.at(corner.x(), closed), Spot.at(corner.x(), open), line);
            drawing.line(Spot.at(corner.x() + BAR, closed), Spot.at(corner.x() + BAR, open), line);
            double tip = noMost ? open - 2 : open + 2;
            drawing.line(Spot.at(corner.x() + BAR / 2, open), Spot.at(corner.x() + BAR / 2, tip), Line.THIN);
            new Dimensions(drawing).arrowhead(Spot.at(corner.x() + BAR / 2, tip), noMost ? 90 : 270);
        } else {
            drawing.path(bar, line);
        }
    }

    private static void fill(Drawing drawing, Outline bar, Side side) {
        if (side == Side.INTERNAL) {
            drawing.hatch(bar, 1.4);
        } else {
            drawing.fill(bar, Fill.TINT).fill(bar, Fill.TINT);
        }
    }

    /** What hatched and tinted mean. */
    private void key(Drawing drawing) {
        double x = 0;
        for (Side side : List.of(Side.INTERNAL, Side.EXTERNAL)) {
            SideLimits held = mating.limits(side);
            if (held == null) {
                continue;
            }
            Outline swatch = Outline.rectangle(Spot.at(x, FOOT + 4), 6, 4);
            if (mating.isUsual(side)) {
                drawing.path(swatch, Line.PHANTOM);
            } else {
                fill(drawing, swatch, side);
                drawing.path(swatch, Line.OUTLINE);
            }
            String name = (side == Side.INTERNAL ? "inside " : "outside ")
                    + held.className()
                    + (mating.isUsual(side) ? " (usual)" : "");
            drawing.text(Spot.at(x + 7.5, FOOT + 7.2), name, NOTE);
            x += 47;
        }
        drawing.text(Spot.at(0, FOOT + 12.6), "Dash-dotted: basic size. Arrow: no limit that way.", NOTE);
    }
}
