// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of an edge with its Gauss points. Lengths are scaled, so that the greatest radius of the section is
 * {@link #SCALED_RADIUS}: at a logarithmic capacity of 1 the integral equation would have no unique solution, and a
 * section of this size is well under it.
 */
final class Panel {
    static final double SCALED_RADIUS = 0.4;

    private final Edge edge;
    private final double from;
    private final double to;
    private final double scale;
    final double[] x;
    final double[] y;
    /** Outward normal. */
    final double[] nx;

    final double[] ny;
    /** Weight of a point along the outline: Gauss weight times speed. */
    final double[] ds;

    final double length;
    final double middleX;
    final double middleY;

    Panel(Edge edge, double from, double to, double scale, GaussRule rule) {
        this.edge = edge;
        this.from = from;
        this.to = to;
        this.scale = scale;
        int n = rule.count();
        x = new double[n];
        y = new double[n];
        nx = new double[n];
        ny = new double[n];
        ds = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double[] point = at(rule.node(i));
            x[i] = point[0];
            y[i] = point[1];
            double speed = Math.hypot(point[2], point[3]);
            nx[i] = point[3] / speed;
            ny[i] = -point[2] / speed;
            ds[i] = rule.weight(i) * speed;
            sum += ds[i];
        }
        length = sum;
        double[] middle = at(0);
        middleX = middle[0];
        middleY = middle[1];
    }

    /** x, y and their derivatives by u at u from -1 to 1. */
    double[] at(double u) {
        double half = (to - from) / 2;
        double t = (from + to) / 2 + u * half;
        return new double[] {scale * edge.x(t), scale * edge.y(t), scale * half * edge.dx(t), scale * half * edge.dy(t)
        };
    }

    /** Cuts the edges of one repeat into panels, halving them towards corners. */
    static List<Panel> cut(Outline outline, Fineness fineness) {
        GaussRule rule = fineness.rule();
        double scale = SCALED_RADIUS / outline.greatestRadius();
        List<Panel> panels = new ArrayList<>();
        int edges = outline.edges().size();
        for (int e = 0; e < edges; e++) {
            Edge edge = outline.edges().get(e);
            double turn = outline.cornerAfter((e + edges - 1) % edges);
            boolean cornerAtStart = Math.abs(turn) > Section.SMOOTH;
            boolean cornerAtEnd = Math.abs(outline.cornerAfter(e)) > Section.SMOOTH;
            List<Double> ends = fineness.ends(edge, outline.greatestRadius(), cornerAtStart, cornerAtEnd);
            for (int i = 0; i + 1 < ends.size(); i++) {
                panels.add(new Panel(edge, ends.get(i), ends.get(i + 1), scale, rule));
            }
        }
        return panels;
    }
}
