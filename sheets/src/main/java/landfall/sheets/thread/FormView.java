// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.thread;

import static landfall.sheets.thread.Letters.NOTE;

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
import landfall.sheets.draw.Stacked;
import landfall.sheets.figure.Figures;
import landfall.sheets.thread.Contour.Corner;
import landfall.thread.Fit;
import landfall.thread.LimitsOfSize;
import landfall.thread.ScrewThread;
import landfall.thread.Side;

/**
 * The profile in the axial plane, nut above and screw below, one pitch and a half of it. Thick: the limits that leave
 * most material. Fine: those that leave least. Between them, tinted, the zone where the surface may lie. The side that
 * the call-out does not name stands there as a neighbouring part, in its usual class.
 */
public final class FormView {
    static final double WIDTH = 94;
    private static final double WINDOW = 64;
    private static final double LEFT = 2;
    private static final double TOP = 18.5;
    private static final double BAND = 6.5;
    private static final double SHOWN_PITCHES = 1.5;
    private static final double HATCH = 1.8;

    private final LimitsOfSize limits;
    private final Mating mating;
    private final Figures figures;
    private final Scale scale;
    private final double half;
    private final double highest;
    private final double foot;

    public FormView(LimitsOfSize limits, Figures figures) {
        this.limits = limits;
        this.mating = new Mating(limits);
        this.figures = figures;
        ScrewThread thread = mating.thread();
        this.scale = Scale.fitting(thread.pitch().times(SHOWN_PITCHES), WINDOW);
        this.half = thread.pitch().mm() * SHOWN_PITCHES / 2;
        this.highest = Math.max(
                mating.least(Side.INTERNAL).heights().peak(),
                mating.most(Side.INTERNAL).heights().peak());
        double lowest = Math.min(
                mating.least(Side.EXTERNAL).heights().valley(),
                mating.most(Side.EXTERNAL).heights().valley());
        this.foot = TOP + 2 * BAND + (highest - lowest) * scale.ratio();
    }

    public Scale scale() {
        return scale;
    }

    public Drawing draw(String id, Ink ink) {
        double rows = limits.fit().isPresent() ? 25 : 11;
        Drawing drawing = new Drawing(
                id, "Profile of the thread, " + scale.words(), description(), Spot.at(WIDTH, foot + rows), ink);
        drawing.text(
                Spot.at(0, 3.6),
                "Profile, axial plane  %s  (%s)".formatted(scale.words(), figures.unit()),
                NOTE.bold());
        body(drawing, Side.INTERNAL);
        if (!mating.isHoleOnly()) {
            body(drawing, Side.EXTERNAL);
        }
        diameters(drawing);
        ends(drawing);
        angle(drawing);
        pitch(drawing);
        clearance(drawing);
        return drawing;
    }

    private String description() {
        ScrewThread thread = mating.thread();
        String form = "%s, flanks %s to each other, pitch %s."
                .formatted(
                        limits.callOut().normal(),
                        figures.plainAngle(thread.profile().includedAngle()),
                        figures.length(thread.pitch()));
        return limits.fit().map(fit -> form + " " + words(fit) + ".").orElse(form);
    }

    private String words(Fit fit) {
        return "Clearance at the pitch diameter: least %s, greatest %s"
                .formatted(figures.bare(fit.least()), figures.bare(fit.greatest()));
    }

    private Spot at(double z, double r) {
        double middle = LEFT + WINDOW / 2;
        return Spot.at(middle + z * scale.ratio(), TOP + BAND + (highest - r) * scale.ratio());
    }

    private Spot at(Corner corner) {
        return at(corner.z(), corner.r());
    }

    private List<Spot> line(Contour contour) {
        return contour.between(-half, half).stream().map(this::at).toList();
    }

    private void body(Drawing drawing, Side side) {
        boolean inside = side == Side.INTERNAL;
        boolean neighbour = mating.isNeighbour(side);
        double edge = inside ? TOP : foot;
        List<Spot> most = line(mating.most(side));
        List<Spot> least = line(mating.least(side));
        List<Spot> metal = new ArrayList<>(least);
        metal.add(Spot.at(least.get(least.size() - 1).x(), edge));
        metal.add(Spot.at(least.get(0).x(), edge));
        if (neighbour) {
            drawing.path(Outline.through(most), Line.PHANTOM);
            drawing.path(Outline.through(least), Line.PHANTOM);
        } else {
            drawing.hatch(Outline.through(metal).close(), HATCH, inside ? 45 : 135);
            if (mating.hasZones(side)) {
                drawing.fill(ring(most, least), Fill.TINT);
                drawing.path(Outline.through(least), Line.FINE);
            }
            drawing.path(Outline.through(most), Line.OUTLINE);
        }
        label(drawing, side, edge);
    }

    private static Outline ring(List<Spot> there, List<Spot> back) {
        List<Spot> all = new ArrayList<>(there);
        for (int i = back.size() - 1; i >= 0; i--) {
            all.add(back.get(i));
        }
        return Outline.through(all).close();
    }

    private void label(Drawing drawing, Side side, double edge) {
        var sideLimits = mating.limits(side);
        String name = (side == Side.INTERNAL ? "inside" : "outside")
                + (sideLimits == null ? "" : " " + sideLimits.className())
                + (mating.isUsual(side) ? " (usual)" : mating.isNeighbour(side) ? ", basic" : "");
        Lettering lettering = NOTE.bold();
        double base = side == Side.INTERNAL ? edge + 4.2 : edge - 1.6;
        double x = LEFT + WINDOW / 2 - half * scale.ratio() + 1;
        drawing.fill(Outline.rectangle(Spot.at(x - 0.6, base - 3.2), lettering.width(name) + 1.2, 4.2), Fill.SHEET);
        drawing.text(Spot.at(x, base), name, lettering);
    }

    /** Basic diameters, as lines run out to the right. */
    private void diameters(Drawing drawing) {
        ScrewThread thread = mating.thread();
        double right = LEFT + WINDOW / 2 + half * scale.ratio();
        double left = LEFT + WINDOW / 2 - half * scale.ratio();
        List<Length> sizes = List.of(thread.major(), thread.pitchDiameter(), thread.minorDiameter());
        List<String> names = List.of("major ", "pitch ", "minor ");
        List<Double> wanted =
                sizes.stream().map(size -> at(0, size.mm() / 2).y()).toList();
        List<Double> places = Stacked.apart(wanted, 5, TOP, foot);
        for (int i = 0; i < 3; i++) {
            double y = wanted.get(i);
            boolean pitchLine = i == 1;
            drawing.line(
                    Spot.at(pitchLine ? left - 1.5 : right + 0.8, y),
                    Spot.at(right + 2, y),
                    pitchLine ? Line.CENTRE : Line.THIN);
            drawing.line(Spot.at(right + 2, y), Spot.at(right + 3.5, places.get(i)), Line.THIN);
            drawing.text(Spot.at(right + 4, places.get(i) + 1.2), names.get(i) + figures.diameter(sizes.get(i)), NOTE);
        }
        drawing.text(Spot.at(right + 4, TOP + 1.5), "basic:", NOTE);
    }

    /** Flats and radii, above; a leader down to each end of the thread. */
    private void ends(Drawing drawing) {
        Contour nut = mating.most(Side.INTERNAL);
        Contour screw = mating.most(Side.EXTERNAL);
        Contour shown = mating.isHoleOnly() ? nut : screw;
        Spot peak = at(0, shown.heights().peak());
        Spot valley = at(mating.thread().pitch().mm() / 2, shown.heights().valley());
        List<String> left = new ArrayList<>();
        List<String> right = new ArrayList<>();
        if (!mating.isHoleOnly()) {
            left.add("crest outside " + shape(screw.peakFlat(), screw.peakRadius()));
            Contour least = mating.least(Side.EXTERNAL);
            boolean rounds = screw.valleyRadius() == 0 && least.valleyRadius() > 0;
            right.add("root outside "
                    + (rounds
                            ? shape(0, least.valleyRadius()) + " min"
                            : shape(screw.valleyFlat(), screw.valleyRadius())));
        }
        left.add("root inside " + shape(nut.peakFlat(), nut.peakRadius()));
        right.add("crest inside " + shape(nut.valleyFlat(), nut.valleyRadius()));
        for (int i = 0; i < left.size(); i++) {
            drawing.text(Spot.at(0, 9 + 4.6 * i), left.get(i), NOTE);
            drawing.text(Spot.at(50, 9 + 4.6 * i), right.get(i), NOTE);
        }
        double from = 9 + 4.6 * (left.size() - 1) + 1.4;
        pointer(drawing, Spot.at(peak.x(), from), peak);
        pointer(drawing, Spot.at(valley.x(), from), valley);
    }

    private static void pointer(Drawing drawing, Spot from, Spot tip) {
        drawing.line(from, tip, Line.THIN);
        new Dimensions(drawing).arrowhead(tip, 270);
    }

    private String shape(double flatMm, double radiusMm) {
        return radiusMm > 0 ? "R " + figures.bare(Length.ofMm(radiusMm)) : "flat " + figures.bare(Length.ofMm(flatMm));
    }

    /** Between the flanks of the tooth in the middle: the screw's, or the groove of a hole alone. */
    private void angle(Drawing drawing) {
        Contour shown = mating.most(mating.isHoleOnly() ? Side.INTERNAL : Side.EXTERNAL);
        Angle flank = mating.thread().profile().flankAngle();
        double toSharp = mating.thread().pitch().mm() / 4 / Math.tan(flank.rad());
        Spot sharp = at(0, shown.heights().pitchLine() + toSharp);
        double radius = toSharp * scale.ratio();
        new Dimensions(drawing).arc(sharp, radius, 270 - flank.deg(), 270 + flank.deg());
        String text = figures.plainAngle(mating.thread().profile().includedAngle());
        Spot base = sharp.plus(0, radius + 1.2 + Lettering.FIGURE.capHeight());
        double width = Lettering.FIGURE.width(text);
        drawing.fill(Outline.rectangle(base.plus(-width / 2 - 0.5, -3.1), width + 1, 3.8), Fill.SHEET);
        drawing.text(base, text, Lettering.FIGURE);
    }

    private void pitch(Drawing drawing) {
        double P = mating.thread().pitch().mm();
        Contour shown = mating.most(mating.isHoleOnly() ? Side.INTERNAL : Side.EXTERNAL);
        double r = shown.heights().valley();
        new Dimensions(drawing)
                .across(
                        at(-P / 2, r),
                        at(P / 2, r),
                        foot + 7,
                        "P " + figures.bare(mating.thread().pitch()));
    }

    private void clearance(Drawing drawing) {
        if (limits.fit().isEmpty()) {
            return;
        }
        Fit fit = limits.fit().get();
        double r = mating.thread().pitchDiameter().mm() / 2;
        double nut = mating.most(Side.INTERNAL).halfWidth(r);
        double screw = mating.most(Side.EXTERNAL).halfWidth(r);
        Spot gap = at((nut + screw) / 2, r);
        drawing.line(gap, Spot.at(gap.x(), foot + 10.5), Line.THIN);
        drawing.disc(gap, 0.7, Fill.SOLID);
        drawing.text(Spot.at(0, foot + 14), "Clearance at the pitch diameter:", NOTE);
        drawing.text(
                Spot.at(0, foot + 18.8),
                "least %s, greatest %s".formatted(figures.bare(fit.least()), figures.bare(fit.greatest())),
                Lettering.FIGURE.anchored(Lettering.Anchor.START));
        drawing.text(Spot.at(0, foot + 23.4), pair(fit), NOTE);
    }

    private static String pair(Fit fit) {
        String pair = "inside %s with outside %s"
                .formatted(fit.internal().className(), fit.external().className());
        return fit.usual() == null ? pair : pair + " (the usual class)";
    }
}
