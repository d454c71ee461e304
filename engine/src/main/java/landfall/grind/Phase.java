// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * Where on its land a wheel of real size grinds, and what a rise that starts or ends early or late leaves.
 *
 * <p>With the wheel at centre height, land angle θ is ground when the centre line stands at θ + δ. The wheel's own arc
 * goes on relieving for a while after the rise has ended: the slope dies over the last δ, the land is not left bare.
 *
 * @param delta δ, by which the ground place trails the centre line
 * @param bareMargin land behind the edge that a late rise leaves unrelieved
 * @param edgeDrop how far the edge itself is lowered because the rise starts before the edge is ground
 * @param dying land before the heel over which the slope dies; 0 when the rise reaches δ past the heel
 */
public record Phase(Angle delta, Angle bareMargin, Length edgeDrop, Angle dying) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/cam-and-gap.md");
    static final Rule WHEEL_RADIUS = Rule.given("R_w", "mm", "radius of the wheel");
    static final Rule NORMAL_RADIUS =
            new Rule("ρ", "r/cos(κ)", "mm", GEOMETRY, Trust.DERIVED, "radius of the chamfer square to its edge");
    public static final Rule DELTA = new Rule(
            "δ",
            "α_n*R_w/(R_w + ρ)/cos(κ)",
            "deg",
            GEOMETRY,
            Trust.DERIVED,
            "angle by which the ground place trails the centre line (within 5 %)");
    static final Rule START = Rule.given("t_s", "deg", "land angle on the centre line when the rise begins");
    static final Rule RISE = Rule.given("B", "deg", "rise angle of a lobe");
    public static final Rule BARE =
            new Rule("m", "max(0, t_s - δ/2)", "deg", GEOMETRY, Trust.DERIVED, "land left bare behind the edge");
    public static final Rule DROP = new Rule(
            "f_e",
            "f'*max(0, δ/2 - t_s)*pi/180",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "how far the edge is lowered by a rise that starts before it is ground, radially");
    public static final Rule DYING = new Rule(
            "θ_dying",
            "min(θ_L, max(0, θ_L + δ - t_s - B))",
            "deg",
            GEOMETRY,
            Trust.DERIVED,
            "land before the heel over which the slope dies");

    static Phase of(ChamferPlace place, Relief relief, Fall fall, Fixture fixture, Pen pen) {
        double R_w = pen.write(WHEEL_RADIUS, fixture.wheel().radius().mm());
        double kappa = place.kappa().rad();
        double rho = pen.write(NORMAL_RADIUS, place.midRadius().mm() / Math.cos(kappa));
        double delta = pen.write(DELTA, relief.ground().deg() * R_w / (R_w + rho) / Math.cos(kappa));
        double t_s = pen.write(START, fixture.cam().lobe().riseStart().deg());
        double B = pen.write(RISE, fixture.cam().lobe().riseAngle().deg());
        double m = pen.write(BARE, Math.max(0, t_s - delta / 2));
        double f_e = pen.write(DROP, fall.perRadian().mm() * Math.toRadians(Math.max(0, delta / 2 - t_s)));
        double land = place.land().deg();
        double dying = pen.write(DYING, Math.min(land, Math.max(0, land + delta - t_s - B)));
        return new Phase(Angle.ofDeg(delta), Angle.ofDeg(m), Length.ofMm(f_e), Angle.ofDeg(dying));
    }
}
