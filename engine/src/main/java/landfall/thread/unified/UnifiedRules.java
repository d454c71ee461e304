// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed formulas of the Unified limits, in inches. Symbols as the standard writes them; D inside, d outside. */
final class UnifiedRules {
    /** The handbook's worked tables for 1/2-28 UNEF and 19/64-36 UNS. */
    static final Source WORKED = Source.of("machinerys-handbook-31", "Unified threads, worked Tables 3 to 6");
    /** Remembered parts that the published limits bear out. */
    static final Source BORNE_OUT = Source.of("memory", "ASME B1.1; borne out by the published limits of size");

    static final Source FROM_TABLES = Source.of("derived", "docs/methods/unified-threads.md, rounded root");

    /** The copies of the standard's tables that {@code unified-published.csv} names row by row. */
    static final Source TABLES = Source.of("asme-b1.1", "published limits of size, through copies");

    static final Rule D = Rule.given("D", "in", "basic major diameter to four places");
    static final Rule N = Rule.given("n", "1/in", "threads per inch");
    static final Rule P = rule("P", "round(1 / n, 0.00000001)", "pitch");
    static final Rule P_GIVEN = Rule.given("P", "in", "pitch");
    static final Rule LE_GIVEN = Rule.given("LE", "in", "length of engagement");
    static final Rule LE_DIAMETER = known("LE", "D", "length of engagement of this series");
    static final Rule LE_PITCHES = known("LE", "9 * P", "length of engagement of this series");
    static final Rule T2A = rule(
            "T2A",
            "round(0.0015 * D^(1/3) + 0.0015 * sqrt(LE) + 0.015 * P^(2/3), 0.000001)",
            "pitch diameter tolerance of class 2A");
    static final Rule H2 = rule("h2", "round(0.64951905 * P, 0.000001)", "twice the addendum");
    static final Rule H1 = rule("h1", "round(1.08253175 * P, 0.000001)", "twice the depth of engagement");

    static final Rule ES = rule("es", "round(0.3 * T2A, 0.0001)", "allowance");
    static final Rule ES_PUBLISHED = Rule.table(
            "es", "in", TABLES, Trust.HANDBOOK, "allowance, as the tables print it: the formula gives 0.0001 else");
    static final Rule ES_NONE = rule("es", "0", "allowance: none in this class");
    static final Rule TD = rule("Td", "round(0.06 * P^(2/3), 0.0001)", "major diameter tolerance outside");
    static final Rule TD_LOOSE = rule("Td", "round(0.09 * P^(2/3), 0.0001)", "major diameter tolerance outside");
    static final Rule TD_ROUGH =
            rule("Tdu", "round(0.09 * P^(2/3), 0.0001)", "major diameter tolerance on unfinished stock");
    static final Rule D_MAX = rule("dmax", "round(D - es, 0.0001)", "greatest major diameter outside");
    static final Rule D_MIN = rule("dmin", "round(dmax - Td, 0.0001)", "least major diameter outside");
    static final Rule D_ROUGH = rule("dminu", "round(dmax - Tdu, 0.0001)", "least major diameter on unfinished stock");
    static final Rule D2_MAX = rule("d2max", "round(dmax - h2, 0.0001)", "greatest pitch diameter outside");
    static final Rule D2_MIN = rule("d2min", "round(d2max - Td2, 0.0001)", "least pitch diameter outside");
    static final Rule D1_MAX = known("d1max", "round(dmax - h1, 0.0001)", "greatest minor diameter outside, flat root");
    static final Rule D3_MAX = new Rule(
            "d3max",
            "round(d1max - round(0.10825318 * P, 0.0001), 0.0001)",
            "in",
            FROM_TABLES,
            Trust.DERIVED,
            "greatest minor diameter outside, rounded root: reference");

    static final Rule D3_MAX_J = remembered(
            "d3max",
            "round(dmax - round(1.15470054 * P, 0.000001), 0.0001)",
            "greatest minor diameter outside, UNJ root");
    static final Rule D1_MIN_J = remembered(
            "D1min", "round(D - round(0.97427858 * P, 0.000001), 0.0001)", "least minor diameter inside, UNJ");

    static final Rule INT_D2_MIN = rule("D2min", "round(D - h2, 0.0001)", "least pitch diameter inside: basic");
    static final Rule INT_D2_MAX = rule("D2max", "round(D2min + TD2, 0.0001)", "greatest pitch diameter inside");
    static final Rule INT_D1 = rule("D1", "D - h1", "basic minor diameter, six places");
    static final Rule TD1_SMALL = known(
            "TD1",
            "round(max(min(0.05 * P^(2/3) + 0.03 * P / D - 0.002, 0.394 * P), 0.25 * P - 0.4 * P^2), 0.0001)",
            "minor diameter tolerance inside, under 1/4 in");
    static final Rule TD1_FINE = known("TD1", "round(0.25 * P - 0.4 * P^2, 0.0001)", "minor diameter tolerance inside");
    static final Rule TD1_COARSE =
            known("TD1", "round(0.15 * P, 0.0001)", "minor diameter tolerance inside, to 4 an inch");
    static final Rule TD1_CLOSE_FINE = known(
            "TD1",
            "round(max(min(0.05 * P^(2/3) + 0.03 * P / D - 0.002, 0.394 * P), 0.23 * P - 1.5 * P^2), 0.0001)",
            "minor diameter tolerance inside, class 3B, 13 an inch and finer");
    static final Rule TD1_CLOSE_COARSE = known(
            "TD1",
            "round(max(min(0.05 * P^(2/3) + 0.03 * P / D - 0.002, 0.394 * P), 0.12 * P), 0.0001)",
            "minor diameter tolerance inside, class 3B, 12 an inch and coarser");
    static final Rule D1_MIN_3 = rule("D1min", "round(D1, 0.001)", "least minor diameter inside");
    static final Rule D1_MIN_4 = rule("D1min", "round(D1, 0.0001)", "least minor diameter inside");
    static final Rule D1_MAX_3 = rule("D1max", "round(D1 + TD1, 0.001)", "greatest minor diameter inside");
    static final Rule D1_MAX_4 = rule("D1max", "round(D1 + TD1, 0.0001)", "greatest minor diameter inside");
    static final Rule D1_MIN_PRINTED = known(
            "D1min", "roundeven(round(D1, 0.0001), 0.001)", "least minor diameter inside, as printed tables round it");
    static final Rule D1_MAX_PRINTED = known(
            "D1max",
            "roundeven(round(D1 + TD1, 0.0001), 0.001)",
            "greatest minor diameter inside, as printed tables round it");

    private UnifiedRules() {}

    /** The pitch diameter tolerance of a class. */
    static Rule pitchTolerance(UnifiedClass fit) {
        return TOLERANCES[fit.ordinal()];
    }

    /** The pitch diameter tolerance of a class where the tables print another than the formula gives. */
    static Rule publishedTolerance(UnifiedClass fit) {
        return Rule.table(
                pitchTolerance(fit).symbol(),
                "in",
                TABLES,
                Trust.HANDBOOK,
                "pitch diameter tolerance, class " + fit.code() + ", as the tables print it");
    }

    private static final Rule[] TOLERANCES = {
        rule("Td2", "round(1.5 * T2A, 0.0001)", "pitch diameter tolerance, class 1A"),
        rule("Td2", "round(1 * T2A, 0.0001)", "pitch diameter tolerance, class 2A"),
        rule("Td2", "round(0.75 * T2A, 0.0001)", "pitch diameter tolerance, class 3A"),
        rule("TD2", "round(1.95 * T2A, 0.0001)", "pitch diameter tolerance, class 1B"),
        rule("TD2", "round(1.3 * T2A, 0.0001)", "pitch diameter tolerance, class 2B"),
        rule("TD2", "round(0.975 * T2A, 0.0001)", "pitch diameter tolerance, class 3B")
    };

    private static Rule rule(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "in", WORKED, Trust.HANDBOOK, means);
    }

    private static Rule remembered(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "in", Source.of("memory", "AS8879, ASME B1.15"), Trust.HANDBOOK, means);
    }

    private static Rule known(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "in", BORNE_OUT, Trust.HANDBOOK, means);
    }
}
