// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What blocks of set-ups have shown; those of later blocks are merged into it one after another. */
public final class Summary {
    private final Plan plan;
    private long samples;
    private long blocks;
    private final List<Tally> results;
    /** By result, then by input. */
    private final List<List<Along>> along;
    /** By result, then by input. */
    private final List<List<Sensitivity.Sums>> sums;

    private long good;
    private final TreeMap<String, Long> refused;
    private final @Nullable First first;

    /** The set-ups of the first block, for drawing: by input and by result, then by set-up. */
    public record First(List<double[]> inputs, List<double[]> results) {}

    /** Set-ups and blocks taken in, and set-ups that were good. */
    record Counts(long samples, long blocks, long good) {}

    Summary(Plan plan, Parts parts, Counts counts, Map<String, Long> refused, @Nullable First first) {
        this.plan = plan;
        this.results = List.copyOf(parts.results());
        this.along = List.copyOf(parts.along());
        this.sums = List.copyOf(parts.sums());
        this.samples = counts.samples();
        this.blocks = counts.blocks();
        this.good = counts.good();
        this.refused = new TreeMap<>(refused);
        this.first = first;
    }

    /** By result; the last two then by input. */
    record Parts(List<Tally> results, List<List<Along>> along, List<List<Sensitivity.Sums>> sums) {
        static Parts empty(Plan plan, List<Frame> frames) {
            List<Tally> results = new ArrayList<>();
            List<List<Along>> along = new ArrayList<>();
            List<List<Sensitivity.Sums>> sums = new ArrayList<>();
            for (int result = 0; result < frames.size(); result++) {
                Within within = plan.limits().get(result);
                results.add(new Tally(frames.get(result), within));
                along.add(plan.laws().stream()
                        .map(law -> new Along(law.steps(), within))
                        .toList());
                sums.add(plan.laws().stream().map(law -> new Sensitivity.Sums()).toList());
            }
            return new Parts(results, along, sums);
        }
    }

    /** Takes in the next block. */
    public void merge(Summary next) {
        for (int result = 0; result < results.size(); result++) {
            results.get(result).merge(next.results.get(result));
            for (int input = 0; input < along.get(result).size(); input++) {
                along.get(result).get(input).merge(next.along.get(result).get(input));
                sums.get(result).get(input).merge(next.sums.get(result).get(input));
            }
        }
        samples += next.samples;
        blocks += next.blocks;
        good += next.good;
        next.refused.forEach((why, count) -> refused.merge(why, count, Long::sum));
    }

    public long samples() {
        return samples;
    }

    public long blocks() {
        return blocks;
    }

    /** Set-ups that were answered with every watched result within its limits. */
    public long good() {
        return good;
    }

    public List<Tally> results() {
        return results;
    }

    /** A result along an input. */
    public Along along(int result, int input) {
        return along.get(result).get(input);
    }

    /** How much of a result is due to an input; null before there are rows for it. */
    public @Nullable Sensitivity sensitivity(int result, int input) {
        Sensitivity.Sums kept = sums.get(result).get(input);
        return kept.isEmpty() ? null : kept.found();
    }

    Sensitivity.Sums sums(int result, int input) {
        return sums.get(result).get(input);
    }

    /** Why set-ups were refused, and how many for each reason. */
    public Map<String, Long> refused() {
        return Collections.unmodifiableMap(refused);
    }

    public long refusals() {
        return refused.values().stream().mapToLong(Long::longValue).sum();
    }

    public First first() {
        return Objects.requireNonNull(first, "not the first block");
    }

    @Nullable
    First firstOrNull() {
        return first;
    }

    /** Writes every bit of it. */
    public void write(DataOutput out) throws IOException {
        Kept.write(this, plan, out);
    }

    /** What was written, of a run by the same plan. */
    public static Summary read(Plan plan, DataInput in) throws IOException {
        return Kept.read(plan, in);
    }

    public List<Frame> frames() {
        return results.stream().map(Tally::frame).toList();
    }
}
