// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import landfall.thread.Side;
import landfall.thread.metric.Tolerances.Kind;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed formulas of the metric limits, in millimetres. */
final class MetricRules {
    static final Source TABLES = Source.of("iso-965-1", "tables of deviations and tolerances");
    static final Source REMEMBERED = Source.of("memory", "ISO 965-1 tables");
    static final Source FORMULA = Source.of("iso-965-1", "formulas behind the tables");
    static final Source BASIC = Source.of("iso-724", "basic diameters");
    static final Source B113 = Source.of("asme-b1.13m", "limiting dimensions");
    static final Source MULTI = Source.of("memory", "ISO 2903, multiple-start tolerances");

    static final Rule D = Rule.given("D", "mm", "basic major diameter");
    static final Rule P = Rule.given("P", "mm", "pitch");
    static final Rule D2 = basic("D2", "round(D - 0.64951905 * P, 0.001)", "basic pitch diameter");
    static final Rule D1 = basic("D1", "round(D - 1.08253175 * P, 0.001)", "basic minor diameter");
    static final Rule D1_J = new Rule(
            "D1",
            "round(D - 0.97427858 * P, 0.001)",
            "mm",
            Source.of("iso-5855-1", "limits"),
            Trust.HANDBOOK,
            "basic minor diameter inside, MJ");
    static final Rule D3_MAX_J = new Rule(
            "d3max",
            "round(D - 1.15470054 * P, 0.001) + es",
            "mm",
            Source.of("memory", "ISO 5855-1"),
            Trust.HANDBOOK,
            "greatest minor diameter outside, MJ root");
    static final Rule FACTOR = Rule.table("ks", "1", MULTI, Trust.HANDBOOK, "tolerance factor for several starts");

    static final Rule ES_NONE = sum("es", "0", "fundamental deviation h");
    static final Rule EI_NONE = sum("EI", "0", "fundamental deviation H");

    static final Rule D_MAX = sum("dmax", "D + es", "greatest major diameter outside");
    static final Rule D_MIN = sum("dmin", "dmax - Td", "least major diameter outside");
    static final Rule D2_MAX = sum("d2max", "D2 + es", "greatest pitch diameter outside");
    static final Rule D2_MIN = sum("d2min", "d2max - Td2", "least pitch diameter outside");
    static final Rule D1_MAX = sum("d1max", "D1 + es", "greatest minor diameter outside");
    static final Rule D3_MIN = new Rule(
            "d3min",
            "round(D - 0.64951905 * P + es - Td2 - 0.61602540 * P, 0.001)",
            "mm",
            B113,
            Trust.HANDBOOK,
            "least minor diameter outside, rounded root");

    static final Rule INT_D_MIN = sum("Dmin", "D + EI", "least major diameter inside");
    static final Rule INT_D2_MIN = sum("D2min", "D2 + EI", "least pitch diameter inside");
    static final Rule INT_D2_MAX = sum("D2max", "D2min + TD2", "greatest pitch diameter inside");
    static final Rule INT_D1_MIN = sum("D1min", "D1 + EI", "least minor diameter inside");
    static final Rule INT_D1_MAX = sum("D1max", "D1min + TD1", "greatest minor diameter inside");
    /** Several starts: the tabulated pitch tolerance grows, in whole micrometres. */
    static final Rule TD2_STARTS = several("TD2", "round(TD2s * ks, 0.001)");

    static final Rule OUT_TD2_STARTS = several("Td2", "round(Td2s * ks, 0.001)");

    private MetricRules() {}

    /** A tolerance as the table has it. */
    static Rule tolerance(Kind kind, int grade, boolean remembered, boolean single) {
        return Rule.table(
                kind.name() + (single ? "" : "s"),
                "mm",
                remembered ? REMEMBERED : TABLES,
                Trust.HANDBOOK,
                means(kind) + ", grade " + grade);
    }

    /** A tolerance by formula, where the table is blank: before it goes to a preferred number, in micrometres. */
    static Rule raw(Kind kind, int grade) {
        double factor = ToleranceFormula.factor(kind, grade);
        String six = switch (kind) {
            case Td -> "(180 * P^(2/3) - 3.15 / sqrt(P))";
            case TD1 -> "if(P < 1, 433 * P - 190 * P^1.22, 230 * P^0.7)";
            case Td2, TD2 -> "90 * P^0.4 * dm^0.1";
        };
        return new Rule(
                kind.name() + "f",
                factor + " * " + six,
                "um",
                FORMULA,
                Trust.HANDBOOK,
                means(kind) + ", grade " + grade + ", by formula");
    }

    static final Rule MEAN = Rule.table("dm", "mm", FORMULA, Trust.HANDBOOK, "geometric mean of the diameter range");

    /** The preferred number nearest to the formula's figure. */
    static Rule preferred(Kind kind, boolean single) {
        return Rule.table(
                kind.name() + (single ? "" : "s"),
                "mm",
                FORMULA,
                Trust.ESTIMATE,
                means(kind) + ": the preferred number R40 nearest to the formula");
    }

    /** A fundamental deviation as the table has it, or by formula where that is blank. */
    static Rule deviation(Side side, char position, boolean blank, boolean remembered) {
        String symbol = side == Side.EXTERNAL ? "es" : "EI";
        String means = "fundamental deviation " + position;
        if (blank) {
            int base = position == 'e' ? 50 : position == 'f' ? 30 : 15;
            String amount = "round(0." + (base < 100 ? "0" : "") + base + " + 0.011 * P, 0.001)";
            return new Rule(
                    symbol, side == Side.EXTERNAL ? "0 - " + amount : amount, "mm", FORMULA, Trust.ESTIMATE, means);
        }
        return Rule.table(symbol, "mm", remembered ? REMEMBERED : TABLES, Trust.HANDBOOK, means);
    }

    private static String means(Kind kind) {
        return switch (kind) {
            case Td -> "major diameter tolerance outside";
            case TD1 -> "minor diameter tolerance inside";
            case Td2 -> "pitch diameter tolerance outside";
            case TD2 -> "pitch diameter tolerance inside";
        };
    }

    private static Rule basic(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", BASIC, Trust.HANDBOOK, means);
    }

    private static Rule sum(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", Source.of("iso-965-1", "assembling the limits"), Trust.HANDBOOK, means);
    }

    private static Rule several(String symbol, String formula) {
        return new Rule(symbol, formula, "mm", MULTI, Trust.HANDBOOK, "pitch diameter tolerance for several starts");
    }
}
