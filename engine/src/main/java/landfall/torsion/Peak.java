// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

import java.util.List;

/** Looks along the outline for the greatest shear stress: the fall of Prandtl's function across it. */
final class Peak {
    private static final int LOOKS = 24;

    private final List<Panel> panels;
    private final double[] slope;
    private final GaussRule rule;
    private final double[][] corners;
    private final double[] basis;

    /** Where the stress is how high, scaled. */
    record Found(double stress, double x, double y) {}

    Peak(List<Panel> panels, double[] slope, GaussRule rule, double[][] corners) {
        this.panels = panels;
        this.slope = slope;
        this.rule = rule;
        this.corners = corners;
        this.basis = new double[rule.count()];
    }

    Found find() {
        Found best = new Found(-1, 0, 0);
        int bestPanel = 0;
        double bestU = 0;
        for (int p = 0; p < panels.size(); p++) {
            for (int i = 0; i <= LOOKS; i++) {
                double u = -1 + 2.0 * i / LOOKS;
                Found here = at(p, u);
                if (here.stress > best.stress) {
                    best = here;
                    bestPanel = p;
                    bestU = u;
                }
            }
        }
        return climb(best, bestPanel, bestU);
    }

    /** Halves the step around the best look. */
    private Found climb(Found start, int panel, double u) {
        Found best = start;
        double at = u;
        for (double step = 1.0 / LOOKS; step > 1e-6; step /= 2) {
            for (double tried : new double[] {at - step, at + step}) {
                if (Math.abs(tried) <= 1) {
                    Found here = at(panel, tried);
                    if (here.stress > best.stress) {
                        best = here;
                        at = tried;
                    }
                }
            }
        }
        return best;
    }

    private Found at(int panel, double u) {
        double[] point = panels.get(panel).at(u);
        if (isByACorner(point[0], point[1])) {
            return new Found(-1, point[0], point[1]);
        }
        rule.basisAt(u, basis);
        double q = 0;
        for (int j = 0; j < basis.length; j++) {
            q += basis[j] * slope[panel * basis.length + j];
        }
        double speed = Math.hypot(point[2], point[3]);
        double rn = (point[0] * point[3] - point[1] * point[2]) / speed;
        return new Found(Math.abs(q - rn), point[0], point[1]);
    }

    private boolean isByACorner(double x, double y) {
        for (double[] corner : corners) {
            if (Math.hypot(x - corner[0], y - corner[1]) < corner[2]) {
                return true;
            }
        }
        return false;
    }
}
