// SPDX-License-Identifier: Apache-2.0
package landfall.feedback;

import java.util.List;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import landfall.working.Worked;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * The chance that a hole gauges good, from how much wider than their taps the shop's own holes came out.
 *
 * @param over the hole's pitch diameter over the tap's, expected
 * @param spread of one hole about it, its doubt counted
 * @param go chance that the hole is not too small
 * @param notGo chance that it is not too wide
 * @param good both
 */
public record GoBySize(Length over, Length spread, double go, double notGo, double good, List<Caution> cautions) {
    private static final Source NOTE = Source.of("derived", "docs/methods/feedback.md");
    private static final Source PRACTICE = Source.of("common-practice", "how much wider than its tap a hole is");
    private static final double OVER_MM = 0.01;
    private static final double SPREAD_MM = 0.008;
    private static final double WORTH_MEAN = 0.3;
    private static final double WORTH_SPREAD = 3;
    private static final int FEW = 10;

    static final Rule OVER_BEFORE = Rule.table(
            "o_0", "mm", PRACTICE, Trust.ESTIMATE, "hole over tap, by practice; three tenths of a hole's worth");
    static final Rule SPREAD_BEFORE =
            Rule.table("s_0", "mm", PRACTICE, Trust.ESTIMATE, "spread of holes, by practice; three holes' worth");
    static final Rule COUNT = Rule.given("n", "1", "holes measured");
    static final Rule MEAN = Rule.given("o_m", "mm", "mean of hole over tap, as measured; 0 where none is");
    static final Rule SQUARES = Rule.given("Q", "mm²", "sum of the squares about that mean");
    public static final Rule OVER = new Rule(
            "o", "(0.3*o_0 + n*o_m)/(0.3 + n)", "mm", NOTE, Trust.ESTIMATE, "hole's pitch diameter over the tap's");
    public static final Rule SPREAD = new Rule(
            "s_h",
            "sqrt((3*s_0^2 + Q + 0.3*n/(0.3 + n)*(o_m - o_0)^2)/(3 + n)*(1 + 1/(0.3 + n)))",
            "mm",
            NOTE,
            Trust.ESTIMATE,
            "spread of one hole about it");
    static final Rule TAP = Rule.given("E_t", "mm", "pitch diameter of the tap");
    static final Rule LEAST = Rule.given("D_2min", "mm", "least pitch diameter of the hole");
    static final Rule MOST = Rule.given("D_2max", "mm", "greatest pitch diameter of the hole");
    static final Rule BELOW = new Rule(
            "z_l", "(E_t + o - D_2min)/s_h", "1", NOTE, Trust.DERIVED, "spreads from the expected hole to the least");
    static final Rule ABOVE = new Rule(
            "z_h",
            "(D_2max - E_t - o)/s_h",
            "1",
            NOTE,
            Trust.DERIVED,
            "spreads from the expected hole to the greatest");
    public static final Rule GO = Rule.learned("P_go", "1", NOTE, "chance that the hole is not too small");
    public static final Rule NOT_GO = Rule.learned("P_ng", "1", NOTE, "chance that the hole is not too wide");
    public static final Rule GOOD = new Rule("P_h", "P_go + P_ng - 1", "1", NOTE, Trust.ESTIMATE, "chance of both");

    public GoBySize {
        cautions = List.copyOf(cautions);
    }

    /**
     * @param measured each hole's pitch diameter less its tap's
     * @param tap pitch diameter of the tap that is to cut the next
     * @param hole limits of the hole's pitch diameter, both ends closed
     */
    public static Worked<GoBySize> of(List<Length> measured, Length tap, Limits hole) {
        Length min = hole.min();
        Length max = hole.max();
        if (min == null || max == null) {
            throw new OutOfRange("limits of the hole", "one side open", "both closed", "name a class of fit");
        }
        return Worked.of(pen -> chance(measured, tap, new Closed(min.mm(), max.mm()), pen));
    }

    private record Closed(double min, double max) {}

    private static GoBySize chance(List<Length> measured, Length tap, Closed hole, Pen pen) {
        double o_0 = pen.write(OVER_BEFORE, OVER_MM);
        double s_0 = pen.write(SPREAD_BEFORE, SPREAD_MM);
        double n = pen.write(COUNT, measured.size());
        double o_m = pen.write(
                MEAN, measured.stream().mapToDouble(Length::mm).average().orElse(0));
        double Q = pen.write(
                SQUARES,
                measured.stream()
                        .mapToDouble(one -> (one.mm() - o_m) * (one.mm() - o_m))
                        .sum());
        double weight = WORTH_MEAN + n;
        double o = pen.write(OVER, (WORTH_MEAN * o_0 + n * o_m) / weight);
        double squares = WORTH_SPREAD * s_0 * s_0 + Q + WORTH_MEAN * n / weight * (o_m - o_0) * (o_m - o_0);
        double s = pen.write(SPREAD, Math.sqrt(squares / (WORTH_SPREAD + n) * (1 + 1 / weight)));
        double E = pen.write(TAP, tap.mm());
        double min = pen.write(LEAST, hole.min);
        double max = pen.write(MOST, hole.max);
        TDistribution law = new TDistribution(WORTH_SPREAD + n);
        double below = pen.write(BELOW, (E + o - min) / s);
        double above = pen.write(ABOVE, (max - E - o) / s);
        double go = pen.write(GO, law.cumulativeProbability(below));
        double notGo = pen.write(NOT_GO, law.cumulativeProbability(above));
        double good = pen.write(GOOD, go + notGo - 1);
        return new GoBySize(Length.ofMm(o), Length.ofMm(s), go, notGo, good, cautions(measured.size()));
    }

    private static List<Caution> cautions(int count) {
        if (count >= FEW) {
            return List.of();
        }
        return List.of(new Caution(
                count == 0 ? "priorOnly" : "fewRecords",
                "Holes measured on record: " + count + ". Practice, without a source, weighs with them.",
                "n"));
    }
}
