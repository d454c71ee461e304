// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import java.util.ArrayList;
import java.util.List;
import landfall.envelope.LandGaps;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.LevelLines;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;

/**
 * One land of the chamfer unrolled: across, the angle behind its edge; upwards, the way along the chamfer from the
 * point; in one ink in steps, the gap to the cut surface, the darker the tighter, with its contours numbered. Where the
 * land drags it is hatched.
 */
public final class GapMap {
    public static final Spot SIZE = Spot.at(128, 70);

    private static final List<Length> METRIC = mm(0, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2);
    private static final List<Length> INCH =
            METRIC.stream().map(level -> Length.ofInch(level.mm() / 20)).toList();
    private static final List<Fill> FILLS = List.of(Fill.STEP_5, Fill.STEP_4, Fill.STEP_3, Fill.STEP_2, Fill.STEP_1);
    private static final double LEFT = 14;
    private static final double RIGHT = 115;
    private static final double TOP = 13;
    private static final double BOTTOM = 59;
    private static final Lettering SMALL = Lettering.NOTE.sized(3);

    private final LandGaps gaps;
    private final Length pitch;
    private final Length firstTooth;
    private final Figures figures;
    private final LevelLines lines;
    private final double[][] values;

    /**
     * @param pitch from tooth to tooth
     * @param firstTooth height over the point of the first tooth's middle at this land's edge
     */
    public GapMap(LandGaps gaps, Length pitch, Length firstTooth, Figures figures) {
        this.gaps = gaps;
        this.pitch = pitch;
        this.firstTooth = firstTooth;
        this.figures = figures;
        this.values = new double[gaps.places()][gaps.rows()];
        for (int k = 0; k < gaps.places(); k++) {
            for (int row = 0; row < gaps.rows(); row++) {
                values[k][row] = gaps.gap(row, k).mm();
            }
        }
        this.lines = LevelLines.hemmed(values);
    }

    private static List<Length> mm(double... levels) {
        List<Length> all = new ArrayList<>();
        for (double level : levels) {
            all.add(Length.ofMm(level));
        }
        return List.copyOf(all);
    }

    /** Levels of the contours: the first is nought, where drag begins. */
    List<Length> levels() {
        return figures.units() == UnitSystem.INCH ? INCH : METRIC;
    }

    public Drawing draw(String id, Ink ink) {
        String title = "Land %d unrolled: gap to the cut surface".formatted(gaps.land());
        Drawing drawing = new Drawing(id, title, description(), SIZE, ink);
        drawing.text(
                Spot.at(0, 4),
                "Land %d unrolled: gap to the cut surface (%s), radially; the darker, the tighter"
                        .formatted(gaps.land(), figures.unit()),
                Lettering.NOTE.bold());
        steps(drawing);
        teeth(drawing);
        contours(drawing);
        frame(drawing);
        dying(drawing);
        return drawing;
    }

    private String description() {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double[] column : values) {
            for (double value : column) {
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
        }
        String range = "Edge to heel %s, point to full thread %s. Gaps from %s to %s.%s"
                .formatted(
                        figures.angle(gaps.theta(gaps.places() - 1)),
                        figures.length(gaps.height(gaps.rows() - 1)),
                        figures.length(Length.ofMm(least)),
                        figures.length(Length.ofMm(most)),
                        drags() ? " It drags where it is hatched." : " It drags nowhere.");
        return range;
    }

    /** A micrometre and less is rounding. */
    private boolean drags() {
        for (double[] column : values) {
            for (double value : column) {
                if (value < -1e-3) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Between one level and the next: what is over the one, less what is over the other. */
    private void steps(Drawing drawing) {
        List<Length> levels = levels();
        for (int i = 0; i < FILLS.size(); i++) {
            List<Outline> band = new ArrayList<>();
            outlines(levels.get(i).mm(), false, band);
            outlines(levels.get(i + 1).mm(), true, band);
            drawing.fill(band, FILLS.get(i));
        }
        if (drags()) {
            double[][] under = new double[values.length][values[0].length];
            for (int k = 0; k < under.length; k++) {
                for (int row = 0; row < under[k].length; row++) {
                    under[k][row] = -values[k][row];
                }
            }
            for (List<Spot> line : LevelLines.hemmed(under).above(1e-4)) {
                Outline outline = outline(line, false);
                drawing.hatch(outline, 1.2).path(outline, Line.ALARM);
            }
        }
    }

    private void outlines(double level, boolean backwards, List<Outline> into) {
        for (List<Spot> line : lines.above(level)) {
            into.add(outline(line, backwards));
        }
    }

    private Outline outline(List<Spot> line, boolean backwards) {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            Spot at = line.get(backwards ? line.size() - 1 - i : i);
            spots.add(at(at.x() - 1, at.y() - 1));
        }
        return Outline.through(spots).close();
    }

    private Spot at(double place, double row) {
        double x = Math.min(1, Math.max(0, place / (gaps.places() - 1)));
        double y = Math.min(1, Math.max(0, row / (gaps.rows() - 1)));
        return Spot.at(LEFT + x * (RIGHT - LEFT), BOTTOM - y * (BOTTOM - TOP));
    }

    private void contours(Drawing drawing) {
        List<Length> levels = levels();
        for (int i = 1; i < levels.size(); i++) {
            double level = levels.get(i).mm();
            for (List<Spot> line : lines.above(level)) {
                drawing.path(outline(line, false), Line.FINE);
            }
            // the numbers go up the land from contour to contour, so that they do not stand in a row
            int row = (int) Math.round((gaps.rows() - 1) * (0.12 + 0.76 * (i % 4) / 3));
            number(drawing, levels.get(i), row);
        }
    }

    private void number(Drawing drawing, Length level, int row) {
        for (int k = 1; k < gaps.places(); k++) {
            double before = values[k - 1][row];
            double here = values[k][row];
            if (before < level.mm() && here >= level.mm()) {
                Spot on = at(k - 1 + (level.mm() - before) / (here - before), row);
                String words = Figures.plain(figures.isInch() ? level.inch() : level.mm(), 4);
                double half = SMALL.width(words) / 2 + 0.6;
                if (on.x() - half > LEFT + 1 && on.x() + half < RIGHT - 1) {
                    drawing.fill(Outline.rectangle(on.plus(-half, -2), 2 * half, 4), Fill.SHEET);
                    drawing.text(on.plus(0, SMALL.capHeight() / 2), words, SMALL.middle());
                }
                return;
            }
        }
    }

    private void frame(Drawing drawing) {
        Outline frame = Outline.rectangle(Spot.at(LEFT, TOP), RIGHT - LEFT, BOTTOM - TOP);
        drawing.path(frame, Line.OUTLINE);
        double land = gaps.theta(gaps.places() - 1).deg();
        double room = 9 * land / (RIGHT - LEFT);
        for (int deg = 0; deg < land; deg += 10) {
            Spot on = Spot.at(LEFT + deg / land * (RIGHT - LEFT), BOTTOM);
            drawing.line(on, on.plus(0, 1.6), Line.THIN);
            if (land - deg > room) {
                drawing.text(on.plus(0, 5), deg + "\u00b0", SMALL.middle());
            }
        }
        drawing.text(
                Spot.at(RIGHT, BOTTOM + 5),
                figures.angle(Angle.ofDeg(land)),
                SMALL.bold().middle());
        drawing.text(Spot.at(LEFT, BOTTOM + 9.5), "edge", SMALL.bold().middle());
        drawing.text(Spot.at(RIGHT, BOTTOM + 9.5), "heel", SMALL.bold().middle());
        drawing.text(Spot.at((LEFT + RIGHT) / 2, BOTTOM + 9.5), "land angle behind the edge", SMALL.middle());
        drawing.text(Spot.at(RIGHT + 1.5, BOTTOM), "point", SMALL);
        drawing.text(Spot.at(RIGHT + 1.5, TOP + 2), "full", SMALL);
        drawing.text(Spot.at(RIGHT + 1.5, TOP + 6), "thread", SMALL);
    }

    /** Each tooth's middle from edge to heel: it climbs with the thread. */
    private void teeth(Drawing drawing) {
        double length = gaps.height(gaps.rows() - 1).mm();
        double climb = pitch.mm() * gaps.theta(gaps.places() - 1).deg() / 360;
        int tooth = 0;
        for (double z = firstTooth.mm(); z < length; z += pitch.mm()) {
            tooth++;
            double end = Math.min(length, z + climb);
            double share = climb > 0 ? (end - z) / climb : 1;
            Spot from = at(0, z / length * (gaps.rows() - 1));
            Spot to = at(share * (gaps.places() - 1), end / length * (gaps.rows() - 1));
            drawing.line(from, to, Line.HIDDEN);
            drawing.text(from.plus(-1.5, SMALL.capHeight() / 2), String.valueOf(tooth), SMALL.end());
        }
        drawing.text(
                Spot.at(LEFT - 8, (TOP + BOTTOM) / 2), "tooth", SMALL.turned(90).middle());
    }

    /** Where the rise has ended under the wheel. */
    private void dying(Drawing drawing) {
        double land = gaps.theta(gaps.places() - 1).rad();
        List<Spot> line = new ArrayList<>();
        for (int row = 0; row < gaps.rows(); row += Math.max(1, gaps.rows() / 24)) {
            double share = gaps.dying(row).rad() / land;
            if (share > 0 && share < 1) {
                line.add(at(share * (gaps.places() - 1), row));
            }
        }
        if (line.size() > 1) {
            drawing.path(Outline.through(line), Line.ALARM);
            Spot top = line.get(line.size() - 1);
            boolean left = top.x() > (LEFT + RIGHT) / 2;
            Lettering words = left ? SMALL.end() : SMALL;
            drawing.text(
                    Spot.at(Math.min(RIGHT, top.x() + (left ? 3 : 0)), TOP - 2), "slope dies behind this line", words);
        }
    }
}
