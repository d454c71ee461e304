// SPDX-License-Identifier: Apache-2.0
package landfall.tap.mark;

import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed rules of tap limits; D and P are the thread's, d_t the tap's crest. */
final class TapZoneRules {
    private static final Source HANDBOOK =
            Source.of("machinerys-handbook-31", "p. 972, tap marking with H or L limits");
    private static final Source CONSTANTS = Source.of("uscti-331", "constants A and B");
    private static final Source CUT = Source.of("machinerys-handbook-31", "Part A, Tables 22 and 23, cut-thread taps");
    private static final Source MAKERS = Source.of("memory", "7G of makers, beside ISO 2857");
    private static final Source NUT_CHART = Source.of("tap-maker-nut-chart", "least major diameter of the tap");

    static final Rule BASIC_INCH = Rule.given("E_b", "in", "basic pitch diameter to four places");
    static final Rule BASIC_METRIC = Rule.given("E_b", "mm", "basic pitch diameter");
    static final Rule OVER = Rule.given("o_mark", "in", "oversize marked on the tap");
    static final Rule OVER_MIN = inch("E_t.min", "E_b + o_mark", HANDBOOK, "least pitch diameter of the tap as marked");
    static final Rule OVER_MAX =
            inch("E_t.max", "E_t.min + 0.0005", HANDBOOK, "greatest pitch diameter of the tap as marked");
    static final Rule OWN_MIN = Rule.given("E_t.min", "mm", "least pitch diameter of the tap");
    static final Rule OWN_MAX = Rule.given("E_t.max", "mm", "greatest pitch diameter of the tap");

    static final Rule D = Rule.given("D_t", "in", "basic major diameter to four places");
    static final Rule P = Rule.given("P_t", "in", "pitch");
    static final Rule A = inch("A_t", "round(0.130*P_t, 0.0001)", CONSTANTS, "crest over basic, at most");
    static final Rule SHARE_B = Rule.table("b_t", "1", CONSTANTS, Trust.HANDBOOK, "major tolerance over the pitch");
    static final Rule B = inch("B_t", "round(b_t*P_t, 0.0001)", CONSTANTS, "tolerance of the tap's major diameter");
    static final Rule MAJOR_MAX = inch("d_t.max", "D_t + A_t", CONSTANTS, "greatest major diameter of the tap");
    static final Rule MAJOR_MIN = inch("d_t.min", "d_t.max - B_t", CONSTANTS, "least major diameter of the tap");

    static final Rule GRADE_5 = Rule.table(
            "t_5", "mm", Source.of("iso-965-1", "pitch tolerance inside, grade 5"), Trust.HANDBOOK, "t of the class");
    static final Rule SEVEN_G_MIN =
            metric("E_t.min", "E_b + 0.7*t_5", MAKERS, "least pitch diameter of the tap as marked");
    static final Rule SEVEN_G_MAX =
            metric("E_t.max", "E_b + 0.9*t_5", MAKERS, "greatest pitch diameter of the tap as marked");
    static final Rule D_METRIC = Rule.given("D_t", "mm", "basic major diameter");
    static final Rule MAJOR_METRIC = metric("d_t.min", "D_t + 0.4*t_5", NUT_CHART, "least major diameter of the tap");

    static final Rule CUT_PITCH_MIN = cut("E_t.min", "least pitch diameter of a cut-thread tap");
    static final Rule CUT_PITCH_MAX = cut("E_t.max", "greatest pitch diameter of a cut-thread tap");
    static final Rule CUT_MAJOR_MIN = cut("d_t.min", "least major diameter of a cut-thread tap");
    static final Rule CUT_MAJOR_MAX = cut("d_t.max", "greatest major diameter of a cut-thread tap");

    private TapZoneRules() {}

    private static Rule inch(String symbol, String formula, Source source, String means) {
        return new Rule(symbol, formula, "in", source, Trust.HANDBOOK, means);
    }

    private static Rule metric(String symbol, String formula, Source source, String means) {
        return new Rule(symbol, formula, "mm", source, Trust.HANDBOOK, means);
    }

    private static Rule cut(String symbol, String means) {
        return Rule.table(symbol, "in", CUT, Trust.HANDBOOK, means);
    }
}
