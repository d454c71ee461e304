// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import landfall.wear.Hazard;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed lines of costs; money in the shop's own currency, which is the unit. */
public final class CostRules {
    private static final Source NOTE = Source.of("derived", "docs/methods/cost-per-hole.md");
    static final Rule LIFE = Rule.learned(
            "N", "1", Source.of("derived", "docs/methods/wear-law.md"), "holes from sharp to the usual wear limit");
    static final Rule BREAKS = Rule.learned(
            "λ",
            "1",
            Source.of("derived", "docs/methods/wear-law.md"),
            "taps that break in a run from sharp to the usual limit");
    static final Rule DUE = Rule.given("w_due", "mm", "usual wear limit");
    static final Rule ASKED = Rule.given("w_x", "mm", "wear limit that is asked about");
    static final Rule SHARE = estimate("u_b", "w_x/w_due", "1", "wear at the limit, over the usual one");
    public static final Rule HOLES = estimate("N_b", "N*u_b", "1", "holes from sharp to the limit, unbroken");
    static final Rule HALF = estimate("u_2", "u_b/2", "1", "wear half way to it");
    static final Rule DANGER = Hazard.rule("E_w", "u_b", "danger to the limit, in runs to the usual one");
    static final Rule DANGER_HALF = Hazard.rule("E_2", "u_2", "danger half way to it");
    public static final Rule RISK = estimate("q_b", "1 - exp(-λ*E_w)", "1", "chance that the tap breaks in a run");
    public static final Rule HOLES_A_RUN =
            estimate("H", "N_b/6*(1 + 4*exp(-λ*E_2) + exp(-λ*E_w))", "1", "holes in a run, broken taps counted");
    public static final Rule SHARPENINGS = Rule.given("m", "1", "sharpenings that a new tap allows at this limit");
    static final Rule RUNS_A_TAP =
            estimate("S", "(1 - (1 - q_b)^(m + 1))/q_b", "1", "runs that a tap begins before it is used up or breaks");
    public static final Rule HOLES_A_TAP = estimate("H_t", "H*S", "1", "holes in the life of a tap");

    final Rule tap;
    final Rule sharpening;
    final Rule breakage;
    final Rule perHole;
    final Rule share;
    final Rule nextPerHole;
    final Rule gain;
    final Rule saved;
    final Rule order;

    CostRules(String currency) {
        String unit = currency.isEmpty() ? "money" : currency;
        tap = Rule.given("p", unit, "price of a new tap");
        sharpening = Rule.given("c_g", unit, "one sharpening");
        breakage = Rule.given("c_b", unit, "what a broken tap spoils besides itself");
        perHole = estimate("C", "(p + c_g*(S - 1) + c_b*q_b*S)/(H*S)", unit, "cost of a hole with new taps, sharpened");
        share = estimate("C_b", "c_b*q_b/H", unit, "of it, what broken taps spoil");
        nextPerHole = estimate("C_1", "(c_g + c_b*q_b)/(k_r*H)", unit, "cost of a hole in the next run of this tap");
        gain = estimate("G", "(C - C_1)*k_r*H", unit, "what sharpening saves in the next run, against new taps");
        saved = estimate("G_y", "p*n_y/N - c_g*k_y", unit, "what sharpening saved, against a new tap for each run");
        order = estimate("p_o", "p*n_o", unit, "price of the order");
    }

    static Rule estimate(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, NOTE, Trust.ESTIMATE, means);
    }
}
