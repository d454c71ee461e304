// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import landfall.wear.Job;

/**
 * Which tap on record is best for a hole: docs/methods/route-card.md.
 *
 * <p>No tap is left out. Those that can do it stand first: the most points by what practice says of their kind, their
 * limit and their chamfer; of equal ones the sharper; then by mark, so that the order does not hang on the order in
 * which they were given. Then those that sharpening mends, then the others, each with every reason why not.
 */
public final class TapRanking {
    private static final Comparator<Ranked> ORDER = Comparator.comparing((Ranked one) -> !one.isFit())
            .thenComparing(one -> !one.isOnlyDull())
            .thenComparing(one -> !one.isOfTheThread())
            .thenComparingInt(one -> one.unfit().size())
            .thenComparing(Comparator.comparingInt(Ranked::points).reversed())
            .thenComparingDouble(TapRanking::used)
            .thenComparingLong(one -> one.tap().standing().uses().sinceSharp())
            .thenComparing(one -> one.tap().mark());

    private TapRanking() {}

    /**
     * Every tap, the best first.
     *
     * @param wish what the tap is wanted for; a call-out with limits of its hole
     * @param job all holes that it must last for, which may be more than this one's
     * @throws IllegalArgumentException when the call-out has no limits of a hole
     */
    public static List<Ranked> rank(TapWish wish, Job job, List<OnHand> taps) {
        Fitness fitness = Fitness.of(wish, job);
        List<Ranked> ranked = new ArrayList<>();
        taps.forEach(tap -> ranked.add(fitness.judge(tap)));
        ranked.sort(ORDER);
        return List.copyOf(ranked);
    }

    private static double used(Ranked one) {
        Ranked.Worn wear = one.wear();
        return wear == null ? Double.POSITIVE_INFINITY : wear.used().expected();
    }
}
