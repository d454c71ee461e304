// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * Error of the swivel, from readings along the chamfer.
 *
 * <p>Along the travel the reading changes by {@code m = tan(kap - swivel)} a length; growing towards the shank means
 * that the chamfer is steeper than the swivel: turn the swivel up by {@code atan(m)}. With two readings their spread is
 * rounding alone.
 *
 * @param low by how much the swivel is set too low (negative: too high)
 * @param length of chamfer that was dialled
 */
public record Swivel(FittedAngle low, Length length) {

    static Swivel of(AlongChamfer readings) {
        int n = readings.list().size();
        double[][] rows = new double[n][];
        double[] values = new double[n];
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        double middle = readings.list().stream()
                .mapToDouble(spot -> spot.along().mm())
                .average()
                .orElseThrow();
        for (int i = 0; i < n; i++) {
            double along = readings.list().get(i).along().mm();
            first = Math.min(first, along);
            last = Math.max(last, along);
            rows[i] = new double[] {1, along - middle};
            values[i] = readings.list().get(i).value().mm();
        }
        Design design = new Design(rows);
        double[] found = design.coefficients(values);
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double residual = values[i] - found[0] - found[1] * rows[i][1];
            squares += residual * residual;
        }
        Spread spread = Spread.of(squares, design.spare(), readings.resolution().mm());
        double[] slope = {0, 1};
        double standard = spread.sigma() * Math.sqrt(design.covariance(slope, slope)) / (1 + found[1] * found[1]);
        return new Swivel(
                new FittedAngle(
                        Angle.ofRad(Math.atan(found[1])),
                        Angle.ofRad(standard),
                        Angle.ofRad(standard * spread.factor())),
                Length.ofMm(last - first));
    }
}
