// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

/**
 * The ratio of two means of paired figures with its standard error by the delta method: means, squares and product are
 * kept as moments are.
 */
final class PairSums {
    private long count;
    private double meanTop;
    private double meanUnder;
    private double top;
    private double under;
    private double product;

    PairSums() {}

    PairSums(long count, double[] kept) {
        this.count = count;
        this.meanTop = kept[0];
        this.meanUnder = kept[1];
        this.top = kept[2];
        this.under = kept[3];
        this.product = kept[4];
    }

    void add(double x, double y) {
        count++;
        double offX = x - meanTop;
        double offY = y - meanUnder;
        meanTop += offX / count;
        meanUnder += offY / count;
        top += offX * (x - meanTop);
        under += offY * (y - meanUnder);
        product += offX * (y - meanUnder);
    }

    void merge(PairSums next) {
        if (next.count == 0) {
            return;
        }
        long both = count + next.count;
        double offX = next.meanTop - meanTop;
        double offY = next.meanUnder - meanUnder;
        double weight = (double) count * next.count / both;
        top += next.top + offX * offX * weight;
        under += next.under + offY * offY * weight;
        product += next.product + offX * offY * weight;
        meanTop += offX * next.count / both;
        meanUnder += offY * next.count / both;
        count = both;
    }

    long count() {
        return count;
    }

    double[] kept() {
        return new double[] {meanTop, meanUnder, top, under, product};
    }

    /** 0 where nothing varies. */
    double ratio() {
        return meanUnder > 0 ? meanTop / meanUnder : 0;
    }

    double error() {
        if (count < 2 || !(meanUnder > 0)) {
            return 0;
        }
        double r = ratio();
        double residual = top - 2 * r * product + r * r * under;
        return Math.sqrt(Math.max(0, residual) / (count - 1) / count) / meanUnder;
    }
}
