// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

import java.util.List;

/**
 * The integral equation of the outline. With Prandtl's function Φ = ψ − r²/2, ψ is harmonic and equals r²/2 on the
 * outline; its slope q outwards across the outline is sought from Green's identity,
 *
 * <p>∫ G q ds = ∫ (ψ(y) − ψ(z)) ∂G/∂n ds for every z of the outline, G = −ln|y − z|/2π.
 *
 * <p>The right side has no jump term: the difference takes it away. Panels near a point are integrated with points
 * crowded towards it, both for the logarithm on the point's own panel and for neighbours; others with their own points.
 */
final class BoundaryEquation {
    /** A panel nearer than this many of its lengths is integrated with crowded points. */
    private static final double NEAR = 1.2;

    private static final GaussRule CROWD = new GaussRule(14);

    private final List<Panel> panels;
    private final GaussRule rule;
    private final int repeats;
    private final double[][] matrix;
    private final double[] right;
    private final double[] basis;

    BoundaryEquation(List<Panel> panels, GaussRule rule, int repeats) {
        this.panels = panels;
        this.rule = rule;
        this.repeats = repeats;
        int unknowns = panels.size() * rule.count();
        matrix = new double[unknowns][unknowns];
        right = new double[unknowns];
        basis = new double[rule.count()];
    }

    /** The slope of ψ outwards at the points of the panels of one repeat. */
    double[] solve() {
        int n = rule.count();
        for (int p = 0; p < panels.size(); p++) {
            for (int i = 0; i < n; i++) {
                row(p, i);
            }
        }
        return new LinearSystem(matrix, right).solve();
    }

    private void row(int home, int point) {
        int n = rule.count();
        int row = home * n + point;
        double zx = panels.get(home).x[point];
        double zy = panels.get(home).y[point];
        for (int k = 0; k < repeats; k++) {
            // the point is turned back instead of the panels on: one turn for all of them
            double cos = Math.cos(2 * Math.PI * k / repeats);
            double sin = Math.sin(2 * Math.PI * k / repeats);
            double px = cos * zx + sin * zy;
            double py = cos * zy - sin * zx;
            for (int s = 0; s < panels.size(); s++) {
                Panel panel = panels.get(s);
                if (k == 0 && s == home) {
                    near(row, s, px, py, rule.node(point));
                } else if (Math.hypot(px - panel.middleX, py - panel.middleY) < NEAR * panel.length) {
                    near(row, s, px, py, closest(panel, px, py));
                } else {
                    far(row, s, px, py);
                }
            }
        }
    }

    private void far(int row, int source, double px, double py) {
        Panel panel = panels.get(source);
        double here = (px * px + py * py) / 2;
        double[] cells = matrix[row];
        int first = source * rule.count();
        double sum = 0;
        for (int j = 0; j < rule.count(); j++) {
            double rx = panel.x[j] - px;
            double ry = panel.y[j] - py;
            double squared = rx * rx + ry * ry;
            cells[first + j] += -Math.log(squared) / 2 * panel.ds[j];
            double there = (panel.x[j] * panel.x[j] + panel.y[j] * panel.y[j]) / 2;
            sum -= (there - here) * (rx * panel.nx[j] + ry * panel.ny[j]) / squared * panel.ds[j];
        }
        right[row] += sum;
    }

    private void near(int row, int source, double px, double py, double u0) {
        if (u0 > -1) {
            side(row, source, new double[] {px, py, u0}, -1);
        }
        if (u0 < 1) {
            side(row, source, new double[] {px, py, u0}, 1);
        }
    }

    /** From the nearest place u0 to one end of the panel, by u = u0 + (end − u0)·s³: points crowd at u0. */
    private void side(int row, int source, double[] target, double end) {
        Panel panel = panels.get(source);
        double here = (target[0] * target[0] + target[1] * target[1]) / 2;
        double way = end - target[2];
        int first = source * rule.count();
        double[] cells = matrix[row];
        for (int i = 0; i < CROWD.count(); i++) {
            double s = (1 + CROWD.node(i)) / 2;
            double u = target[2] + way * s * s * s;
            double[] point = panel.at(u);
            double rx = point[0] - target[0];
            double ry = point[1] - target[1];
            double squared = rx * rx + ry * ry;
            double du = CROWD.weight(i) / 2 * Math.abs(way) * 3 * s * s;
            double ds = Math.hypot(point[2], point[3]) * du;
            double log = -Math.log(squared) / 2 * ds;
            rule.basisAt(u, basis);
            for (int j = 0; j < basis.length; j++) {
                cells[first + j] += log * basis[j];
            }
            double there = (point[0] * point[0] + point[1] * point[1]) / 2;
            right[row] -= (there - here) * (rx * point[3] - ry * point[2]) / squared * du;
        }
    }

    /** u of the panel's place nearest to a point. */
    private static double closest(Panel panel, double px, double py) {
        double u = 0;
        for (int i = 0; i < 6; i++) {
            double[] at = panel.at(u);
            double step = ((px - at[0]) * at[2] + (py - at[1]) * at[3]) / (at[2] * at[2] + at[3] * at[3]);
            u = Math.max(-1, Math.min(1, u + step));
        }
        return u;
    }
}
