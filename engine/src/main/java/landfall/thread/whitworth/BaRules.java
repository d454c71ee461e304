// SPDX-License-Identifier: Apache-2.0
package landfall.thread.whitworth;

import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed formulas of BA, in millimetres. */
final class BaRules {
    private static final Source BASIC = Source.of("bs-93", "form and basic sizes, as tables of it print them");
    private static final Source TOLERANCE = Source.of("bs-93", "tolerance formulas, from a poor scan");
    private static final Source HALVED =
            Source.of("derived", "docs/methods/whitworth-and-ba.md, BA effective diameter");

    static final Rule D = Rule.table("D", "mm", BASIC, Trust.HANDBOOK, "basic major diameter");
    static final Rule P = Rule.table("P", "mm", BASIC, Trust.HANDBOOK, "pitch");
    static final Rule D2 = basic("D2", "round(D - 0.6 * P, 0.001)", "basic effective diameter");
    static final Rule D1 = basic("D1", "round(D - 1.2 * P, 0.001)", "basic minor diameter");

    static final Rule D_MAX = basic("dmax", "D", "greatest major diameter outside");
    static final Rule D2_TOP = basic("d2max", "D2", "greatest effective diameter outside");
    static final Rule D1_TOP = basic("d1max", "D1", "greatest minor diameter outside");
    static final Rule INT_D2_MIN = basic("D2min", "D2", "least effective diameter inside");
    static final Rule INT_D1_MIN = basic("D1min", "D1", "least minor diameter inside");
    static final Rule D2_MAX =
            tolerance("D2max", "round(D2 + 0.12 * P + 0.03, 0.001)", "greatest effective diameter inside");
    static final Rule D1_MAX = tolerance("D1max", "round(D1 + 0.375 * P, 0.001)", "greatest minor diameter inside");

    static final Rule D_MIN_CLOSE =
            tolerance("dmin", "round(D - 0.15 * P, 0.001)", "least major diameter outside, close");
    static final Rule D_MIN = tolerance("dmin", "round(D - 0.2 * P, 0.001)", "least major diameter outside, 0 to 10");
    static final Rule D_MIN_SMALL =
            tolerance("dmin", "round(D - 0.25 * P, 0.001)", "least major diameter outside, 11 to 16");
    static final Rule D2_MIN_CLOSE = halved("d2min", "round(D2 - 0.08 * P - 0.02, 0.001)");
    static final Rule D2_MIN = halved("d2min", "round(D2 - 0.1 * P - 0.025, 0.001)");
    static final Rule D1_MIN_CLOSE =
            tolerance("d1min", "round(D1 - 2 * (0.08 * P + 0.02), 0.001)", "least minor diameter outside, close");
    static final Rule D1_MIN = tolerance("d1min", "round(D1 - 0.2 * P - 0.05, 0.001)", "least minor diameter outside");

    private BaRules() {}

    private static Rule basic(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", BASIC, Trust.HANDBOOK, means);
    }

    private static Rule tolerance(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", TOLERANCE, Trust.HANDBOOK, means);
    }

    private static Rule halved(String symbol, String formula) {
        return new Rule(symbol, formula, "mm", HALVED, Trust.DERIVED, "least effective diameter outside");
    }
}
