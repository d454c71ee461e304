// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import java.time.Instant;
import java.util.List;
import landfall.fault.OutOfRange;
import landfall.quantity.Money;
import landfall.wear.Brief;
import landfall.wear.Run;
import landfall.wear.WearLaw;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Worked;

/**
 * What sharpening saved in a period: the holes of all runs that began with a sharpening in it, as new taps would have
 * cut them, each for one run, less what the sharpenings cost.
 *
 * @param sharpenings that began a run in the period
 * @param holes cut since in those runs
 * @param money below 0 a loss
 */
public record Saved(int sharpenings, long holes, Money money) {
    private static final Rule HOLES = Rule.given("n_y", "1", "holes of runs that a sharpening in the period began");
    private static final Rule TIMES = Rule.given("k_y", "1", "sharpenings in the period");

    /** From the first moment on and before the second. */
    public record Period(Instant from, Instant to) {
        public Period {
            if (!from.isBefore(to)) {
                throw new OutOfRange("period", from + " to " + to, "from an earlier to a later moment", "swap the two");
            }
        }

        boolean holds(Instant at) {
            return !at.isBefore(from) && at.isBefore(to);
        }
    }

    /** @param runs of the law's taps */
    public static Worked<Saved> of(List<Run> runs, Period period, WearLaw law, Bench bench) {
        return ofBriefs(runs.stream().map(Brief::of).toList(), period, law, bench);
    }

    /** How many of the runs began with a sharpening in the period. */
    public static int times(List<Brief> runs, Period period) {
        return began(runs, period).size();
    }

    private static List<Brief> began(List<Brief> runs, Period period) {
        return runs.stream()
                .filter(run -> {
                    Instant from = run.span().from();
                    return run.span().start() == Run.Start.SHARPENED && from != null && period.holds(from);
                })
                .toList();
    }

    /** The same, from runs in brief. */
    public static Worked<Saved> ofBriefs(List<Brief> runs, Period period, WearLaw law, Bench bench) {
        List<Brief> began = began(runs, period);
        int k = began.size();
        long n = began.stream().mapToLong(Brief::holes).sum();
        double life = law.learned().value().middle().expected();
        return Worked.of(pen -> of(k, n, life, bench, pen));
    }

    private static Saved of(int times, long holes, double life, Bench bench, Pen pen) {
        CostRules rules = new CostRules(bench.currency());
        double p = pen.write(rules.tap, bench.tap().amount());
        double c_g = pen.write(rules.sharpening, bench.sharpening().amount());
        double N = pen.write(CostRules.LIFE, life);
        double n_y = pen.write(HOLES, holes);
        double k_y = pen.write(TIMES, times);
        return new Saved(times, holes, bench.in(pen.write(rules.saved, p * n_y / N - c_g * k_y)));
    }
}
