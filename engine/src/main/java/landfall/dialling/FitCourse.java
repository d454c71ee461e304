// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The fit drawn out: what it says at each reading and over each land, in the zero that the dial was set to.
 *
 * <p>Wanted is c and what the {@link Course} reads with the wanted slope: every edge at the mean of the edges as
 * fitted, which is where they all stand once run-out and heights are gone.
 *
 * @param zero c, the mean of the edges as fitted
 * @param readings in the order taken
 * @param lands the fit from edge to heel, land by land
 */
public record FitCourse(Length zero, List<At> readings, List<OfLand> lands) {
    private static final int STEPS = 12;

    /**
     * One reading beside the fit.
     *
     * @param fitted what the fit says there
     * @param wanted what it should read there; null where nothing is wanted
     */
    public record At(
            Reading reading, Length fitted, @Nullable Length wanted) {
        /** What the fit leaves over: scatter of hand and dial, or a slip. */
        public Length left() {
            return reading.value().minus(fitted);
        }
    }

    /** The fit over one land that was read. */
    public record OfLand(int land, List<Point> points) {
        public OfLand {
            points = List.copyOf(points);
        }
    }

    /**
     * A place on a land.
     *
     * @param wanted null where nothing is wanted
     */
    public record Point(Angle land, Length fitted, @Nullable Length wanted) {}

    public FitCourse {
        readings = List.copyOf(readings);
        lands = List.copyOf(lands);
    }

    static FitCourse of(DialAsk ask, Solution found, @Nullable Double wanted) {
        Course course = Course.of(ask);
        double zero = zero(course, found);
        List<At> readings = new ArrayList<>();
        for (Reading reading : ask.readings().list()) {
            readings.add(new At(
                    reading,
                    fitted(course, found, reading.land(), reading.angle()),
                    wanted(course, zero, wanted, reading.angle())));
        }
        List<OfLand> lands = new ArrayList<>();
        for (int land : found.model.lands) {
            List<Point> points = new ArrayList<>();
            for (int i = 0; i <= STEPS; i++) {
                Angle on = ask.tap().land().times((double) i / STEPS);
                points.add(new Point(on, fitted(course, found, land, on), wanted(course, zero, wanted, on)));
            }
            lands.add(new OfLand(land, points));
        }
        return new FitCourse(Length.ofMm(zero), readings, lands);
    }

    private static Length fitted(Course course, Solution found, int land, Angle on) {
        double[] weights = found.model.surface(land, on);
        weights[0] = 1;
        return Length.ofMm(found.value(weights) - course.fallen(on));
    }

    private static double zero(Course course, Solution found) {
        double[] weights = new double[found.model.size()];
        weights[0] = 1;
        if (found.model.terms.slope) {
            weights[1] = course.cam().at(Angle.ZERO);
        }
        return found.value(weights);
    }

    private static @Nullable Length wanted(Course course, double zero, @Nullable Double wanted, Angle on) {
        return wanted == null ? null : Length.ofMm(zero + course.read(wanted, on));
    }
}
