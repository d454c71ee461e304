// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.grind.CamCurve;
import landfall.quantity.Angle;

/**
 * The form of the rise, as the land angle in radians at which a straight cam would stand as high: {@code s(theta)}.
 *
 * <p>So the fitted {@code k} is always a length per radian: of a straight cam its slope, of a circle its slope at the
 * start of the rise, of a table of points its mean slope.
 */
@FunctionalInterface
public interface CamProfile {
    /** s at a land angle, in radians. */
    double at(Angle land);

    /** Equal fall for equal turn (Archimedean), without end: s = theta. */
    static CamProfile straight() {
        return Angle::rad;
    }

    /** A lobe of the cam from the start of its rise: at rest before it and past its end. */
    static CamProfile of(CamCurve curve, Angle riseAngle) {
        double full = curve instanceof CamCurve.Circle ? 1 / curve.slope(Angle.ZERO, riseAngle) : riseAngle.rad();
        return land -> full * curve.share(land, riseAngle);
    }

    /** The same rise beginning later, or sooner if negative; at rest until then. */
    default CamProfile startingAt(Angle start) {
        return land -> land.deg() <= start.deg() ? 0 : at(land.minus(start));
    }
}
