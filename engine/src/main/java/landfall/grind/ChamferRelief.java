// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Chamfer;
import landfall.tap.FluteKind;
import landfall.tap.Flutes;
import landfall.thread.Hand;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * Relief of the chamfer: what is wanted at work, what the tap's advance takes away, what must be ground, and the fall
 * that gives it.
 *
 * <p>While the tap turns, it advances; a point of the land comes to the place where the edge cut a little later and so
 * a little further on. That takes η = atan(tan λ·sin κ) from the relief square to the edge. On spiral flutes the edge
 * itself runs along the axis, and the lead counts as L/(1 − L/L_f). Exact for a cone with an Archimedean fall at its
 * edge; relief itself small (tan α under 0.2).
 */
public final class ChamferRelief {
    static final Source GEOMETRY = Source.of("derived", "docs/methods/chamfer-relief.md");
    public static final Rule RADIUS =
            new Rule("r", "(d + d_p)/4", "mm", GEOMETRY, Trust.DERIVED, "radius at the middle of the chamfer");
    static final Rule HELIX = Rule.given("β", "deg", "helix of the flutes, + when they run the way the thread runs");
    static final Rule FLUTE_LEAD =
            new Rule("L_f", "pi*d/tan(β)", "mm", GEOMETRY, Trust.DERIVED, "lead of the flutes at the major diameter");
    static final Rule LEAD_ON_SPIRAL = new Rule(
            "L_w", "L/(1 - L/L_f)", "mm", GEOMETRY, Trust.DERIVED, "lead as the relief feels it on spiral flutes");
    static final Rule LEAD_ON_STRAIGHT =
            new Rule("L_w", "L", "mm", GEOMETRY, Trust.DERIVED, "lead as the relief feels it");
    static final Rule LEAD_ANGLE = new Rule(
            "λ", "atan(L_w/(2*pi*r))", "deg", GEOMETRY, Trust.DERIVED, "lead angle at the middle of the chamfer");
    public static final Rule LOSS = new Rule(
            "η",
            "atan(tan(λ)*sin(κ))",
            "deg",
            GEOMETRY,
            Trust.DERIVED,
            "relief lost to the advance, square to the edge");
    public static final Rule GROUND =
            new Rule("α_n", "α_w + η", "deg", GEOMETRY, Trust.DERIVED, "static relief to grind, square to the edge");
    public static final Rule TRANSVERSE = new Rule(
            "α_t",
            "atan(tan(α_n)/cos(κ))",
            "deg",
            Source.of("asme-b94.9", "chamfer relief angle, as quoted in machinerys-handbook-31 p. 977"),
            Trust.HANDBOOK,
            "static relief in the plane square to the axis");
    public static final Rule PER_RADIAN =
            new Rule("f'", "r*tan(α_n)/cos(κ)", "mm/rad", GEOMETRY, Trust.DERIVED, "radial fall per radian of land");
    public static final Rule RADIAL =
            new Rule("f_r", "f'*θ_L*pi/180", "mm", GEOMETRY, Trust.DERIVED, "radial fall at the heel");
    public static final Rule AXIAL =
            new Rule("f_a", "f_r/tan(κ)", "mm", GEOMETRY, Trust.DERIVED, "axial fall at the heel");
    public static final Rule SQUARE =
            new Rule("f_n", "f_r*cos(κ)", "mm", GEOMETRY, Trust.DERIVED, "fall at the heel, square to the chamfer");
    /** tan α above which the closed forms lose their first-order meaning. */
    private static final double GREATEST_TANGENT = 0.35;

    private ChamferRelief() {}

    /** Radius at the middle of the chamfer: half way between the basic major diameter and the point. */
    public static Length midRadius(Length major, Chamfer chamfer, Pen pen) {
        return Length.ofMm(
                pen.write(RADIUS, (major.mm() + chamfer.pointDiameter().mm()) / 4));
    }

    /** The lead that the relief feels: the thread's own, or on spiral flutes L/(1 − L/L_f). */
    public static Length leadFelt(ScrewThread thread, Flutes flutes, Pen pen) {
        double L = thread.lead().perTurn().mm();
        if (!flutes.kind().isSpiral()) {
            return Length.ofMm(pen.write(LEAD_ON_STRAIGHT, L));
        }
        return Length.ofMm(pen.write(
                LEAD_ON_SPIRAL, L / (1 - L / fluteLead(thread, flutes, pen).mm())));
    }

    /** Lead of the flutes at the basic major diameter; positive when they run the way the thread runs. */
    public static Length fluteLead(ScrewThread thread, Flutes flutes, Pen pen) {
        boolean sameWay = (flutes.kind() == FluteKind.SPIRAL_RIGHT) == (thread.hand() == Hand.RIGHT);
        double signed = sameWay ? flutes.helix().deg() : -flutes.helix().deg();
        double beta = pen.write(HELIX, signed);
        return Length.ofMm(pen.write(FLUTE_LEAD, Math.PI * thread.major().mm() / Math.tan(Math.toRadians(beta))));
    }

    /** Loss of relief to the advance, square to the edge, at a radius. */
    public static Angle loss(Length radius, Angle kappa, Length leadFelt, Pen pen) {
        double lambda = pen.write(LEAD_ANGLE, Math.toDegrees(Math.atan(leadFelt.mm() / (2 * Math.PI * radius.mm()))));
        return Angle.ofDeg(
                pen.write(LOSS, Math.toDegrees(Math.atan(Math.tan(Math.toRadians(lambda)) * Math.sin(kappa.rad())))));
    }

    /** The relief to grind for a wanted working relief α_w that has been written. */
    public static Relief forWorking(Angle working, Angle loss, Angle kappa, Pen pen) {
        double alpha_n = pen.write(GROUND, working.deg() + loss.deg());
        double tangent = Math.tan(Math.toRadians(alpha_n));
        if (!(working.deg() > 0) || tangent > GREATEST_TANGENT) {
            throw new OutOfRange(
                    "working-relief",
                    working.deg() + " deg",
                    "over 0, and at most %.1f deg on this chamfer"
                            .formatted(Math.toDegrees(Math.atan(GREATEST_TANGENT)) - loss.deg()),
                    "ask for the relief left at work, square to the edge; 4 to 12 deg is common");
        }
        double alpha_t = pen.write(TRANSVERSE, Math.toDegrees(Math.atan(tangent / Math.cos(kappa.rad()))));
        return new Relief(working, Angle.ofDeg(alpha_n), loss, Angle.ofDeg(alpha_t));
    }

    /** The fall that gives a static relief at a radius, over a land. */
    public static Fall fall(Relief relief, Length radius, Angle kappa, Angle land, Pen pen) {
        double perRadian =
                pen.write(PER_RADIAN, radius.mm() * Math.tan(relief.ground().rad()) / Math.cos(kappa.rad()));
        double f_r = pen.write(RADIAL, perRadian * land.rad());
        double f_a = pen.write(AXIAL, f_r / Math.tan(kappa.rad()));
        double f_n = pen.write(SQUARE, f_r * Math.cos(kappa.rad()));
        return new Fall(Length.ofMm(perRadian), Length.ofMm(f_r), Length.ofMm(f_a), Length.ofMm(f_n));
    }

    /** Working relief that a radial fall per radian leaves at a radius: the inverse of the two above. */
    public static Angle working(Length perRadian, Length radius, Angle kappa, Length leadFelt) {
        double alpha_n = Math.toDegrees(Math.atan(Math.cos(kappa.rad()) * perRadian.mm() / radius.mm()));
        return Angle.ofDeg(alpha_n - loss(radius, kappa, leadFelt, Pen.NONE).deg());
    }
}
