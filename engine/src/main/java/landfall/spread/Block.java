// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** One block of set-ups: drawn, answered, and told in brief. */
public final class Block {
    private final Plan plan;
    private final Model model;
    private final long index;
    private final int size;
    private final Map<String, Long> refused = new TreeMap<>();

    private Block(Plan plan, Model model, long index) {
        this.plan = plan;
        this.model = model;
        this.index = index;
        this.size = plan.size(index);
    }

    /**
     * What a block shows.
     *
     * @param frames of the first block; null for the first, which lays them
     * @param rows takes the set-ups themselves, in their order
     */
    public static Summary of(Plan plan, Model model, long index, @Nullable List<Frame> frames, Rows rows) {
        return new Block(plan, model, index).summary(frames, rows);
    }

    /** Takes set-ups, for files. */
    @FunctionalInterface
    public interface Rows {
        /** For runs of which nothing but the summary is wanted. */
        Rows NONE = (first, inputs, results) -> {};

        /**
         * Takes the set-ups of one block.
         *
         * @param first number of its first set-up, from 0
         * @param inputs by input, then by set-up
         * @param results by result, then by set-up
         */
        void take(long first, double[][] inputs, double[][] results);
    }

    private Summary summary(@Nullable List<Frame> frames, Rows rows) {
        double[][] uniform = uniform(true);
        double[][] inputs = values(uniform);
        double[][] results = answer(inputs, true);
        rows.take(index * Plan.BLOCK, inputs, results);
        List<Frame> laid =
                frames == null ? Arrays.stream(results).map(Block::frame).toList() : frames;
        Summary.Parts parts = Summary.Parts.empty(plan, laid);
        long good = tally(parts, uniform, results);
        if (plan.isForSensitivities(index)) {
            sensitivities(parts, inputs, results);
        }
        Summary.First first = frames == null ? new Summary.First(List.of(inputs), List.of(results)) : null;
        return new Summary(plan, parts, new Summary.Counts(size, 1, good), refused, first);
    }

    private static Frame frame(double[] results) {
        Moments moments = new Moments();
        for (double result : results) {
            if (!Double.isNaN(result)) {
                moments.add(result);
            }
        }
        return Frame.over(moments);
    }

    private double[][] uniform(boolean one) {
        Draws draws = new Draws(plan.seed());
        double[][] uniform = new double[plan.laws().size()][size];
        for (int input = 0; input < uniform.length; input++) {
            for (int k = 0; k < size; k++) {
                long number = index * Plan.BLOCK + k;
                uniform[input][k] = one ? draws.uniform(input, number) : draws.second(input, number);
            }
        }
        return uniform;
    }

    private double[][] values(double[][] uniform) {
        double[][] values = new double[uniform.length][size];
        for (int input = 0; input < uniform.length; input++) {
            Law law = plan.laws().get(input);
            for (int k = 0; k < size; k++) {
                values[input][k] = law.at(uniform[input][k]);
            }
        }
        return values;
    }

    /** Only the set-ups themselves are told when refused, not the mixed ones of the sensitivities. */
    private double[][] answer(double[][] inputs, boolean told) {
        double[][] results = new double[plan.limits().size()][size];
        model.answer(inputs, results, why -> {
            if (told) {
                refused.merge(why, 1L, Long::sum);
            }
        });
        return results;
    }

    private long tally(Summary.Parts parts, double[][] uniform, double[][] results) {
        long good = 0;
        for (int k = 0; k < size; k++) {
            boolean all = true;
            for (int result = 0; result < results.length; result++) {
                double value = results[result][k];
                if (Double.isNaN(value)) {
                    all = false;
                    continue;
                }
                parts.results().get(result).add(value);
                all &= plan.limits().get(result).holds(value);
                for (int input = 0; input < uniform.length; input++) {
                    parts.along().get(result).get(input).add(uniform[input][k], value);
                }
            }
            good += all ? 1 : 0;
        }
        return good;
    }

    private void sensitivities(Summary.Parts parts, double[][] a, double[][] resultsA) {
        double[][] b = values(uniform(false));
        double[][] resultsB = answer(b, false);
        for (int input = 0; input < a.length; input++) {
            double[][] mixed = a.clone();
            mixed[input] = b[input];
            double[][] found = answer(mixed, false);
            for (int result = 0; result < found.length; result++) {
                Sensitivity.Sums sums = parts.sums().get(result).get(input);
                for (int k = 0; k < size; k++) {
                    double all = resultsA[result][k] + resultsB[result][k] + found[result][k];
                    if (!Double.isNaN(all)) {
                        sums.add(resultsA[result][k], resultsB[result][k], found[result][k]);
                    }
                }
            }
        }
    }
}
