// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.grind.ChamferRelief;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * From the slope dialled on the chamfer at rest to the relief that is on the tap.
 *
 * <p>The dial stands square to the chamfer and the surface falls away from it: {@code f' = -k/cos(κ)} radially, so the
 * static relief square to the edge is {@code atan(-k/r)} and its uncertainty {@code cos²(α_n) u(k)/r}.
 */
final class ReliefJudge {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/dialling.md, relief found");
    static final Rule FALL =
            new Rule("f'", "-k/cos(κ)", "mm/rad", GEOMETRY, Trust.DERIVED, "radial fall per radian of land, as found");
    static final Rule GROUND = new Rule(
            "α_n", "atan(cos(κ)*f'/r)", "deg", GEOMETRY, Trust.DERIVED, "static relief found, square to the edge");
    static final Rule WORKING =
            new Rule("α_w", "α_n - η", "deg", GEOMETRY, Trust.DERIVED, "working relief left, square to the edge");
    static final Rule WORKING_STANDARD = new Rule(
            "u_α", "cos(α_n)^2*u_k/r*180/pi", "deg", GEOMETRY, Trust.DERIVED, "standard uncertainty of the relief");

    static final Rule WANTED = Rule.given("α_wanted", "deg", "working relief that it is judged by");
    static final Rule LAND = Rule.given("θ_L", "deg", "land angle, edge to heel");
    static final Rule AXIAL_ONLY = new Rule(
            "a_was",
            "f'/tan(κ)*θ_L*pi/180",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "axial rise alone that grinds the same again");
    static final Rule RADIAL_ONLY = new Rule(
            "b_was", "f'*θ_L*pi/180", "mm", GEOMETRY, Trust.DERIVED, "radial rise alone that grinds the same again");
    static final Rule SQUARE_ONLY = new Rule(
            "c_was",
            "f'*cos(κ)*θ_L*pi/180",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "rise square to the chamfer that grinds the same");

    private ReliefJudge() {}

    /** From the whole land's slope, or from that behind a bare margin where the rise begins late. */
    static ReliefFound of(FitsFound fits, TapFacts tap, Beside beside, Pen pen) {
        Fitted slope = fits.risingSlope();
        boolean bare = fits.bareMargin();
        double cosine = Math.cos(tap.chamfer().rad());
        double r = tap.radius().mm();
        double fall = pen.write(bare ? of(FALL) : FALL, -slope.value().mm() / cosine);
        double ground = pen.write(GROUND, Math.toDegrees(Math.atan(cosine * fall / r)));
        double loss = ChamferRelief.loss(tap.radius(), tap.chamfer(), tap.leadFelt(), pen)
                .deg();
        double working = pen.write(WORKING, ground - loss);
        double flat = Math.pow(Math.cos(Math.toRadians(ground)), 2) / r;
        double standard = pen.write(
                bare ? of(WORKING_STANDARD) : WORKING_STANDARD,
                Math.toDegrees(flat * slope.standard().mm()));
        FittedAngle left = new FittedAngle(
                Angle.ofDeg(working),
                Angle.ofDeg(standard),
                Angle.ofRad(flat * slope.uncertainty().mm()));
        Angle wanted = Angle.ofDeg(pen.write(WANTED, wanted(tap, beside, loss).deg()));
        return new ReliefFound(
                Length.ofMm(fall),
                left,
                Angle.ofDeg(ground),
                wanted,
                asItWas(fall, tap, pen),
                ReliefFound.judge(left, wanted, bare));
    }

    /** The same rule for the slope behind the margin. */
    private static Rule of(Rule rule) {
        String formula = rule.formula().replace("u_k", "u_kb").replace("-k/", "-k_b/");
        return new Rule(rule.symbol(), formula, rule.unit(), rule.source(), rule.trust(), rule.means());
    }

    private static ReliefFound.AsItWas asItWas(double fall, TapFacts tap, Pen pen) {
        double land = Math.toRadians(pen.write(LAND, tap.land().deg()));
        double kappa = tap.chamfer().rad();
        return new ReliefFound.AsItWas(
                Length.ofMm(pen.write(AXIAL_ONLY, fall / Math.tan(kappa) * land)),
                Length.ofMm(pen.write(RADIAL_ONLY, fall * land)),
                Length.ofMm(pen.write(SQUARE_ONLY, fall * Math.cos(kappa) * land)));
    }

    /** The working relief that the wanted rises would leave, or the one asked for, or the usual one. */
    private static Angle wanted(TapFacts tap, Beside beside, double loss) {
        Aim aim = beside.aim();
        if (aim == null) {
            return beside.relief() != null ? beside.relief() : ReliefFound.usual(tap.chamfer());
        }
        double square = aim.squareFall(tap.chamfer());
        return Angle.ofDeg(Math.toDegrees(Math.atan(square / tap.radius().mm())) - loss);
    }
}
