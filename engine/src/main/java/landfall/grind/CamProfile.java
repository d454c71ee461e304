// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Angle;

/**
 * The form of the rise, as the land angle in radians at which a straight cam would stand as high: {@code s(theta)}.
 *
 * <p>So a fitted {@code k} is always a length per radian: of a straight cam its slope, of a circle its slope at the
 * start of the rise, of a table of points its mean slope.
 */
@FunctionalInterface
public interface CamProfile {
    /** s at a land angle, in radians. */
    double at(Angle land);

    /** The form of the fall that this rise grinds on the tap; the rise itself where nothing else is known. */
    default CamProfile ground() {
        return this;
    }

    /** Equal fall for equal turn (Archimedean), without end: s = theta. */
    static CamProfile straight() {
        return Angle::rad;
    }

    /** Nothing up to a land angle, from there on as a straight one: s = max(0, theta - from). */
    static CamProfile from(Angle start) {
        return straight().startingAt(start);
    }

    /** The turn over which a lobe would be at its whole rise, rose it on as it begins; the rise angle if straight. */
    static Angle whole(CamCurve curve, Angle riseAngle) {
        return curve instanceof CamCurve.Circle ? Angle.ofRad(1 / curve.slope(Angle.ZERO, riseAngle)) : riseAngle;
    }

    /** A lobe of the cam from the start of its rise: at rest before it and past its end. */
    static CamProfile of(CamCurve curve, Angle riseAngle) {
        double full = whole(curve, riseAngle).rad();
        return land -> full * curve.share(land, riseAngle);
    }

    /**
     * The cam as it stands to the edge of the land.
     *
     * @param bareMargin land that a straight cam leaves bare behind the edge: the wheel's own size lets it begin before
     *     its rise is at the edge
     */
    static CamProfile of(Cam cam, Angle bareMargin) {
        CamProfile rise =
                of(cam.curve(), cam.lobe().riseAngle()).startingAt(cam.lobe().riseStart());
        CamProfile ground = cam.curve() instanceof CamCurve.Straight ? from(bareMargin) : rise;
        return new OnLand(rise, ground);
    }

    /** The same rise beginning later, or sooner if negative; at rest until then. */
    default CamProfile startingAt(Angle start) {
        return land -> land.deg() <= start.deg() ? 0 : at(land.minus(start));
    }

    /** s since the edge of the land, in radians. */
    default double since(Angle land) {
        return at(land) - at(Angle.ZERO);
    }

    /** A rise, and the fall that a wheel of real size makes of it. */
    record OnLand(CamProfile rise, CamProfile ground) implements CamProfile {
        @Override
        public double at(Angle land) {
            return rise.at(land);
        }
    }
}
