// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed formulas of NPT, in inches. */
final class NptRules {
    private static final Source TABLE = Source.of("asme-b1.20.1", "table of sizes, as copies print it");
    private static final Source FORMULA = Source.of("memory", "ASME B1.20.1; borne out by the published E0, E1 and L2");

    static final Rule D = Rule.table("D", "in", TABLE, Trust.HANDBOOK, "outside diameter of the pipe");
    static final Rule N = Rule.table("n", "1", TABLE, Trust.HANDBOOK, "threads an inch");
    static final Rule P = rule("P", "1 / n", "pitch");
    static final Rule L1 = Rule.table("L1", "in", TABLE, Trust.HANDBOOK, "hand-tight length");
    static final Rule L2 = rule("L2", "round((0.8 * D + 6.8) * P, 0.00001)", "effective thread outside");
    static final Rule L3 = Rule.table("L3p", "1", TABLE, Trust.HANDBOOK, "pitches of wrench make-up");
    static final Rule L3_LENGTH = rule("L3", "round(L3p * P, 0.00001)", "wrench make-up");
    static final Rule AT_SMALL_END = rule("A0", "0", "where the small end stands");
    static final Rule AT_MAKE_UP = rule("A3", "0 - L3", "where wrench make-up ends in the hole");
    static final Rule TAPER =
            new Rule("taper", "1 / 16", "1", FORMULA, Trust.HANDBOOK, "growth of the diameter over the length");
    static final Rule TURNS_PLUS =
            Rule.table("plus", "1", TABLE, Trust.HANDBOOK, "turns that the gauge may stand deeper");
    static final Rule TURNS_MINUS = Rule.table("minus", "1", TABLE, Trust.HANDBOOK, "turns that it may stand out");
    static final Rule H = rule("h", "round(0.8 * P, 0.00001)", "thread height");
    static final Rule E0 = rule("E0", "round(D - (0.05 * D + 1.1) * P, 0.00001)", "pitch diameter at the pipe's end");
    static final Rule E1 = rule("E1", "round(E0 + L1 / 16, 0.00001)", "pitch diameter at the hand-tight plane");
    static final Rule E2 =
            rule("E2", "round(E0 + L2 / 16, 0.00001)", "pitch diameter at the end of the effective thread");
    static final Rule E3 = rule("E3", "round(E0 - L3 / 16, 0.00001)", "pitch diameter at the end of wrench make-up");
    static final Rule TRUNCATION_MIN =
            rule("f_min", "round(0.033 * P, 0.0001)", "least truncation of crest and root each");
    static final Rule TRUNCATION_MAX =
            Rule.table("f_max", "in", TABLE, Trust.HANDBOOK, "greatest truncation of crest and root each");
    static final Rule[] CREST = {
        crest("D3", "E3 + h"), crest("D0", "E0 + h"), crest("D1", "E1 + h"), crest("D2", "E2 + h")
    };
    static final Rule[] ROOT = {root("K3", "E3 - h"), root("K0", "E0 - h"), root("K1", "E1 - h"), root("K2", "E2 - h")};
    static final Rule[] PITCH = {E3, E0, E1, E2};

    private NptRules() {}

    private static Rule crest(String symbol, String formula) {
        return rule(symbol, formula, "major diameter at the plane " + symbol.charAt(1));
    }

    private static Rule root(String symbol, String formula) {
        return rule(symbol, formula, "minor diameter at the plane " + symbol.charAt(1));
    }

    private static Rule rule(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "in", FORMULA, Trust.HANDBOOK, means);
    }
}
