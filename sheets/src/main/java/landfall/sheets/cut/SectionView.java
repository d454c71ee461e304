// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import landfall.cut.FlutedSection;
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
import landfall.tap.Tap;
import landfall.thread.Hand;
import landfall.torsion.Place;
import landfall.torsion.Section;
import landfall.torsion.StressField;

/**
 * The section of the tap, seen from its point, with the shear stress of torsion: a line for each fifth of the peak,
 * darker where it is higher, and the peak marked. The mirror of it for a left-hand tap.
 */
public final class SectionView {
    public static final Spot SIZE = Spot.at(88, 66);

    private static final double ROOM = 50;
    private static final Spot AXIS = Spot.at(30, 35);
    private static final int LEVELS = 5;
    private static final double ROOM_OF_NUMBER = 3.9;
    private static final double[] BESIDE = {0, 16, -16};

    private final Tap tap;
    private final Section section;
    private final StressField field;
    private final Figures figures;
    private final Scale scale;

    public SectionView(Tap tap, Section section, Figures figures) {
        this.tap = tap;
        this.section = section;
        this.figures = figures;
        this.field = StressField.of(FlutedSection.outline(tap), section.outer());
        this.scale = Scale.fitting(tap.thread().major(), ROOM);
    }

    public Scale scale() {
        return scale;
    }

    public Drawing draw(String id, Ink ink) {
        Drawing drawing = new Drawing(id, "Section of the tap in torsion, " + scale.words(), description(), SIZE, ink);
        drawing.text(Spot.at(0, 3.6), "Stress in the section of the tap  " + scale.words(), Lettering.NOTE.bold());
        Contours contours = new Contours(field, section);
        for (int level = 1; level < LEVELS; level++) {
            List<Outline> lines = contours.above((double) level / LEVELS).stream()
                    .map(this::outline)
                    .toList();
            drawing.fill(lines, Fill.TINT);
            lines.forEach(line -> drawing.path(line, Line.THIN));
        }
        mask(drawing);
        drawing.circle(AXIS, tap.thread().major().mm() / 2 * scale.ratio(), Line.PHANTOM);
        centre(drawing);
        numbers(drawing, contours);
        legend(drawing);
        return drawing;
    }

    private String description() {
        return "Peak at %s from the axis. Strength %s of the solid circle of %s."
                .formatted(
                        figures.length(section.peak().radius()),
                        Figures.number(section.strength(), 3),
                        figures.diameter(section.outer()) + " " + figures.unit());
    }

    /** The edge stands upright; a left-hand tap is the mirror. */
    private Spot at(Place place) {
        double mirror = tap.thread().hand() == Hand.LEFT ? -1 : 1;
        double x = -place.y().mm() * mirror;
        double y = place.x().mm();
        return AXIS.plus(x * scale.ratio(), -y * scale.ratio());
    }

    private Outline outline(List<Place> places) {
        return Outline.through(places.stream().map(this::at).toList()).close();
    }

    /** What lies outside of the section is blanked out: the sheet round it with the section as a hole. */
    private void mask(Drawing drawing) {
        List<Spot> spots =
                new ArrayList<>(field.polygon().stream().map(this::at).toList());
        double reach = ROOM / 2 + 2;
        Outline around = Outline.rectangle(AXIS.plus(-reach, -reach), 2 * reach, 2 * reach);
        if (turnsClockwise(spots)) {
            Collections.reverse(spots);
        }
        Outline inside = Outline.through(spots).close();
        drawing.fill(List.of(around, inside), Fill.SHEET);
        drawing.path(inside, Line.OUTLINE);
    }

    /** As seen on paper, y downwards. */
    private static boolean turnsClockwise(List<Spot> spots) {
        double twice = 0;
        for (int i = 0; i < spots.size(); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get((i + 1) % spots.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice > 0;
    }

    private void centre(Drawing drawing) {
        double reach = ROOM / 2 + 2.5;
        drawing.line(AXIS.plus(-reach, 0), AXIS.plus(reach, 0), Line.CENTRE);
        drawing.line(AXIS.plus(0, -reach), AXIS.plus(0, reach), Line.CENTRE);
    }

    /**
     * Each line's number where a ray from the axis through a flute's floor crosses it: of the flutes the first where it
     * stands clear of the peak and of the other numbers.
     */
    private void numbers(Drawing drawing, Contours contours) {
        Lettering lettering = Lettering.NOTE.sized(Lettering.LEAST_MM).bold().middle();
        Spot peak = at(section.peak());
        List<Spot> taken = new ArrayList<>(List.of(peak));
        for (int level = 1; level < LEVELS; level++) {
            Spot spot = clear(contours, (double) level / LEVELS, taken);
            taken.add(spot);
            drawing.disc(spot, 1.7, Fill.SHEET);
            drawing.text(spot.plus(0, lettering.capHeight() / 2), String.valueOf(level), lettering);
        }
        drawing.disc(peak, 0.9, Fill.ALARM);
        new Dimensions(drawing).leader(peak, Spot.at(60, 11), "peak");
    }

    /** The first spot that is far enough from those taken, or the farthest; on the floors' rays or a little beside. */
    private Spot clear(Contours contours, double share, List<Spot> taken) {
        int flutes = tap.flutes().count();
        Spot best = AXIS;
        double farthest = -1;
        for (double beside : BESIDE) {
            for (int flute = 1; flute <= flutes && farthest < ROOM_OF_NUMBER; flute++) {
                double floor = section.peak().angle().deg() + flute * 360.0 / flutes;
                Angle angle = Angle.ofDeg(floor + beside);
                Spot spot = at(Place.polar(contours.crossing(share, angle), angle));
                double nearest =
                        taken.stream().mapToDouble(spot::distance).min().orElseThrow();
                if (nearest > farthest) {
                    farthest = nearest;
                    best = spot;
                }
            }
        }
        return best;
    }

    private void legend(Drawing drawing) {
        double x = 61;
        double y = 24;
        for (int level = LEVELS - 1; level >= 1; level--) {
            Outline box = Outline.rectangle(Spot.at(x, y - 3), 5, 3.6);
            for (int i = 0; i < level; i++) {
                drawing.fill(box, Fill.TINT);
            }
            drawing.path(box, Line.THIN);
            drawing.text(Spot.at(x + 6.5, y), level + ": over " + 100 * level / LEVELS + " %", Lettering.NOTE);
            y += 5;
        }
        drawing.text(Spot.at(x, y), "of the peak", Lettering.NOTE);
        drawing.text(Spot.at(x, y + 8), "strength against", Lettering.NOTE);
        drawing.text(Spot.at(x, y + 12), figures.diameter(section.outer()) + ":", Lettering.NOTE);
        drawing.text(
                Spot.at(x, y + 16.4),
                Figures.number(section.strength(), 3),
                Lettering.FIGURE.anchored(Lettering.Anchor.START));
    }
}
