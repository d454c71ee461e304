// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

/**
 * Count, mean, spread and ends of a stream of figures, one after another, or stream after stream: Welford's update and
 * the merge of Chan, Golub and LeVeque ({@code chan-1983}). The result depends on the order of merging, which a run
 * keeps.
 */
public final class Moments {
    private long count;
    private double mean;
    private double squares;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;

    public Moments() {}

    /** Moments that were kept. */
    Moments(long count, double[] kept) {
        this.count = count;
        this.mean = kept[0];
        this.squares = kept[1];
        this.least = kept[2];
        this.greatest = kept[3];
    }

    void add(double value) {
        count++;
        double off = value - mean;
        mean += off / count;
        squares += off * (value - mean);
        least = Math.min(least, value);
        greatest = Math.max(greatest, value);
    }

    void merge(Moments next) {
        if (next.count == 0) {
            return;
        }
        long both = count + next.count;
        double off = next.mean - mean;
        mean += off * next.count / both;
        squares += next.squares + off * off * ((double) count * next.count / both);
        count = both;
        least = Math.min(least, next.least);
        greatest = Math.max(greatest, next.greatest);
    }

    /** Mean, sum of squares about it, least, greatest: what is kept beside the count. */
    double[] kept() {
        return new double[] {mean, squares, least, greatest};
    }

    public long count() {
        return count;
    }

    public double mean() {
        return mean;
    }

    /** Standard deviation, over one less than the count; 0 for fewer than two. */
    public double deviation() {
        return count < 2 ? 0 : Math.sqrt(squares / (count - 1));
    }

    public double least() {
        return least;
    }

    public double greatest() {
        return greatest;
    }
}
