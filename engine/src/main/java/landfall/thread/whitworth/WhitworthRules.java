// SPDX-License-Identifier: Apache-2.0
package landfall.thread.whitworth;

import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed formulas of BSW and BSF, in inches. */
final class WhitworthRules {
    private static final Source FORM = Source.of("bs-84", "form and basic sizes, as tables of it print them");
    private static final Source TOLERANCE = Source.of("memory", "BS 84, tolerances");

    static final Rule D = Rule.given("D", "in", "basic major diameter");
    static final Rule N = Rule.given("n", "1", "threads an inch");
    static final Rule P = form("P", "1 / n", "pitch");
    static final Rule H = form("h", "round(0.640327 * P, 0.0001)", "thread depth");
    static final Rule D2 = form("D2", "round(D - 0.640327 * P, 0.0001)", "basic effective diameter");
    static final Rule D1 = form("D1", "round(D - 2 * 0.640327 * P, 0.0001)", "basic minor diameter");
    static final Rule T = tolerance(
            "T", "0.002 * D^(1/3) + 0.003 * sqrt(D) + 0.005 * sqrt(P)", "unit of tolerance, engaged over one diameter");

    static final Rule D_MAX = form("dmax", "D", "greatest major diameter outside");
    static final Rule D2_TOP = form("d2max", "D2", "greatest effective diameter outside");
    static final Rule D1_TOP = form("d1max", "D1", "greatest minor diameter outside");
    static final Rule INT_D2_MIN = form("D2min", "D2", "least effective diameter inside");
    static final Rule INT_D1_MIN = form("D1min", "D1", "least minor diameter inside");
    static final Rule D_MIN =
            tolerance("dmin", "round(D - Te - 0.01 * sqrt(P), 0.0001)", "least major diameter outside");
    static final Rule D2_MIN = tolerance("d2min", "round(D2 - Te, 0.0001)", "least effective diameter outside");
    static final Rule D2_MAX = tolerance("D2max", "round(D2 + Ti, 0.0001)", "greatest effective diameter inside");
    static final Rule TD1_FINE =
            tolerance("TD1", "0.2 * P + 0.004", "minor diameter tolerance inside, 26 an inch and finer");
    static final Rule TD1_MIDDLE =
            tolerance("TD1", "0.2 * P + 0.005", "minor diameter tolerance inside, 22 to 25 an inch");
    static final Rule TD1_COARSE =
            tolerance("TD1", "0.2 * P + 0.007", "minor diameter tolerance inside, coarser than 22 an inch");
    static final Rule D1_MAX = tolerance("D1max", "round(D1 + TD1, 0.0001)", "greatest minor diameter inside");

    private WhitworthRules() {}

    static Rule classTolerance(String symbol, String share, String name) {
        return tolerance(symbol, share + " * T", "effective diameter tolerance, " + name);
    }

    private static Rule form(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "in", FORM, Trust.HANDBOOK, means);
    }

    private static Rule tolerance(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "in", TOLERANCE, Trust.HANDBOOK, means);
    }
}
