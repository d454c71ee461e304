// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import landfall.thread.Family;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed formulas of the hole for a taper thread; those here take the family's own figures over, in mm. */
record TaperRules(Rule major, Rule minor, Rule handTight, Rule wrench) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/tap-drill.md, taper threads");

    static final Rule PITCH = Rule.given("P_0", "mm", "pitch");
    static final Rule FULL_THREAD = derived("T_f", "L_h + L_w", "mm", "depth of full thread: as deep as the pipe goes");
    static final Rule END = derived("m_e", "m_f - T_f/16", "mm", "minor diameter where the full thread ends");
    static final Rule CHAMFER = Rule.table(
            "n_c",
            "1",
            Source.of("common-practice", "pipe taps have 2 to 3.5 threads of chamfer"),
            Trust.PRACTICE,
            "threads in the tap's chamfer");
    static final Rule DRILL = derived("T_d", "T_p + c_0", "mm", "depth of full drill diameter");
    static final Rule CHART = Rule.table(
            "δ", "mm", Source.of("tap-maker-nptf-holes", "bored holes"), Trust.HANDBOOK, "drill for a straight hole");
    static final Rule CHART_REMEMBERED = Rule.table(
            "δ",
            "mm",
            Source.of("memory", "shop charts of pipe tap drills"),
            Trust.PRACTICE,
            "drill for a straight hole");
    static final Rule HALF_WAY =
            derived("m_h", "m_f - L_h/32", "mm", "minor diameter half-way into the hand-tight length");
    static final Rule NEAREST = Rule.table(
            "δ", "mm", Source.of("drill-size-table", "diameter of the drill"), Trust.HANDBOOK, "drill nearest to that");
    static final Rule UNDER_REAMER = Rule.table(
            "δ_r",
            "mm",
            Source.of("drill-size-table", "diameter of the drill"),
            Trust.HANDBOOK,
            "drill under the taper reamer: the greatest not over m_e");
    static final Rule AT_FACE =
            derived("q_f", "100*(M_f - δ)/(M_f - m_f)", "%", "share of the thread's own depth left in the face");
    static final Rule AT_END = derived(
            "q_e",
            "100*(M_f - T_f/16 - δ)/(M_f - m_f)",
            "%",
            "share of the thread's own depth left where the full thread ends");

    static TaperRules of(Family family) {
        boolean inch = family == Family.NPT || family == Family.NPTF;
        return new TaperRules(
                derived("M_f", inch ? "25.4*D1" : "dg", "mm", "major diameter in the face"),
                derived("m_f", inch ? "25.4*K1" : "d1g", "mm", "minor diameter in the face"),
                derived("L_h", inch ? "25.4*L1" : "a", "mm", "hand-tight length"),
                derived("L_w", inch ? "25.4*L3" : "w", "mm", "length of wrench make-up"));
    }

    private static Rule derived(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, GEOMETRY, Trust.DERIVED, means);
    }
}
