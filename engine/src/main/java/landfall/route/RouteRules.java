// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.util.List;
import java.util.stream.Collectors;
import landfall.quantity.Band;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed lines of a route: docs/methods/route-card.md. Symbols of one line of the drawing end in its number. */
public final class RouteRules {
    private static final Source NOTE = Source.of("derived", "docs/methods/route-card.md");
    private static final Source PRACTICE = Source.of("common-practice", "minutes at the machine, no source");

    static final Band SET_UP_MIN = new Band(2, 4, 8);
    static final Band PLACE_MIN = new Band(0.2, 0.4, 1);
    static final Band SINK_MIN = new Band(0.05, 0.1, 0.2);
    static final Band GAUGE_MIN = new Band(0.5, 1, 2);
    static final Band SCATTER = new Band(0.7, 1, 2);
    static final double DRILL_OVER_TAP = 2;
    static final double FEED_OVER_DRILL = 0.02;
    static final double GAUGED_EVERY = 10;

    static final BandRule SET_UP = practice("t_u~", "min", "to change the tool, set its depth and its speed");
    static final BandRule PLACE = practice("t_p~", "min", "to come to the next hole, oil and clear the chips");
    static final BandRule SINK = practice("t_k~", "min", "to countersink a hole");
    static final BandRule GAUGE = practice("t_1~", "min", "to gauge one thread, GO and NOT GO");
    static final BandRule CUTTING = practice("k_s~", "1", "cutting time in the shop over the one that is computed");
    static final Rule DRILL_SPEED =
            Rule.table("k_d", "1", PRACTICE, Trust.PRACTICE, "speed of an HSS drill over the speed of a tap");
    static final Rule DRILL = Rule.given("d_w", "mm", "diameter of the drill");
    static final Rule MAJOR = Rule.given("d", "mm", "basic major diameter");
    static final Rule PITCH = Rule.given("P", "mm", "pitch");
    static final Rule LEAD = Rule.given("L", "mm", "lead: advance in one turn");
    static final Rule DEPTH = Rule.given("L_d", "mm", "depth of full thread");
    static final Rule CHAMFER = Rule.given("n_c", "1", "threads in the tap's chamfer");
    static final Rule DRILL_TURNS =
            estimate("n_d", "1000*k_d*(v_1 + v_2)/2/(pi*d_w)", "rev/min", "speed of the drill's spindle");
    static final Rule DRILL_FEED = new Rule(
            "f_d", "0.02*d_w", "mm", PRACTICE, Trust.PRACTICE, "feed of the drill each turn: a fiftieth of it");
    static final Rule DRILL_TIME = estimate("t_h", "(T_t + 3)/(n_d*f_d)", "min", "time in cut of one drilled hole");

    private RouteRules() {}

    static Rule estimate(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, NOTE, Trust.ESTIMATE, means);
    }

    private static BandRule practice(String symbol, String unit, String means) {
        return BandRule.of(Rule.table(symbol, unit, PRACTICE, Trust.PRACTICE, means));
    }

    static Rule count(int line) {
        return Rule.given("m" + line, "1", "holes of line " + line);
    }

    /** All holes of a line: placing each, and so long in cut. */
    static BandRule holes(String symbol, int line, String each, String means) {
        return BandRule.of(estimate(symbol + line + "~", "m" + line + "*(t_p~ + " + each + ")", "min", means + line));
    }

    static Rule gauged(int line) {
        return estimate(
                "n_g" + line,
                "1 + floor((m" + line + " - 1)/10)",
                "1",
                "threads gauged of line " + line + ": the first, and one in ten of the others");
    }

    static BandRule gauging(int line) {
        return BandRule.of(estimate("t_g" + line + "~", "n_g" + line + "*t_1~", "min", "gauging line " + line));
    }

    static Rule risk(int operation) {
        return Rule.learned(
                "p_b" + operation,
                "1",
                Source.of("derived", "docs/methods/wear-law.md"),
                "chance that the tap of operation " + operation + " breaks in the job");
    }

    static Rule riskOverTime(int operation) {
        return estimate(
                "ρ" + operation,
                "p_b" + operation + "/t_o" + operation,
                "1/min",
                "chance to break over time: the greatest goes first");
    }

    /** A sum of figures that have been written. */
    static BandRule sum(String symbol, List<String> symbols, String unit, String means) {
        String formula = symbols.isEmpty() ? "0" : symbols.stream().collect(Collectors.joining(" + "));
        return BandRule.of(estimate(symbol, formula, unit, means));
    }

    static BandRule band(String symbol, String formula, String unit, String means) {
        return BandRule.of(estimate(symbol, formula, unit, means));
    }
}
