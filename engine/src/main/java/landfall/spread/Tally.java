// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

/** All that is kept of one result: moments, counts for quantiles and histogram, how many are within the limits. */
public final class Tally {
    private final Frame frame;
    private final Within within;
    private final Moments moments;
    private final long[] counts;
    private long inside;

    Tally(Frame frame, Within within) {
        this(frame, within, new Moments(), new long[Frame.COUNTS + 2], 0);
    }

    /** A tally that was kept; {@code counts} has one place below and one above those of the frame. */
    Tally(Frame frame, Within within, Moments moments, long[] counts, long inside) {
        this.frame = frame;
        this.within = within;
        this.moments = moments;
        this.counts = counts;
        this.inside = inside;
    }

    void add(double value) {
        moments.add(value);
        counts[frame.place(value) + 1]++;
        if (within.holds(value)) {
            inside++;
        }
    }

    void merge(Tally next) {
        moments.merge(next.moments);
        for (int i = 0; i < counts.length; i++) {
            counts[i] += next.counts[i];
        }
        inside += next.inside;
    }

    public Moments moments() {
        return moments;
    }

    public Frame frame() {
        return frame;
    }

    public Within within() {
        return within;
    }

    /** How many lay within the limits. */
    public long inside() {
        return inside;
    }

    long[] counts() {
        return counts.clone();
    }

    /**
     * The value that a share of all lies below, within {@link Frame#width} of the one that sorting would find; beyond
     * the frame the ends that were met stand for it.
     */
    public double quantile(double share) {
        double wanted = share * moments.count();
        double passed = 0;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0 && passed + counts[i] >= wanted) {
                double low = i == 0 ? moments.least() : Math.max(moments.least(), edge(i));
                double high = i == counts.length - 1 ? moments.greatest() : Math.min(moments.greatest(), edge(i + 1));
                return low + (high - low) * (wanted - passed) / counts[i];
            }
            passed += counts[i];
        }
        return moments.greatest();
    }

    /** How many lie between two edges of the frame's counts that are nearest to these values. */
    public long between(double low, double high) {
        int from = frame.place(low + frame.width() / 2) + 1;
        int to = frame.place(high + frame.width() / 2) + 1;
        long sum = 0;
        for (int i = from; i < to; i++) {
            sum += counts[i];
        }
        return sum;
    }

    private double edge(int count) {
        return frame.low() + (count - 1) * frame.width();
    }
}
