// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.grind.Place;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/** How the fitted figures are written down. */
final class RunOutRules {
    static final Source FIT = Source.of("derived", "docs/methods/dialling.md");
    static final Source STUDENT = Source.of("jcgm-100", "G.3, table G.2");
    static final Rule SPREAD = Rule.fitted("s_y", "mm", FIT, "spread of one reading, scatter or rounding");
    static final Rule SLOPE = Rule.fitted("k", "mm/rad", FIT, "slope of the reading over the land, sign as read");
    static final Rule SLOPE_STANDARD = Rule.fitted("u_k", "mm/rad", FIT, "standard uncertainty of the slope");
    static final Rule RISING_SLOPE = Rule.fitted("k_b", "mm/rad", FIT, "slope from where the rise begins");
    static final Rule RISING_STANDARD = Rule.fitted("u_kb", "mm/rad", FIT, "its standard uncertainty");
    static final Rule STUDENT_T =
            Rule.table("t_95", "1", STUDENT, Trust.STANDARD, "Student's factor, 95 %, for the spare readings");
    static final Rule SLOPE_EXPANDED =
            new Rule("U_k", "t_95*u_k", "mm/rad", STUDENT, Trust.STANDARD, "expanded uncertainty of the slope, 95 %");
    static final Rule COSINE = Rule.fitted("E", "mm", FIT, "run-out towards the edge of land 1");
    static final Rule SINE = Rule.fitted("F", "mm", FIT, "run-out a quarter turn behind it");
    static final Rule REFERENCE_COSINE = Rule.fitted("E_r", "mm", FIT, "run-out of the reference, radially");
    static final Rule REFERENCE_SINE = Rule.fitted("F_r", "mm", FIT, "the same a quarter turn behind");
    static final Rule NET_COSINE =
            new Rule("E_n", "E - cos(κ)*E_r", "mm", FIT, Trust.DERIVED, "run-out against the reference");
    static final Rule NET_SINE =
            new Rule("F_n", "F - cos(κ)*F_r", "mm", FIT, Trust.DERIVED, "the same a quarter turn behind");
    static final Rule ECCENTRICITY =
            new Rule("e", "sqrt(E^2 + F^2)", "mm", FIT, Trust.DERIVED, "eccentricity, half the total run-out");
    static final Rule NET_ECCENTRICITY =
            new Rule("e", "sqrt(E_n^2 + F_n^2)", "mm", FIT, Trust.DERIVED, "eccentricity against the reference");
    static final Rule DIRECTION = new Rule(
            "φ",
            "atan(F/E) + if(E < 0, 180, if(F < 0, 360, 0))",
            "deg",
            FIT,
            Trust.DERIVED,
            "high side, from the edge of land 1 backwards over the lands");
    static final Rule NET_DIRECTION = new Rule(
            "φ",
            "atan(F_n/E_n) + if(E_n < 0, 180, if(F_n < 0, 360, 0))",
            "deg",
            FIT,
            Trust.DERIVED,
            "high side, from the edge of land 1 backwards over the lands");

    private RunOutRules() {}

    static void writeFit(Solution solution, FitsFound fits, Pen pen) {
        DialFit fit = fits.main();
        pen.write(SPREAD, fit.spread().mm());
        pen.write(SLOPE, fit.slope().value().mm());
        pen.write(SLOPE_STANDARD, fit.slope().standard().mm());
        pen.write(STUDENT_T, solution.factor());
        pen.write(SLOPE_EXPANDED, fit.slope().uncertainty().mm());
        if (fits.bareMargin()) {
            pen.write(RISING_SLOPE, fits.risingSlope().value().mm());
            pen.write(RISING_STANDARD, fits.risingSlope().standard().mm());
        }
    }

    static void writeRunOut(@Nullable RunOut own, @Nullable Against against, Place place, Pen pen) {
        if (own == null) {
            return;
        }
        pen.write(COSINE, own.cosine().value().mm());
        pen.write(SINE, own.sine().value().mm());
        if (against == null) {
            writeVector(own, ECCENTRICITY, DIRECTION, pen);
            return;
        }
        pen.write(REFERENCE_COSINE, against.reference().cosine().value().mm());
        pen.write(REFERENCE_SINE, against.reference().sine().value().mm());
        pen.write(seenBy(place, NET_COSINE), against.net().cosine().value().mm());
        pen.write(seenBy(place, NET_SINE), against.net().sine().value().mm());
        writeVector(against.net(), NET_ECCENTRICITY, NET_DIRECTION, pen);
    }

    /** A dial that stands radially sees the whole of a radial run-out. */
    private static Rule seenBy(Place place, Rule rule) {
        return Against.isOnChamfer(place)
                ? rule
                : new Rule(
                        rule.symbol(),
                        rule.formula().replace("cos(κ)*", ""),
                        rule.unit(),
                        rule.source(),
                        rule.trust(),
                        rule.means());
    }

    private static void writeVector(RunOut found, Rule length, Rule direction, Pen pen) {
        pen.write(length, found.eccentricity().value().mm());
        if (found.cosine().value().mm() != 0) {
            pen.write(direction, found.towards().value().deg());
        }
    }
}
