// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dialling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import landfall.dialling.DialFindings;
import landfall.dialling.FitCourse;
import landfall.dialling.Outlier;
import landfall.quantity.Length;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Scale;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;
import org.jspecify.annotations.Nullable;

/**
 * The readings over the land, edge to heel, all lands laid over one another, with the fitted curve of each. Where it is
 * known what the dial should read, how far off it is: then the line through nought is what is wanted, a tilt is a wrong
 * rise, a step between lands is run-out or height.
 */
public final class LandPlot {
    public static final Spot SIZE = Spot.at(92, 64);

    private static final double LEFT = 15;
    private static final double WIDE = 55;
    private static final double TOP = 9;
    private static final double HIGH = 44;
    private static final double NAME_STEP = 4;
    /** Breadth of half the heel's name and half a figure. */
    private static final double HEEL_ROOM = 11;

    private static final Lettering SMALL = Lettering.NOTE.sized(3);

    private final DialFindings found;
    private final Figures figures;
    private final boolean off;
    private final double landDeg;
    private final Scale scale;
    private final double least;
    private final double greatest;

    public LandPlot(DialFindings found, Figures figures) {
        this.found = found;
        this.figures = figures;
        FitCourse course = found.course();
        this.off = course.readings().stream().allMatch(at -> at.wanted() != null);
        this.landDeg = Math.max(
                course.lands().stream()
                        .flatMap(land -> land.points().stream())
                        .mapToDouble(point -> point.land().deg())
                        .max()
                        .orElseThrow(),
                course.readings().stream()
                        .mapToDouble(at -> at.reading().angle().deg())
                        .max()
                        .orElseThrow());
        List<Double> all = new ArrayList<>(List.of(0.0));
        course.readings().forEach(at -> all.add(shown(at.reading().value(), at.wanted())));
        course.lands().forEach(land -> land.points().forEach(p -> all.add(shown(p.fitted(), p.wanted()))));
        this.least = all.stream().min(Comparator.naturalOrder()).orElseThrow();
        this.greatest = all.stream().max(Comparator.naturalOrder()).orElseThrow();
        this.scale = Scale.fitting(Length.ofMm(Math.max(greatest - least, 1e-6)), HIGH);
    }

    /** What stands upright: the reading, less what is wanted where that is known. */
    private double shown(Length value, @Nullable Length wanted) {
        return off && wanted != null ? value.mm() - wanted.mm() : value.mm();
    }

    public Drawing draw(String id, Ink ink) {
        String title = off ? "Off what it should read" : "Readings over the land";
        Drawing drawing = new Drawing(id, title + ", " + scale.words(), description(), SIZE, ink);
        drawing.text(
                Spot.at(0, 3.6), title + "  " + scale.words() + "  (" + figures.unit() + ")", Lettering.NOTE.bold());
        upright(drawing);
        along(drawing);
        List<Name> names = new ArrayList<>();
        for (FitCourse.OfLand land : found.course().lands()) {
            names.add(curve(drawing, land));
        }
        marks(drawing);
        names(drawing, names);
        return drawing;
    }

    private String description() {
        String lands = String.join(
                "; ",
                found.course().lands().stream()
                        .map(land -> {
                            FitCourse.Point edge = land.points().get(0);
                            FitCourse.Point heel =
                                    land.points().get(land.points().size() - 1);
                            return "land %d: %s at the edge, %s at the heel"
                                    .formatted(land.land(), words(edge), words(heel));
                        })
                        .toList());
        String what = off ? "Fit less what is wanted, in " : "Fit, in ";
        String outliers = found.fits().outliers().isEmpty()
                ? ""
                : " Outliers: "
                        + String.join(
                                ", ",
                                found.fits().outliers().stream()
                                        .map(outlier ->
                                                "land " + outlier.reading().land() + " at "
                                                        + Figures.plain(
                                                                outlier.reading()
                                                                        .angle()
                                                                        .deg(),
                                                                1) + "\u00b0")
                                        .toList())
                        + ".";
        return what + figures.unit() + ": " + lands + "." + outliers;
    }

    private String words(FitCourse.Point point) {
        return figures.signed(Length.ofMm(shown(point.fitted(), point.wanted())));
    }

    private Spot at(double deg, double mm) {
        double room = (HIGH - (greatest - least) * scale.ratio()) / 2;
        return Spot.at(LEFT + WIDE * deg / landDeg, TOP + room + (greatest - mm) * scale.ratio());
    }

    private void upright(Drawing drawing) {
        double unit = figures.isInch() ? Length.MM_PER_INCH : 1;
        double step = step((greatest - least) / unit) * unit;
        for (double mm = Math.ceil(least / step - 1e-9) * step; mm <= greatest + step * 1e-6; mm += step) {
            Spot on = at(0, mm);
            boolean nought = Math.abs(mm) < step / 2;
            drawing.line(on, on.plus(WIDE, 0), nought ? (off ? Line.WANTED : Line.OUTLINE) : Line.HATCH);
            String text = nought ? "0" : figures.signed(Length.ofMm(mm));
            drawing.text(on.plus(-1.5, 1.1), text, SMALL.end());
        }
    }

    /** Steps of 1, 2 or 5 of a decade, at most six of them. */
    private static double step(double range) {
        double decade = Math.pow(10, Math.floor(Math.log10(range / 6)));
        return Stream.of(1.0, 2.0, 5.0, 10.0)
                .map(by -> by * decade)
                .filter(step -> range / step <= 6)
                .findFirst()
                .orElse(10 * decade);
    }

    private void along(Drawing drawing) {
        double foot = TOP + HIGH + 2;
        drawing.line(Spot.at(LEFT, foot), Spot.at(LEFT + WIDE, foot), Line.THIN);
        Spot heel = Spot.at(LEFT + WIDE, foot);
        double every = landDeg > 60 ? 20 : 10;
        for (double deg = 0; deg < landDeg + 1e-9; deg += every) {
            Spot on = Spot.at(at(deg, 0).x(), foot);
            drawing.line(on, on.plus(0, 1.2), Line.THIN);
            if (heel.x() - on.x() > HEEL_ROOM) {
                drawing.text(on.plus(0, 4.6), Figures.plain(deg, 0) + "\u00b0", SMALL.middle());
            }
        }
        drawing.text(heel.plus(0, 4.6), "heel " + Figures.plain(landDeg, 1) + "\u00b0", SMALL.middle());
        drawing.text(Spot.at(LEFT, foot + 8.2), "edge", SMALL.middle());
    }

    /** Where a curve ends, for its name. */
    private record Name(int land, double y) {}

    private Name curve(Drawing drawing, FitCourse.OfLand land) {
        List<Spot> spots = land.points().stream()
                .map(point -> at(point.land().deg(), shown(point.fitted(), point.wanted())))
                .toList();
        drawing.path(Outline.through(spots), Line.FINE);
        return new Name(land.land(), spots.get(spots.size() - 1).y());
    }

    private void marks(Drawing drawing) {
        List<landfall.dialling.Reading> outliers =
                found.fits().outliers().stream().map(Outlier::reading).toList();
        for (FitCourse.At at : found.course().readings()) {
            Spot on = at(at.reading().angle().deg(), shown(at.reading().value(), at.wanted()));
            LandMark.of(at.reading().land()).draw(drawing, on);
            if (outliers.contains(at.reading())) {
                drawing.path(Outline.rectangle(on.plus(-2.1, -2.1), 4.2, 4.2), Line.ALARM);
                boolean right = on.x() > LEFT + WIDE / 2;
                Lettering bold = SMALL.bold();
                drawing.text(on.plus(right ? -3 : 3, 1.1), "outlier", right ? bold.end() : bold);
            }
        }
    }

    /** Beside the ends of their curves, pushed apart so that they can be read. */
    private static void names(Drawing drawing, List<Name> names) {
        List<Name> sorted =
                names.stream().sorted(Comparator.comparingDouble(Name::y)).toList();
        double[] y = new double[sorted.size()];
        double step = Math.min(NAME_STEP, HIGH / Math.max(1, y.length - 1));
        double total = 0;
        for (int i = 0; i < y.length; i++) {
            y[i] = i == 0 ? sorted.get(i).y() : Math.max(sorted.get(i).y(), y[i - 1] + step);
            total += y[i] - sorted.get(i).y();
        }
        double lowest = y[y.length - 1] - (SIZE.y() - 2);
        double shift = Math.max(Math.min(total / y.length, y[0] - TOP), lowest);
        for (int i = 0; i < y.length; i++) {
            Spot at = Spot.at(LEFT + WIDE + 6, y[i] - shift);
            drawing.line(Spot.at(LEFT + WIDE, sorted.get(i).y()), at.plus(-2, 0), Line.HATCH);
            LandMark.of(sorted.get(i).land()).draw(drawing, at);
            drawing.text(at.plus(2.4, 1.1), "land " + sorted.get(i).land(), SMALL);
        }
    }
}
