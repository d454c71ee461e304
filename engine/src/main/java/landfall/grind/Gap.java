// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Angle;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * Whether the cam is back before the next cutting edge comes to the wheel.
 *
 * <p>A plate cam does not know where the land ends: it dives on to the end of its own rise. So the angle there is
 * counts from the end of the rise to the next edge on the centre line, and the fall that the wheel must come back from
 * is the fall at the top of the lobe. Γ is within 1 % of the exact distance and low; one degree of safety covers that.
 *
 * @param needed with one degree of safety
 * @param have from the end of the rise to the next edge
 * @param longestReturn longest return that would still clear; null when none does
 */
public record Gap(
        Angle needed, Angle have, boolean clear, @Nullable Angle longestReturn) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/cam-and-gap.md");
    static final Rule POINT_RADIUS = new Rule(
            "r_p", "d_p/2", "mm", GEOMETRY, Trust.DERIVED, "radius at the point, the smallest under the wheel");
    static final Rule NORMAL_RADIUS =
            new Rule("ρ_p", "r_p/cos(κ)", "mm", GEOMETRY, Trust.DERIVED, "radius at the point square to the chamfer");
    public static final Rule TOP = new Rule(
            "f_ntop",
            "f_top*cos(κ)",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "fall at the top of the lobe, square to the chamfer");
    public static final Rule REACH = new Rule(
            "Γ",
            "sqrt(2*f_ntop*R_w*ρ_p/(R_w + ρ_p))/r_p*180/pi",
            "deg",
            GEOMETRY,
            Trust.DERIVED,
            "angle over which the wheel reaches ahead at the top of the lobe");
    static final Rule RETURN = Rule.given("Δ", "deg", "return angle of a lobe");
    static final Rule SAFETY = Rule.table("q_g", "deg", GEOMETRY, Trust.PRACTICE, "safety, as Γ is up to 0.3 deg low");
    public static final Rule NEEDED = new Rule(
            "g_need",
            "if(Δ > Γ/2, Δ + Γ^2/(4*Δ), Γ) + q_g",
            "deg",
            GEOMETRY,
            Trust.DERIVED,
            "angle needed from the end of the rise to the next edge");
    static final Rule FLUTES = Rule.given("N", "1", "flutes");
    public static final Rule HAVE = new Rule(
            "g_have",
            "360/N - (t_s + B)",
            "deg",
            GEOMETRY,
            Trust.DERIVED,
            "angle there is from the end of the rise to the next edge");
    public static final Rule LONGEST_RETURN = new Rule(
            "Δ_max",
            "min(360/N - B, (g_have - q_g + sqrt((g_have - q_g)^2 - Γ^2))/2)",
            "deg",
            GEOMETRY,
            Trust.DERIVED,
            "longest return that still clears");

    static final double SAFETY_DEG = 1;

    static Gap of(Grinding grinding, int flutes, double topMm, Pen pen) {
        Lobe lobe = grinding.fixture().cam().lobe();
        double cosine = Math.cos(grinding.place().kappa().rad());
        double R_w = grinding.fixture().wheel().radius().mm();
        double r_p = pen.write(POINT_RADIUS, grinding.place().pointRadius().mm());
        double rho_p = pen.write(NORMAL_RADIUS, r_p / cosine);
        double f_ntop = pen.write(TOP, topMm * cosine);
        double reach = pen.write(REACH, Math.toDegrees(Math.sqrt(2 * f_ntop * R_w * rho_p / (R_w + rho_p)) / r_p));
        double back = pen.write(RETURN, lobe.returnAngle().deg());
        double q_g = pen.write(SAFETY, SAFETY_DEG);
        double needed = pen.write(NEEDED, (back > reach / 2 ? back + reach * reach / (4 * back) : reach) + q_g);
        double N = pen.write(FLUTES, flutes);
        double have = pen.write(
                HAVE, 360 / N - (lobe.riseStart().deg() + lobe.riseAngle().deg()));
        double free = have - q_g;
        Angle longest = null;
        if (free >= reach) {
            double root = (free + Math.sqrt(free * free - reach * reach)) / 2;
            longest = Angle.ofDeg(pen.write(
                    LONGEST_RETURN, Math.min(360 / N - lobe.riseAngle().deg(), root)));
        }
        return new Gap(Angle.ofDeg(needed), Angle.ofDeg(have), have >= needed, longest);
    }
}
