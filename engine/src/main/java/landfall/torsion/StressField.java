// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Length;

/**
 * The shear stress all over a section, for drawing it.
 *
 * <p>On the outline both slopes of ψ are known: q across it, r·t along it. f = ∂ψ/∂x − i ∂ψ/∂y is analytic inside, and
 * Cauchy's integral gives it from its values on the outline. It is divided by the same quadrature of 1, which is 1 only
 * when summed exactly: errors of both cancel, and the quotient holds right up to the outline. The stress for G·θ = 1 is
 * |∇ψ − r|.
 */
public final class StressField {
    private final List<double[]> nodes = new ArrayList<>();
    private final Outline outline;
    private final double scale;
    private final double radius;

    private StressField(Outline outline, Length outer) {
        this.outline = outline;
        this.scale = Panel.SCALED_RADIUS / outline.greatestRadius();
        this.radius = outer.mm() / 2 * scale;
        Fineness fineness = Fineness.USUAL;
        List<Panel> panels = Panel.cut(outline, fineness);
        double[] slope = new BoundaryEquation(panels, fineness.rule(), outline.repeats()).solve();
        for (int turn = 0; turn < outline.repeats(); turn++) {
            double angle = 2 * Math.PI * turn / outline.repeats();
            int row = 0;
            for (Panel panel : panels) {
                for (int i = 0; i < panel.x.length; i++) {
                    nodes.add(node(panel, i, slope[row++], angle));
                }
            }
        }
    }

    /** The field of a section that is cut from a circle of this diameter. */
    public static StressField of(Outline outline, Length outer) {
        return new StressField(outline, outer);
    }

    /** Place, way along the outline, ∂ψ/∂x and ∂ψ/∂y of a node, turned about the axis. */
    private static double[] node(Panel panel, int i, double q, double angle) {
        double tx = -panel.ny[i];
        double ty = panel.nx[i];
        double along = panel.x[i] * tx + panel.y[i] * ty;
        double[] place = turned(panel.x[i], panel.y[i], angle);
        double[] way = turned(tx * panel.ds[i], ty * panel.ds[i], angle);
        double[] rise = turned(q * panel.nx[i] + along * tx, q * panel.ny[i] + along * ty, angle);
        return new double[] {place[0], place[1], way[0], way[1], rise[0], rise[1]};
    }

    private static double[] turned(double x, double y, double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new double[] {c * x - s * y, s * x + c * y};
    }

    /**
     * Stress at a place of the section as {@link Section#stress} counts it, τ/(G·θ·R). Outside: that of the nearest
     * place of the outline.
     */
    public double at(Place place) {
        double x = place.x().mm() * scale;
        double y = place.y().mm() * scale;
        if (!holds(place)) {
            return onOutline(x, y);
        }
        double[] sums = new double[4];
        for (double[] node : nodes) {
            double rx = node[0] - x;
            double ry = node[1] - y;
            double squared = rx * rx + ry * ry;
            if (squared < 1e-24) {
                return Math.hypot(node[4] - x, node[5] - y) / radius;
            }
            // way/(node - place), complex; then times ∂ψ/∂x − i ∂ψ/∂y
            double kx = (node[2] * rx + node[3] * ry) / squared;
            double ky = (node[3] * rx - node[2] * ry) / squared;
            sums[0] += kx * node[4] + ky * node[5];
            sums[1] += ky * node[4] - kx * node[5];
            sums[2] += kx;
            sums[3] += ky;
        }
        double below = sums[2] * sums[2] + sums[3] * sums[3];
        double fx = (sums[0] * sums[2] + sums[1] * sums[3]) / below;
        double fy = (sums[1] * sums[2] - sums[0] * sums[3]) / below;
        return Math.hypot(fx - x, -fy - y) / radius;
    }

    /** The stress at the nearest place of the nodes' polygon, between two nodes in proportion. */
    private double onOutline(double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        double stress = 0;
        double[] from = nodes.get(nodes.size() - 1);
        for (double[] to : nodes) {
            double wayX = to[0] - from[0];
            double wayY = to[1] - from[1];
            double share = ((x - from[0]) * wayX + (y - from[1]) * wayY) / (wayX * wayX + wayY * wayY);
            double t = Math.max(0, Math.min(1, share));
            double away = Math.hypot(from[0] + t * wayX - x, from[1] + t * wayY - y);
            if (away < least) {
                least = away;
                stress = (1 - t) * Math.hypot(from[4] - from[0], from[5] - from[1])
                        + t * Math.hypot(to[4] - to[0], to[5] - to[1]);
            }
            from = to;
        }
        return stress / radius;
    }

    /** Whether a place lies in the metal: crossings of the outline on the way out, counted along the nodes' polygon. */
    public boolean holds(Place place) {
        double x = place.x().mm() * scale;
        double y = place.y().mm() * scale;
        boolean inside = false;
        double[] before = nodes.get(nodes.size() - 1);
        for (double[] node : nodes) {
            boolean crosses = (node[1] > y) != (before[1] > y);
            if (crosses && x < before[0] + (y - before[1]) / (node[1] - before[1]) * (node[0] - before[0])) {
                inside = !inside;
            }
            before = node;
        }
        return inside;
    }

    /** The whole outline as a polygon, counterclockwise, corners of the section among its corners. */
    public List<Place> polygon() {
        List<Place> corners = new ArrayList<>();
        for (int turn = 0; turn < outline.repeats(); turn++) {
            double angle = 2 * Math.PI * turn / outline.repeats();
            for (Edge edge : outline.edges()) {
                int parts = 1 + (int) Math.ceil(Math.toDegrees(edge.turn()) / 3);
                for (int i = 0; i < parts; i++) {
                    double[] at = turned(edge.x((double) i / parts), edge.y((double) i / parts), angle);
                    corners.add(Place.ofMm(at[0], at[1]));
                }
            }
        }
        return corners;
    }
}
