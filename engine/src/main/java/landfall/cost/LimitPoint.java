// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import landfall.quantity.Length;
import landfall.quantity.Money;
import landfall.wear.Hazard;
import landfall.working.Pen;

/**
 * What a hole costs when taps are always sharpened at one wear limit.
 *
 * @param sharpenings that a new tap allows
 * @param holes in the life of a tap, broken ones counted
 * @param risk chance that a tap breaks in one run
 * @param perHole all told
 * @param spoilt of it, what broken taps spoil
 */
public record LimitPoint(Length limit, int sharpenings, Holes holes, double risk, Money perHole, Money spoilt) {
    /** How many; a mean, so not a whole number. */
    public record Holes(double aRun, double aTap) {}

    /** Holes from sharp to the usual limit, broken taps in such a run, and that limit. */
    record Basis(double life, double breaks, Length due) {}

    /**
     * A tap begins S runs, geometric in the chance q to break: it is bought once, sharpened before each run but the
     * first, and breaks with chance q·S. Holes in a run by Simpson's rule over the danger.
     */
    static LimitPoint at(Length limit, int count, Basis basis, Bench bench, Pen pen) {
        CostRules rules = new CostRules(bench.currency());
        double p = pen.write(rules.tap, bench.tap().amount());
        double c_g = pen.write(rules.sharpening, bench.sharpening().amount());
        double c_b = pen.write(rules.breakage, bench.breakage().amount());
        Run run = run(limit, basis, pen);
        double m = pen.write(CostRules.SHARPENINGS, count);
        double q = run.risk;
        double S = pen.write(CostRules.RUNS_A_TAP, (1 - Math.pow(1 - q, m + 1)) / q);
        double H_t = pen.write(CostRules.HOLES_A_TAP, run.holes * S);
        double C = pen.write(rules.perHole, (p + c_g * (S - 1) + c_b * q * S) / H_t);
        double C_b = pen.write(rules.share, c_b * q / run.holes);
        return new LimitPoint(limit, count, new Holes(run.holes, H_t), q, bench.in(C), bench.in(C_b));
    }

    /** One run from sharp to a limit. */
    record Run(double risk, double holes) {}

    static Run run(Length limit, Basis basis, Pen pen) {
        double N = pen.write(CostRules.LIFE, basis.life);
        double lambda = pen.write(CostRules.BREAKS, basis.breaks);
        double w_due = pen.write(CostRules.DUE, basis.due.mm());
        double u = pen.write(CostRules.SHARE, pen.write(CostRules.ASKED, limit.mm()) / w_due);
        double N_b = pen.write(CostRules.HOLES, N * u);
        double half = pen.write(CostRules.HALF, u / 2);
        double E = pen.write(CostRules.DANGER, Hazard.at(u));
        double E_2 = pen.write(CostRules.DANGER_HALF, Hazard.at(half));
        double q = pen.write(CostRules.RISK, 1 - Math.exp(-lambda * E));
        double H =
                pen.write(CostRules.HOLES_A_RUN, N_b / 6 * (1 + 4 * Math.exp(-lambda * E_2) + Math.exp(-lambda * E)));
        return new Run(q, H);
    }
}
