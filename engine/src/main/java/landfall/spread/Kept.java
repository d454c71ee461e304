// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A summary to bytes and back, every bit of it. */
final class Kept {
    private final Plan plan;
    private final DataInput in;

    private Kept(Plan plan, DataInput in) {
        this.plan = plan;
        this.in = in;
    }

    static void write(Summary summary, Plan plan, DataOutput out) throws IOException {
        out.writeLong(plan.seed());
        out.writeLong(plan.samples());
        out.writeLong(plan.rows());
        out.writeLong(summary.samples());
        out.writeLong(summary.blocks());
        out.writeLong(summary.good());
        for (int result = 0; result < plan.limits().size(); result++) {
            tally(summary.results().get(result), out);
            for (int input = 0; input < plan.laws().size(); input++) {
                along(summary.along(result, input), out);
                Sensitivity.Sums sums = summary.sums(result, input);
                pairs(sums.first(), out);
                pairs(sums.total(), out);
            }
        }
        out.writeInt(summary.refused().size());
        for (Map.Entry<String, Long> refused : summary.refused().entrySet()) {
            out.writeUTF(refused.getKey());
            out.writeLong(refused.getValue());
        }
        first(summary.firstOrNull(), out);
    }

    private static void tally(Tally tally, DataOutput out) throws IOException {
        out.writeDouble(tally.frame().low());
        out.writeDouble(tally.frame().width());
        moments(tally.moments(), out);
        out.writeLong(tally.inside());
        for (long count : tally.counts()) {
            out.writeLong(count);
        }
    }

    private static void moments(Moments moments, DataOutput out) throws IOException {
        out.writeLong(moments.count());
        doubles(moments.kept(), out);
    }

    private static void along(Along along, DataOutput out) throws IOException {
        for (int step = 0; step < along.steps(); step++) {
            moments(along.moments(step), out);
            out.writeLong(along.inside(step));
        }
    }

    private static void pairs(PairSums pairs, DataOutput out) throws IOException {
        out.writeLong(pairs.count());
        doubles(pairs.kept(), out);
    }

    private static void doubles(double[] values, DataOutput out) throws IOException {
        for (double value : values) {
            out.writeDouble(value);
        }
    }

    private static void first(Summary.@Nullable First first, DataOutput out) throws IOException {
        out.writeInt(first == null ? 0 : first.results().get(0).length);
        if (first != null) {
            for (double[] column : first.inputs()) {
                doubles(column, out);
            }
            for (double[] column : first.results()) {
                doubles(column, out);
            }
        }
    }

    static Summary read(Plan plan, DataInput in) throws IOException {
        return new Kept(plan, in).summary();
    }

    private Summary summary() throws IOException {
        if (in.readLong() != plan.seed() || in.readLong() != plan.samples() || in.readLong() != plan.rows()) {
            throw new IOException("kept of another plan");
        }
        long samples = in.readLong();
        long blocks = in.readLong();
        long good = in.readLong();
        List<Tally> results = new ArrayList<>();
        List<List<Along>> along = new ArrayList<>();
        List<List<Sensitivity.Sums>> sums = new ArrayList<>();
        for (Within within : plan.limits()) {
            results.add(tally(within));
            List<Along> alongOne = new ArrayList<>();
            List<Sensitivity.Sums> sumsOne = new ArrayList<>();
            for (Law law : plan.laws()) {
                alongOne.add(along(law.steps(), within));
                sumsOne.add(new Sensitivity.Sums(pairs(), pairs()));
            }
            along.add(alongOne);
            sums.add(sumsOne);
        }
        Map<String, Long> refused = new TreeMap<>();
        for (int left = in.readInt(); left > 0; left--) {
            refused.put(in.readUTF(), in.readLong());
        }
        Summary.Parts parts = new Summary.Parts(results, along, sums);
        return new Summary(plan, parts, new Summary.Counts(samples, blocks, good), refused, first());
    }

    private Tally tally(Within within) throws IOException {
        Frame frame = new Frame(in.readDouble(), in.readDouble());
        Moments moments = moments();
        long inside = in.readLong();
        long[] counts = new long[Frame.COUNTS + 2];
        for (int i = 0; i < counts.length; i++) {
            counts[i] = in.readLong();
        }
        return new Tally(frame, within, moments, counts, inside);
    }

    private Moments moments() throws IOException {
        return new Moments(in.readLong(), doubles(4));
    }

    private Along along(int steps, Within within) throws IOException {
        List<Moments> moments = new ArrayList<>();
        long[] inside = new long[steps];
        for (int step = 0; step < steps; step++) {
            moments.add(moments());
            inside[step] = in.readLong();
        }
        return new Along(within, moments, inside);
    }

    private PairSums pairs() throws IOException {
        return new PairSums(in.readLong(), doubles(5));
    }

    private double[] doubles(int count) throws IOException {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = in.readDouble();
        }
        return values;
    }

    private Summary.@Nullable First first() throws IOException {
        int size = in.readInt();
        if (size == 0) {
            return null;
        }
        if (size < 0 || size > Plan.BLOCK) {
            throw new IOException("a first block of " + size);
        }
        List<double[]> inputs = new ArrayList<>();
        List<double[]> results = new ArrayList<>();
        for (int i = 0; i < plan.laws().size(); i++) {
            inputs.add(doubles(size));
        }
        for (int i = 0; i < plan.limits().size(); i++) {
            results.add(doubles(size));
        }
        return new Summary.First(inputs, results);
    }
}
