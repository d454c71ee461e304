// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import org.jspecify.annotations.Nullable;

/** Where the edges stand, with the covariance of height, run-out and reference. */
final class LandEdges {
    private final Solution found;
    private final @Nullable Solution reference;
    private final double cosine;

    LandEdges(DialAsk ask, Solution found, @Nullable Solution reference) {
        this.found = found;
        this.reference = reference;
        this.cosine = Against.share(ask.readings().place(), ask.tap().chamfer());
    }

    boolean hasReference() {
        return reference != null;
    }

    /** Above the mean of the edges as read, mm in the dial's direction. */
    double asRead(int land) {
        return found.value(edge(land));
    }

    /** Radially, less the reference. */
    double proud(int land) {
        double own = asRead(land) / cosine;
        return reference == null ? own : own - reference.value(swing(reference, land));
    }

    /** Against the thread, in the dial's direction. */
    Fitted fitted(int land) {
        double value = proud(land) * cosine;
        double own = variance(found, edge(land));
        if (reference == null) {
            return found.fitted(edge(land));
        }
        double theirs = cosine * cosine * variance(reference, swing(reference, land));
        Spread both = Against.combined(own, found.spread, theirs, reference.spread);
        return Fitted.ofMm(value, Math.sqrt(own + theirs), both.factor());
    }

    /** Expanded uncertainty of the radial step between the edges of two lands. */
    double expandedDifference(int land, int before) {
        if (land == before) {
            return 0;
        }
        double own = variance(found, minus(edge(land), edge(before))) / (cosine * cosine);
        if (reference == null) {
            return found.spread.factor() * Math.sqrt(own);
        }
        double theirs = variance(reference, minus(swing(reference, land), swing(reference, before)));
        return Against.combined(own, found.spread, theirs, reference.spread).factor() * Math.sqrt(own + theirs);
    }

    private double[] edge(int land) {
        return found.model.edge(land);
    }

    /** The run-out terms alone of the reference, at the edge of a land. */
    private static double[] swing(Solution solution, int land) {
        double round = Math.toRadians(360.0 * (land - 1) / solution.model.flutes);
        double[] e = solution.model.cosine();
        double[] f = solution.model.sine();
        double[] row = new double[e.length];
        for (int j = 0; j < row.length; j++) {
            row[j] = e[j] * Math.cos(round) + f[j] * Math.sin(round);
        }
        return row;
    }

    private static double variance(Solution solution, double[] weights) {
        return solution.covariance(weights, weights);
    }

    private static double[] minus(double[] left, double[] right) {
        double[] row = new double[left.length];
        for (int j = 0; j < row.length; j++) {
            row[j] = left[j] - right[j];
        }
        return row;
    }
}
