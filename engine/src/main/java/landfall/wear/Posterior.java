// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.List;

/**
 * Middle and scatter of ln life after the evidence, on a grid that is laid closer until it resolves them.
 *
 * <p>ln life of a run ~ N(μ, σ²). Before: μ ~ N(μ0, s0²), ln σ ~ N(ln 0.35, 0.35²), an estimate. A run of known life y
 * with noise s weighs N(y; μ, σ² + s²), one that lasted at least y the normal share of (μ − y)/√(σ² + s²).
 */
final class Posterior {
    /** Lives of one tap's runs scatter by a factor of 1.4 about their middle, one standard deviation; an estimate. */
    private static final double LN_SCATTER = Math.log(0.35);

    private static final double LN_SCATTER_SPREAD = 0.35;
    private static final int MIDDLES = 49;
    private static final int SCATTERS = 17;
    private static final int ROUNDS = 8;
    private static final double REACH = 6;

    private final double mu0;
    private final double s0;
    private final List<Evidence> evidence;
    private double[] middles;
    private double[] lnScatters;
    private double[][] ln;

    private Posterior(double mu0, double s0, List<Evidence> evidence) {
        this.mu0 = mu0;
        this.s0 = s0;
        this.evidence = evidence;
        double low = mu0 - REACH * s0;
        double high = mu0 + REACH * s0;
        for (Evidence one : evidence) {
            low = Math.min(low, one.lnLife() - 1);
            high = Math.max(high, one.lnLife() + 1);
        }
        middles = grid((low + high) / 2, (high - low) / 2, MIDDLES);
        lnScatters = grid(LN_SCATTER, REACH * LN_SCATTER_SPREAD, SCATTERS);
        ln = weigh();
    }

    static Posterior of(Prior.Life life, List<Evidence> evidence) {
        double mu0 = Math.log(life.diameters().expected());
        List<Evidence> said = evidence.stream().filter(one -> !one.isNone()).toList();
        Posterior posterior = new Posterior(mu0, life.spread(), said);
        posterior.closeIn();
        return posterior;
    }

    private void closeIn() {
        for (int round = 0; round < ROUNDS; round++) {
            Moments mu = Moments.of(middles, ln, true);
            Moments scatter = Moments.of(lnScatters, ln, false);
            double muStep = middles[1] - middles[0];
            double scatterStep = lnScatters[1] - lnScatters[0];
            if (round > 0 && muStep <= mu.sd() / 2 && scatterStep <= scatter.sd()) {
                return;
            }
            middles = grid(mu.mean(), REACH * Math.max(mu.sd(), muStep / 2), MIDDLES);
            lnScatters = grid(scatter.mean(), REACH * Math.max(scatter.sd(), scatterStep / 2), SCATTERS);
            ln = weigh();
        }
        throw new IllegalStateException("posterior not resolved after " + ROUNDS + " rounds");
    }

    private static double[] grid(double middle, double reach, int places) {
        double[] grid = new double[places];
        for (int i = 0; i < places; i++) {
            grid[i] = middle - reach + 2 * reach * i / (places - 1);
        }
        return grid;
    }

    private double[][] weigh() {
        double[][] sums = new double[lnScatters.length][middles.length];
        for (int j = 0; j < lnScatters.length; j++) {
            double b = (lnScatters[j] - LN_SCATTER) / LN_SCATTER_SPREAD;
            for (int i = 0; i < middles.length; i++) {
                double a = (middles[i] - mu0) / s0;
                sums[j][i] = -(a * a + b * b) / 2;
            }
            for (Evidence one : evidence) {
                add(one, j, sums[j], 1);
            }
        }
        return sums;
    }

    private void add(Evidence one, int j, double[] row, int sign) {
        double scatter = Math.exp(lnScatters[j]);
        double whole = Math.sqrt(scatter * scatter + one.noise() * one.noise());
        double lnWhole = Math.log(whole);
        for (int i = 0; i < middles.length; i++) {
            double z = (middles[i] - one.lnLife()) / whole;
            row[i] += sign * (one.known() ? -z * z / 2 - lnWhole : NormalTail.ln(z));
        }
    }

    /** The middle of lives, all scatters together. */
    Moments middle() {
        return Moments.of(middles, ln, true);
    }

    /** Mean of the logarithm of the scatter and its spread. */
    Moments lnScatter() {
        return Moments.of(lnScatters, ln, false);
    }

    List<Column> columns() {
        return Column.of(middles, lnScatters, ln);
    }

    /** What all evidence but this says; it must be among the evidence. */
    List<Column> columnsWithout(Evidence one) {
        double[][] less = new double[lnScatters.length][];
        for (int j = 0; j < less.length; j++) {
            less[j] = ln[j].clone();
            add(one, j, less[j], -1);
        }
        return Column.of(middles, lnScatters, less);
    }
}
