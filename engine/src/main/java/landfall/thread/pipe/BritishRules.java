// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import landfall.quantity.Angle;
import landfall.thread.Profile;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed formulas of G, R, Rc and Rp, in millimetres. */
final class BritishRules {
    private static final Source G = Source.of("iso-228-1", "tolerances");
    private static final Source R = Source.of("memory", "ISO 7-1");

    /** Whitworth form: 55 degrees, H/6 rounded off crest and root. */
    static final Profile WHITWORTH =
            new Profile("Whitworth 55 deg", Angle.ofDeg(55), 0.640327 / 2, 0.640327, flat(), flat());

    static final Rule D =
            Rule.table("D", "mm", Source.of("iso-228-1", "basic sizes"), Trust.HANDBOOK, "basic major diameter");
    static final Rule N =
            Rule.table("n", "1", Source.of("iso-228-1", "basic sizes"), Trust.HANDBOOK, "threads an inch");
    static final Rule P = formula("P", "round(25.4 / n, 0.001)", "pitch");
    static final Rule H = formula("h", "round(0.640327 * P, 0.001)", "thread depth");
    static final Rule D2 = formula("D2", "D - h", "basic pitch diameter");
    static final Rule D1 = formula("D1", "D - 2 * h", "basic minor diameter");

    static final Rule D_MAX = formula("dmax", "D", "greatest major diameter outside");
    static final Rule D2_TOP = formula("d2max", "D2", "greatest pitch diameter outside");
    static final Rule D1_TOP = formula("d1max", "D1", "greatest minor diameter outside");
    static final Rule INT_D2_MIN = formula("D2min", "D2", "least pitch diameter inside");
    static final Rule INT_D1_MIN = formula("D1min", "D1", "least minor diameter inside");
    static final Rule TD2 = table("TD2", G, "pitch diameter tolerance inside");
    static final Rule TD1 = table("TD1", G, "minor diameter tolerance inside");
    static final Rule TD = table("Td", G, "major diameter tolerance outside");
    static final Rule TD2_A = table("Td2", G, "pitch diameter tolerance outside, class A");
    static final Rule TD2_B = formula("Td2", "2 * Td2A", "pitch diameter tolerance outside, class B");
    static final Rule TD2_OF_A = table("Td2A", G, "pitch diameter tolerance of class A");
    static final Rule D2_MAX = formula("D2max", "D2 + TD2", "greatest pitch diameter inside");
    static final Rule D1_MAX = formula("D1max", "D1 + TD1", "greatest minor diameter inside");
    static final Rule OUT_MIN = formula("dmin", "D - Td", "least major diameter outside");
    static final Rule OUT_D2_MIN = formula("d2min", "D2 - Td2", "least pitch diameter outside");

    static final Rule T_RP = table("t", R, "tolerance of Rp either way on the diameters");
    static final Rule RP_D_MIN = formula("Dmin", "D - t", "least major diameter inside");
    static final Rule RP_D2_MIN = formula("D2min", "D2 - t", "least pitch diameter inside");
    static final Rule RP_D2_MAX = formula("D2max", "D2 + t", "greatest pitch diameter inside");
    static final Rule RP_D1_MIN = formula("D1min", "D1 - t", "least minor diameter inside");
    static final Rule RP_D1_MAX = formula("D1max", "D1 + t", "greatest minor diameter inside");

    static final Rule GAUGE = table("a", R, "gauge length");
    static final Rule USEFUL = table("b", R, "useful length of the external thread");
    static final Rule SMALL_END_AT = formula("A0", "0", "where the small end stands");
    static final Rule TAPER =
            new Rule("taper", "1 / 16", "1", G, Trust.HANDBOOK, "growth of the diameter over the length");
    static final Rule TURNS_PLUS = Rule.table("plus", "1", R, Trust.HANDBOOK, "turns that the gauge may stand deeper");
    static final Rule TURNS_MINUS = Rule.table("minus", "1", R, Trust.HANDBOOK, "turns that it may stand out");
    static final Rule WRENCH = formula("w", "b - a", "left for the wrench");
    static final Rule[] SMALL_END = plane("0", "small end", "- a / 16");
    static final Rule[] GAUGE_PLANE = plane("g", "gauge plane", "+ 0");
    static final Rule[] USEFUL_END = plane("u", "end of the useful thread", "+ (b - a) / 16");

    private BritishRules() {}

    /** Width at the nominal major diameter of the rounded crest: that of the sharp flanks there, H/6 off. */
    private static double flat() {
        return 1.0 / 6;
    }

    private static Rule[] plane(String mark, String where, String growth) {
        return new Rule[] {
            formula("d" + mark, "round(D " + growth + ", 0.001)", "major diameter, " + where),
            formula("d2" + mark, "round(D2 " + growth + ", 0.001)", "pitch diameter, " + where),
            formula("d1" + mark, "round(D1 " + growth + ", 0.001)", "minor diameter, " + where)
        };
    }

    private static Rule formula(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", Source.of("iso-228-1", "profile"), Trust.HANDBOOK, means);
    }

    private static Rule table(String symbol, Source source, String means) {
        return Rule.table(symbol, "mm", source, Trust.HANDBOOK, means);
    }
}
