// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed lines of the wear law. */
public final class WearRules {
    private static final Source NOTE = Source.of("derived", "docs/methods/wear-law.md");
    private static final Source PRACTICE = Source.of("common-practice", "how long taps last");

    /** A guessed count is off by no more than times and over this, nine times in ten. */
    static final double GUESS = 1.5;

    static final Rule MAJOR = Rule.given("d", "mm", "basic major diameter");
    static final Rule DEPTH_TOLD = Rule.given("L_u", "mm", "usual depth of thread, mean of the records");
    static final Rule DEPTH_USUAL = new Rule(
            "L_u", "1.5*d", "mm", PRACTICE, Trust.PRACTICE, "usual depth of thread, as none was told: 1.5 diameters");
    static final Rule PRIOR_DIAMETERS = Rule.table(
            "D_0", "1", PRACTICE, Trust.ESTIMATE, "thread cut between two sharpenings, in diameters, by practice");
    static final Rule PRIOR_TOLD =
            Rule.given("D_0", "1", "thread cut between two sharpenings, in diameters, as the shop holds");
    static final Rule PRIOR_FACTOR =
            Rule.table("b_0", "1", PRACTICE, Trust.ESTIMATE, "nine shops in ten lie within times and over this");
    static final Rule FACTOR_TOLD =
            Rule.given("b_0", "1", "nine in ten lie within times and over this, as the shop holds");
    static final Rule PRIOR_HOLES =
            new Rule("N_0", "D_0*d/L_u", "1", NOTE, Trust.ESTIMATE, "holes between two sharpenings, by practice alone");
    static final Rule RUNS = Rule.given("n_r", "1", "runs on record");
    static final Rule KNOWN = Rule.given("n_k", "1", "runs whose life is known; the others lasted at least so long");
    public static final Rule MIDDLE_LOW =
            Rule.learned("M_l", "1", NOTE, "holes between sharpenings, middle of many taps, low");
    public static final Rule MIDDLE = Rule.learned("M", "1", NOTE, "holes between sharpenings, middle of many taps");
    public static final Rule MIDDLE_HIGH =
            Rule.learned("M_h", "1", NOTE, "holes between sharpenings, middle of many taps, high");
    public static final Rule LIFE_LOW =
            Rule.learned("N_l", "1", NOTE, "holes from sharp to due; one tap in ten has fewer");
    public static final Rule LIFE =
            Rule.learned("N", "1", NOTE, "holes from sharp to due; half of the taps have fewer");
    public static final Rule LIFE_HIGH =
            Rule.learned("N_h", "1", NOTE, "holes from sharp to due; nine taps in ten have fewer");
    public static final Rule USED =
            Rule.given("n_s", "1", "holes since it was sharp, as holes of the usual depth and material");
    public static final Rule USED_LOW =
            new Rule("n_l", "n_s/1.5", "1", PRACTICE, Trust.PRACTICE, "the same, low, for a guess is in the count");
    public static final Rule USED_HIGH =
            new Rule("n_h", "n_s*1.5", "1", PRACTICE, Trust.PRACTICE, "the same, high, for a guess is in the count");
    public static final Rule LEFT_LOW =
            new Rule("R_l", "N_l - n_s", "1", NOTE, Trust.ESTIMATE, "holes left to the next sharpening, low");
    public static final Rule LEFT =
            new Rule("R", "N - n_s", "1", NOTE, Trust.ESTIMATE, "holes left to the next sharpening");
    public static final Rule LEFT_HIGH =
            new Rule("R_h", "N_h - n_s", "1", NOTE, Trust.ESTIMATE, "holes left to the next sharpening, high");
    public static final Rule LEFT_LOW_ABOUT =
            new Rule("R_l", "N_l - n_h", "1", NOTE, Trust.ESTIMATE, "holes left to the next sharpening, low");
    public static final Rule LEFT_HIGH_ABOUT =
            new Rule("R_h", "N_h - n_l", "1", NOTE, Trust.ESTIMATE, "holes left to the next sharpening, high");
    static final Rule BREAKS_BEFORE =
            Rule.table("q_0", "1", PRACTICE, Trust.ESTIMATE, "taps that break in a run from sharp to due, by practice");
    static final Rule BREAKS_WORTH =
            Rule.table("a_0", "1", PRACTICE, Trust.ESTIMATE, "broken taps that this weighs as much as");
    static final Rule BROKEN = Rule.given("k_b", "1", "broken taps on record");
    static final Rule EXPOSED =
            Rule.learned("E_r", "1", NOTE, "runs from sharp to due that the records add up to, by danger");
    public static final Rule BREAKS = new Rule(
            "λ",
            "(a_0 + k_b)/(a_0/q_0 + E_r)",
            "1",
            NOTE,
            Trust.ESTIMATE,
            "taps that break in a run from sharp to due");
    public static final Rule BREAKS_LOW =
            Rule.learned("λ_l", "1", NOTE, "taps that break in a run from sharp to due, low");
    public static final Rule BREAKS_HIGH =
            Rule.learned("λ_h", "1", NOTE, "taps that break in a run from sharp to due, high");
    static final Rule JOB = Rule.given("n_j", "1", "holes of the job, as holes of the usual depth");
    public static final Rule MAY_BREAK = Rule.learned("p_b", "1", NOTE, "chance that the tap breaks in the job");
    public static final Rule MAY_BE_DUE =
            Rule.learned("p_d", "1", NOTE, "chance that it is due before the job is done");
    public static final Rule MAY_LAST =
            Rule.learned("p_l", "1", NOTE, "chance that it comes through, neither broken nor due");

    private WearRules() {}
}
