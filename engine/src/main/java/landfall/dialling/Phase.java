// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.Arrays;
import landfall.grind.CamProfile;
import landfall.quantity.Angle;
import org.jspecify.annotations.Nullable;

/**
 * Where the rise really begins, told only by readings before it: {@code y = c + k max(0, s(theta - t0)) + ..}.
 *
 * <p>From readings on the rise alone t0 and the constant are one and the same. The beginning is taken as told when the
 * fit with it is better than without at 99 % (Fisher's F; the usual 95 % is too easy for a term that does not exist in
 * the simpler model), with two readings or more after it.
 *
 * @param start land angle at which the rise begins
 * @param slope of the rise from there on
 */
public record Phase(FittedAngle start, Fitted slope) {
    private static final int COARSE = 60;
    private static final double SURE = 0.99;

    static @Nullable Phase of(Readings readings, CamProfile cam, Solution plain) {
        double[] angles = readings.anglesDeg();
        if (angles.length < 3 || plain.model.design.spare() < 2) {
            return null;
        }
        double from = angles[0];
        double to = angles[angles.length - 2];
        Terms terms = plain.model.terms;
        double best = from;
        double least = plain.squares;
        for (int i = 1; i < COARSE; i++) {
            double start = from + (to - from) * i / COARSE;
            double squares = squares(readings, cam.startingAt(Angle.ofDeg(start)), terms);
            if (squares < least) {
                least = squares;
                best = start;
            }
        }
        double step = (to - from) / COARSE;
        best = refine(readings, cam, terms, new double[] {best - step, Math.min(best + step, to)});
        Solution late = Fits.orNull(readings, cam.startingAt(Angle.ofDeg(best)), terms);
        if (late == null) {
            return null;
        }
        Spread spread = Spread.of(
                late.squares,
                late.model.design.spare() - 1,
                readings.resolution().mm());
        double gain = (plain.squares - late.squares) / (spread.sigma() * spread.sigma());
        return gain > spread.fisher(1, SURE) ? told(readings, cam, late, best, spread) : null;
    }

    private static double squares(Readings readings, CamProfile cam, Terms terms) {
        Solution solution = Fits.orNull(readings, cam, terms);
        return solution == null ? Double.POSITIVE_INFINITY : solution.squares;
    }

    /** Golden section between two angles. */
    private static double refine(Readings readings, CamProfile cam, Terms terms, double[] between) {
        double golden = (Math.sqrt(5) - 1) / 2;
        double low = between[0];
        double high = between[1];
        for (int i = 0; i < 25; i++) {
            double left = high - golden * (high - low);
            double right = low + golden * (high - low);
            boolean goLeft = squares(readings, cam.startingAt(Angle.ofDeg(left)), terms)
                    <= squares(readings, cam.startingAt(Angle.ofDeg(right)), terms);
            low = goLeft ? low : left;
            high = goLeft ? right : high;
        }
        return (low + high) / 2;
    }

    /** Uncertainties by one more column, the change of the reading with t0 (Gauss and Newton). */
    private static @Nullable Phase told(Readings readings, CamProfile cam, Solution late, double start, Spread spread) {
        double slope = late.value(late.model.slope());
        int last = late.model.size();
        double[][] rows = new double[readings.list().size()][];
        for (int i = 0; i < rows.length; i++) {
            Angle on = readings.list().get(i).angle().minus(Angle.ofDeg(start));
            rows[i] = Arrays.copyOf(late.model.rows[i], last + 1);
            rows[i][last] = on.deg() <= 0 ? 0 : -slope * steepness(cam, on);
        }
        Design design = new Design(rows);
        if (!design.isSound()) {
            return null;
        }
        double[] ofStart = new double[last + 1];
        ofStart[last] = 1;
        double[] ofSlope = Arrays.copyOf(late.model.slope(), last + 1);
        double angle = spread.sigma() * Math.sqrt(design.covariance(ofStart, ofStart));
        double standard = spread.sigma() * Math.sqrt(design.covariance(ofSlope, ofSlope));
        return new Phase(
                new FittedAngle(Angle.ofDeg(start), Angle.ofRad(angle), Angle.ofRad(angle * spread.factor())),
                Fitted.ofMm(slope, standard, spread.factor()));
    }

    private static double steepness(CamProfile cam, Angle on) {
        Angle step = Angle.ofDeg(1e-4);
        return (cam.at(on) - cam.at(on.minus(step))) / step.rad();
    }
}
