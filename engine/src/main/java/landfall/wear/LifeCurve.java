// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** How likely each life of one tap is, after all evidence and its own: a density over ln life, on even steps. */
final class LifeCurve {
    private static final int STEPS = 400;
    private static final double REACH = 6.5;

    private final double[] at = new double[STEPS + 1];
    private final double[] share = new double[STEPS + 1];

    private LifeCurve(double low, double high) {
        for (int i = 0; i <= STEPS; i++) {
            at[i] = low + (high - low) * i / STEPS;
        }
    }

    static LifeCurve of(List<Column> columns, Evidence own) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Column column : columns) {
            low = Math.min(low, column.mean() - REACH * column.sd());
            high = Math.max(high, column.mean() + REACH * column.sd());
        }
        if (!own.isNone()) {
            // a run far off the others keeps its place on the curve
            low = Math.min(low, own.lnLife() - 3 * own.noise());
            high = Math.max(high, own.lnLife() + REACH * own.noise() + 1);
        }
        LifeCurve curve = new LifeCurve(low, high);
        curve.fill(columns, own);
        return curve;
    }

    private void fill(List<Column> columns, Evidence own) {
        double top = Double.NEGATIVE_INFINITY;
        Column[] all = columns.toArray(new Column[0]);
        double[] lnHeights = new double[all.length];
        for (int i = 0; i < all.length; i++) {
            lnHeights[i] = Math.log(all[i].weight() / all[i].sd());
        }
        double[] ln = new double[all.length];
        for (int i = 0; i <= STEPS; i++) {
            share[i] = lnDensity(all, lnHeights, at[i], ln) + lnOwn(own, at[i]);
            top = Math.max(top, share[i]);
        }
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            share[i] = Math.exp(share[i] - top);
            sum += share[i];
        }
        for (int i = 0; i <= STEPS; i++) {
            share[i] /= sum;
        }
    }

    /** @param ln room for the density of each column */
    private static double lnDensity(Column[] columns, double[] lnHeights, double x, double[] ln) {
        double top = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < ln.length; i++) {
            double z = (x - columns[i].mean()) / columns[i].sd();
            ln[i] = lnHeights[i] - z * z / 2;
            top = Math.max(top, ln[i]);
        }
        double sum = 0;
        for (double one : ln) {
            sum += Math.exp(one - top);
        }
        return top + Math.log(sum);
    }

    private static double lnOwn(Evidence own, double x) {
        if (own.isNone()) {
            return 0;
        }
        double z = (x - own.lnLife()) / own.noise();
        return own.known() ? -z * z / 2 : NormalTail.ln(z);
    }

    /** The life that this share of taps does not reach, in diameters. */
    double life(double probability) {
        double below = 0;
        for (int i = 0; i <= STEPS; i++) {
            if (below + share[i] >= probability) {
                double within = (probability - below) / share[i] - 0.5;
                return Math.exp(at[i] + within * (at[1] - at[0]));
            }
            below += share[i];
        }
        return Math.exp(at[STEPS]);
    }

    /** Mean of a function of life in diameters. */
    double mean(DoubleUnaryOperator of) {
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            sum += share[i] * of.applyAsDouble(Math.exp(at[i]));
        }
        return sum;
    }

    /** Share of taps that last longer than this, in diameters. */
    double beyond(double diameters) {
        double ln = Math.log(diameters);
        double step = at[1] - at[0];
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            double within = Math.max(0, Math.min(1, (at[i] + step / 2 - ln) / step));
            sum += share[i] * within;
        }
        return sum;
    }
}
