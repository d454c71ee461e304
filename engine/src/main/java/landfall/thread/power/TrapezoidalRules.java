// SPDX-License-Identifier: Apache-2.0
package landfall.thread.power;

import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed formulas of the trapezoidal thread, in millimetres. */
final class TrapezoidalRules {
    private static final Source FORM = Source.of("iso-2901", "profile formulas");
    private static final Source LIMITS = Source.of("iso-2903", "tolerances; 7e outside borne out by a published table");
    static final Source REMEMBERED = Source.of("memory", "ISO 2903");

    static final Rule D = Rule.given("d", "mm", "nominal diameter");
    static final Rule P = Rule.given("P", "mm", "pitch");
    static final Rule AC = Rule.table("ac", "mm", REMEMBERED, Trust.HANDBOOK, "crest clearance");
    static final Rule FACTOR = Rule.table("ks", "1", REMEMBERED, Trust.HANDBOOK, "tolerance factor for several starts");
    static final Rule D2 = form("d2", "d - 0.5 * P", "basic pitch diameter");
    static final Rule D1 = form("D1min", "d - P", "least minor diameter inside");
    static final Rule D_MAX = form("dmax", "d", "greatest major diameter outside");
    static final Rule INT_D2_MIN = form("D2min", "d2", "least pitch diameter inside");
    static final Rule D3 = form("d3max", "d - P - 2 * ac", "greatest minor diameter outside");
    static final Rule D4 = form("Dmin", "d + 2 * ac", "least major diameter inside");

    static final Rule OUT_TD2 = form("Td2", "round(Td2t * ks, 0.001)", "pitch diameter tolerance outside");
    static final Rule TD2 = form("TD2", "round(TD2t * ks, 0.001)", "pitch diameter tolerance inside");
    static final Rule D_MIN = limit("dmin", "d - Td", "least major diameter outside");
    static final Rule D2_MAX = limit("d2max", "d2 - es", "greatest pitch diameter outside");
    static final Rule D2_MIN = limit("d2min", "d2max - Td2", "least pitch diameter outside");
    static final Rule TD3 = limit("Td3", "round(es + 1.25 * Td2, 0.001)", "minor diameter tolerance outside");
    static final Rule D3_MIN = limit("d3min", "d3max - Td3", "least minor diameter outside");
    static final Rule INT_D2_MAX = limit("D2max", "D2min + TD2", "greatest pitch diameter inside");
    static final Rule D1_MAX = limit("D1max", "D1min + TD1", "greatest minor diameter inside");

    private TrapezoidalRules() {}

    static Rule deviation(char position, boolean remembered) {
        return Rule.table(
                "es",
                "mm",
                remembered ? REMEMBERED : LIMITS,
                Trust.HANDBOOK,
                "fundamental deviation " + position + ", below");
    }

    static Rule pitchTolerance(String symbol, int grade, TrapezoidalTolerances.Origin origin) {
        return tabulated(symbol, "pitch diameter tolerance, grade " + grade, origin);
    }

    static Rule crest(String symbol, String means, TrapezoidalTolerances.Origin origin) {
        return tabulated(symbol, means + ", grade 4", origin);
    }

    private static Rule tabulated(String symbol, String means, TrapezoidalTolerances.Origin origin) {
        return switch (origin) {
            case READ -> Rule.table(symbol, "mm", LIMITS, Trust.HANDBOOK, means);
            case REMEMBERED -> Rule.table(symbol, "mm", REMEMBERED, Trust.HANDBOOK, means);
            case FORMULA ->
                Rule.table(symbol, "mm", LIMITS, Trust.ESTIMATE, means + ", by formula and preferred number");
        };
    }

    private static Rule form(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", FORM, Trust.HANDBOOK, means);
    }

    private static Rule limit(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", LIMITS, Trust.HANDBOOK, means);
    }
}
