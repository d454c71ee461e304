// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import landfall.quantity.UnitSystem;
import landfall.thread.Family;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * The printed formulas of thread strength.
 *
 * @param area of the screw, by its system and strength
 * @param screwMajor least major diameter of the screw, from its limits above
 * @param screwPitch least pitch diameter of the screw
 * @param holePitch greatest pitch diameter of the hole
 * @param hole greatest hole
 */
public record StrengthRules(Rule area, Rule screwMajor, Rule screwPitch, Rule holePitch, Rule hole) {
    private static final Source H28 = Source.of("nbs-h28", "length of engagement of threads");
    private static final Source REMEMBERED = Source.of("memory", "Handbook H28, thread strength");

    static final Rule HOLE_GIVEN = Rule.given("K_n", "mm", "hole as found in the part");
    static final Rule AREA_INCH = new Rule(
            "A_t", "0.7854*(d_0 - 0.9743*P_0)^2", "mm²", H28, Trust.HANDBOOK, "tensile stress area of the screw");
    static final Rule AREA_STRONG = new Rule(
            "A_t",
            "3.1416*(E_s/2 - 0.16238*P_0)^2",
            "mm²",
            REMEMBERED,
            Trust.HANDBOOK,
            "tensile stress area of a screw over 100,000 psi");
    static final Rule AREA_METRIC = new Rule(
            "A_t",
            "pi/4*(d_0 - 0.9382*P_0)^2",
            "mm²",
            Source.of("memory", "ISO 898-1, nominal stress area"),
            Trust.HANDBOOK,
            "tensile stress area of the screw");
    public static final Rule EXTERNAL = new Rule(
            "A_s",
            "pi*K_n*(1/2 + 0.57735*(E_s - K_n)/P_0)",
            "mm²/mm",
            H28,
            Trust.HANDBOOK,
            "shear area of the screw's thread over the engagement");
    public static final Rule INTERNAL = new Rule(
            "A_n",
            "pi*d_s*(1/2 + 0.57735*(d_s - E_n)/P_0)",
            "mm²/mm",
            REMEMBERED,
            Trust.HANDBOOK,
            "shear area of the hole's thread over the engagement");
    static final Rule EQUAL =
            new Rule("L_e0", "2*A_t/A_s", "mm", H28, Trust.HANDBOOK, "engagement to break the screw, equal materials");
    static final Rule SCREW = Rule.given("S_s", "N/mm²", "tensile strength of the screw");
    static final Rule PART = Rule.given("S_p", "N/mm²", "tensile strength of the part");
    public static final Rule RATIO = new Rule(
            "J",
            "A_s*S_s/(A_n*S_p)",
            "1",
            REMEMBERED,
            Trust.HANDBOOK,
            "strength of the screw's thread over that of the hole's");
    public static final Rule RATIO_EQUAL = new Rule(
            "J", "A_s/A_n", "1", REMEMBERED, Trust.HANDBOOK, "strength of the screw's thread over that of the hole's");
    public static final Rule ENGAGEMENT = new Rule(
            "L_e", "L_e0*max(1, J)", "mm", REMEMBERED, Trust.HANDBOOK, "engagement at which the screw breaks first");

    static StrengthRules of(HoleWish wish) {
        return new StrengthRules(
                tensileArea(wish),
                restated("d_s", "dmin", wish, "least major diameter of the screw"),
                restated("E_s", "d2min", wish, "least pitch diameter of the screw"),
                restated("E_n", "D2max", wish, "greatest pitch diameter of the hole"),
                restated("K_n", greatestHole(wish), wish, "greatest hole"));
    }

    static Rule tensileArea(HoleWish wish) {
        if (wish.callOut().thread().family().system() == UnitSystem.METRIC) {
            return AREA_METRIC;
        }
        return Strength.isStrong(wish) ? AREA_STRONG : AREA_INCH;
    }

    private static String greatestHole(HoleWish wish) {
        boolean byEngagement =
                wish.place().depth() != null && wish.callOut().thread().family() == Family.UNIFIED;
        return byEngagement ? "Dhmax" : "D1max";
    }

    /** A limit in millimetres: by its symbol above where the family's symbols are known here, else as it stands. */
    private static Rule restated(String symbol, String from, HoleWish wish, String means) {
        return switch (wish.callOut().thread().family()) {
            case UNIFIED ->
                new Rule(symbol, "25.4*" + from, "mm", Source.of("derived", "limits of size"), Trust.DERIVED, means);
            case METRIC -> new Rule(symbol, from, "mm", Source.of("derived", "limits of size"), Trust.DERIVED, means);
            default -> Rule.table(symbol, "mm", Source.of("derived", "limits of size"), Trust.DERIVED, means);
        };
    }
}
