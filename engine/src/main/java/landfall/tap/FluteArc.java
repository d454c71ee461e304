// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * The arc of a flute behind a straight face, about the tap's axis: the cutting edge on the x axis, the flute at
 * positive angles, the land that the edge belongs to at negative ones.
 *
 * <p>The arc is tangent to the face and touches the core circle; from its other end a straight tangent runs out to the
 * heel corner of the land before.
 *
 * @param cx centre of the arc
 * @param cy centre of the arc
 * @param start direction from the centre to where the face leaves the arc
 * @param end direction from the centre to where the tangent to the heel leaves it; the arc runs clockwise to it
 */
public record FluteArc(Length cx, Length cy, Angle start, Angle end) {
    /**
     * The floor of a flute.
     *
     * @param coreRadius of the circle that the floors touch
     * @param radius of the arc
     */
    public record Bed(Length coreRadius, Length radius) {}

    /**
     * The arc for a rake at radius R.
     *
     * @param crest half the basic major diameter
     * @param rake of the face there
     * @param heel angle from the edge forward to the heel of the land before it
     * @throws OutOfRange when face, arc and tangent do not close
     */
    public static FluteArc behindFace(Length crest, Angle rakeAngle, Bed bed, Angle heel) {
        double R = crest.mm();
        double rake = rakeAngle.rad();
        double rho = bed.radius.mm();
        double behind = R * Math.sin(rake);
        double toArc = bed.coreRadius.mm() + rho;
        double squared = toArc * toArc - (rho - behind) * (rho - behind);
        double along = squared > 0 ? Math.sqrt(squared) : 0;
        if (squared <= 0 || along >= R * Math.cos(rake)) {
            throw noFace(rho);
        }
        // along the face outwards is (cos, sin) of the rake; square to it, into the flute, (-sin, cos)
        double cx = along * Math.cos(rake) - (rho - behind) * Math.sin(rake);
        double cy = along * Math.sin(rake) + (rho - behind) * Math.cos(rake);
        double hx = R * Math.cos(heel.rad()) - cx;
        double hy = R * Math.sin(heel.rad()) - cy;
        double reach = Math.hypot(hx, hy);
        if (reach <= rho) {
            throw noTangent(rho);
        }
        double start = rake - Math.PI / 2;
        double end = Math.atan2(hy, hx) + Math.acos(rho / reach);
        double sweep = turned(start - end);
        double floor = turned(start - (Math.atan2(cy, cx) + Math.PI));
        if (floor > sweep) {
            throw noTangent(rho);
        }
        return new FluteArc(Length.ofMm(cx), Length.ofMm(cy), Angle.ofRad(start), Angle.ofRad(end));
    }

    /** Angle of the arc about its own centre. */
    public Angle sweep() {
        return Angle.ofRad(turned(start.rad() - end.rad()));
    }

    private static double turned(double angle) {
        double turn = angle % (2 * Math.PI);
        return turn < 0 ? turn + 2 * Math.PI : turn;
    }

    private static OutOfRange noFace(double rho) {
        return new OutOfRange(
                "flutes.radius",
                Length.ofMm(rho).words(),
                "such that an arc that touches the core meets the straight face below the crest",
                "measure flute radius and core again, or leave the rake out for a flute of one arc");
    }

    private static OutOfRange noTangent(double rho) {
        return new OutOfRange(
                "flutes.radius",
                Length.ofMm(rho).words(),
                "such that its arc touches the core and runs out to the heel that the land sets",
                "measure flute radius, core and land again");
    }
}
