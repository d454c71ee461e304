// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Run-out as a vector: E towards the edge of land 1, F a quarter turn behind it, counted backwards over the lands.
 *
 * <p>A hypot is never negative: near zero it is too large on average and its scatter says nothing about its sign. So
 * while the joint 95 % region of E and F holds zero, the uncertainty of the eccentricity is the radius of that region
 * (it covers 95 % or more) and there is no direction. Beyond it, the spread along the vector times Student's t.
 *
 * @param cosine E
 * @param sine F
 * @param eccentricity hypot(E, F), half the total run-out
 * @param direction of the high side, from the edge of land 1, counted backwards; none while zero is in the region
 */
public record RunOut(
        Fitted cosine,
        Fitted sine,
        Fitted eccentricity,
        @Nullable FittedAngle direction) {
    private static final double HALF_TURN = 180;

    /** From E and F in mm, their covariance in mm squared, and the spread that it rests on. */
    static RunOut of(double[] vector, double[][] covariance, Spread spread) {
        double e = vector[0];
        double f = vector[1];
        double factor = spread.factor();
        Fitted cosine = Fitted.ofMm(e, Math.sqrt(covariance[0][0]), factor);
        Fitted sine = Fitted.ofMm(f, Math.sqrt(covariance[1][1]), factor);
        double determinant = covariance[0][0] * covariance[1][1] - covariance[0][1] * covariance[1][0];
        double distance =
                (e * e * covariance[1][1] - 2 * e * f * covariance[0][1] + f * f * covariance[0][0]) / determinant;
        double region = 2 * spread.fisher(2, 0.95);
        double length = Math.hypot(e, f);
        if (distance <= region) {
            double widest = widest(covariance);
            Fitted eccentricity =
                    new Fitted(Length.ofMm(length), Length.ofMm(widest), Length.ofMm(Math.sqrt(region) * widest));
            return new RunOut(cosine, sine, eccentricity, null);
        }
        double along = spreadAlong(covariance, e / length, f / length);
        double across = spreadAlong(covariance, -f / length, e / length);
        double degrees = Math.toDegrees(Math.atan2(f, e));
        FittedAngle direction = new FittedAngle(
                Angle.ofDeg((degrees + 360) % 360),
                Angle.ofRad(across / length),
                Angle.ofRad(Math.asin(Math.min(1, factor * across / length))));
        return new RunOut(cosine, sine, Fitted.ofMm(length, along, factor), direction);
    }

    /** The direction of the high side; while it is not told apart, the best figure with "any direction" beside it. */
    public FittedAngle towards() {
        if (direction != null) {
            return direction;
        }
        double degrees =
                Math.toDegrees(Math.atan2(sine.value().mm(), cosine.value().mm()));
        return new FittedAngle(
                Angle.ofDeg((degrees + 360) % 360), Angle.ofDeg(HALF_TURN / Math.sqrt(3)), Angle.ofDeg(HALF_TURN));
    }

    private static double spreadAlong(double[][] covariance, double x, double y) {
        return Math.sqrt(x * x * covariance[0][0] + 2 * x * y * covariance[0][1] + y * y * covariance[1][1]);
    }

    /** Standard deviation along the longest axis of the ellipse. */
    private static double widest(double[][] covariance) {
        double mean = (covariance[0][0] + covariance[1][1]) / 2;
        double half = (covariance[0][0] - covariance[1][1]) / 2;
        return Math.sqrt(mean + Math.hypot(half, covariance[0][1]));
    }
}
