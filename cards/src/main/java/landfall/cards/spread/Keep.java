// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.ArrayList;
import java.util.List;
import landfall.spread.Along;
import landfall.spread.Law;
import landfall.spread.Summary;

/**
 * How well a field must be kept: the stretch of its values, step by step of equal chance, in which a result lies within
 * its limits often enough while everything else varies.
 *
 * @param from where the stretch begins; not a number where there is none
 * @param to where it ends
 * @param isAll whether no step falls short
 * @param good the values that are good enough, of a field that takes one of several
 */
public record Keep(Watched watched, Varied varied, double from, double to, boolean isAll, List<String> good) {
    /** Nineteen of twenty. */
    public static final double WANTED = 0.95;

    public Keep {
        good = List.copyOf(good);
    }

    /** For every result with limits and every field. */
    public static List<Keep> of(SpreadSetup setup, Summary summary) {
        List<Keep> all = new ArrayList<>();
        for (int result = 0; result < setup.watched().size(); result++) {
            if (setup.watched().get(result).within().isSet()) {
                for (int input = 0; input < setup.varied().size(); input++) {
                    all.add(of(setup.watched().get(result), setup.varied().get(input), summary.along(result, input)));
                }
            }
        }
        return all;
    }

    static Keep of(Watched watched, Varied varied, Along along) {
        boolean[] good = new boolean[along.steps()];
        boolean all = true;
        for (int step = 0; step < good.length; step++) {
            long count = along.moments(step).count();
            good[step] = count > 0 && along.inside(step) >= WANTED * count;
            all &= good[step];
        }
        return varied.law() instanceof Law.Choices choices && choices.values().size() == good.length
                ? choices(watched, varied, choices, good, all)
                : stretch(watched, varied, good, all);
    }

    private static Keep choices(Watched watched, Varied varied, Law.Choices choices, boolean[] good, boolean all) {
        List<String> texts = new ArrayList<>();
        for (int step = 0; step < good.length; step++) {
            if (good[step]) {
                texts.add(varied.text(choices.values().get(step)));
            }
        }
        return new Keep(watched, varied, Double.NaN, Double.NaN, all, texts);
    }

    /** The longest run of good steps. */
    private static Keep stretch(Watched watched, Varied varied, boolean[] good, boolean all) {
        int best = 0;
        int bestFrom = 0;
        int length = 0;
        for (int step = 0; step < good.length; step++) {
            length = good[step] ? length + 1 : 0;
            if (length > best) {
                best = length;
                bestFrom = step - length + 1;
            }
        }
        if (best == 0) {
            return new Keep(watched, varied, Double.NaN, Double.NaN, false, List.of());
        }
        double from = edge(varied.law(), bestFrom, good.length);
        return new Keep(watched, varied, from, edge(varied.law(), bestFrom + best, good.length), all, List.of());
    }

    /** The outermost edges of a law without ends are where one draw in a thousand lies. */
    private static double edge(Law law, int step, int steps) {
        double share = (double) step / steps;
        return law.at(Math.min(0.999, Math.max(0.001, share)));
    }
}
