// SPDX-License-Identifier: Apache-2.0
package landfall.thread.power;

import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed formulas of Acme, in inches; full and stub form differ in the height alone. */
record AcmeRules(Rule pitchLine, Rule root, Rule internalMinor, Rule rootTolerance) {
    private static final Source RULES = Source.of("memory", "ASME B1.5; class 2G borne out by a published list");
    private static final Source STUB = Source.of("memory", "ASME B1.8");

    static final Rule D = Rule.given("D", "in", "basic major diameter");
    static final Rule P_GIVEN = Rule.given("P", "in", "pitch");
    static final Rule CLEARANCE = rule("c", "if(P >= 0.1, 0.02, 0.01)", "clearance at major and minor diameter");
    static final Rule CREST = rule("Td", "max(0.05 * P, 0.005)", "tolerance of the crests");
    static final Rule D_MAX = rule("dmax", "D", "greatest major diameter outside");
    static final Rule D_MIN = rule("dmin", "round(D - Td, 0.0001)", "least major diameter outside");
    static final Rule D2_MAX = rule("d2max", "E - es", "greatest pitch diameter outside");
    static final Rule D2_MIN = rule("d2min", "d2max - round(T, 0.0001)", "least pitch diameter outside");
    static final Rule D1_MIN = rule("d1min", "round(d1max - Tr, 0.0001)", "least minor diameter outside");
    static final Rule INT_D_MIN = rule("Dmin", "round(D + c, 0.0001)", "least major diameter inside");
    static final Rule INT_D_MAX = rule("Dmax", "round(D + 2 * c, 0.0001)", "greatest major diameter inside");
    static final Rule INT_D2_MIN = rule("D2min", "E", "least pitch diameter inside");
    static final Rule INT_D2_MAX = rule("D2max", "E + round(T, 0.0001)", "greatest pitch diameter inside");
    static final Rule INT_D1_MAX = rule("D1max", "round(D1min + Td, 0.0001)", "greatest minor diameter inside");

    static final AcmeRules FULL = new AcmeRules(
            rule("E", "round(D - 0.5 * P, 0.0001)", "basic pitch diameter"),
            rule("d1max", "round(D - P - c, 0.0001)", "greatest minor diameter outside"),
            rule("D1min", "round(D - P, 0.0001)", "least minor diameter inside"),
            rule("Tr", "round(1.5 * T, 0.0001)", "minor diameter tolerance outside"));

    static final AcmeRules STUBBED = new AcmeRules(
            stub("E", "round(D - 0.3 * P, 0.0001)", "basic pitch diameter"),
            stub("d1max", "round(D - 0.6 * P - c, 0.0001)", "greatest minor diameter outside"),
            stub("D1min", "round(D - 0.6 * P, 0.0001)", "least minor diameter inside"),
            stub("Tr", "round(T, 0.0001)", "minor diameter tolerance outside"));

    static Rule rule(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "in", RULES, Trust.HANDBOOK, means);
    }

    private static Rule stub(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "in", STUB, Trust.ESTIMATE, means);
    }
}
