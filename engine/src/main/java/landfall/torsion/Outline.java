// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Area;

/** The outline of a section: lines and arcs, counterclockwise round the axis, one of its repeats. */
public final class Outline {
    private final List<Edge> edges;
    private final int repeats;

    /** Edges of one repeat; turned by 360/repeats they go on where they ended. */
    Outline(List<Edge> edges, int repeats) {
        this.edges = List.copyOf(edges);
        this.repeats = repeats;
        double turn = 2 * Math.PI / repeats;
        for (int i = 0; i < edges.size(); i++) {
            boolean last = i + 1 == edges.size();
            Edge here = edges.get(i);
            Edge next = edges.get(last ? 0 : i + 1);
            double cos = last ? Math.cos(turn) : 1;
            double sin = last ? Math.sin(turn) : 0;
            double gap = Math.hypot(
                    here.x(1) - (cos * next.x(0) - sin * next.y(0)), here.y(1) - (sin * next.x(0) + cos * next.y(0)));
            if (gap > 1e-9 * greatestRadius()) {
                throw new OutOfRange("outline", gap + " mm open", "closed", "let each edge begin where the last ended");
            }
        }
        if (area().mm2() <= 0) {
            throw new OutOfRange("outline", "clockwise", "counterclockwise", "run round it with the metal on the left");
        }
    }

    public static Path from(Place start) {
        return new Path(start);
    }

    List<Edge> edges() {
        return edges;
    }

    int repeats() {
        return repeats;
    }

    double greatestRadius() {
        double most = 0;
        for (Edge edge : edges) {
            for (int i = 0; i <= 16; i++) {
                most = Math.max(most, Math.hypot(edge.x(i / 16.0), edge.y(i / 16.0)));
            }
        }
        return most;
    }

    /** Area of the whole section. */
    public Area area() {
        double twice = 0;
        for (Edge edge : edges) {
            for (int i = 0; i < GaussRule.FINE.count(); i++) {
                double t = (1 + GaussRule.FINE.node(i)) / 2;
                twice += GaussRule.FINE.weight(i) / 2 * (edge.x(t) * edge.dy(t) - edge.y(t) * edge.dx(t));
            }
        }
        return Area.ofMm2(repeats * twice / 2);
    }

    /** Turn of the outline where an edge ends and the next begins, radians; positive at an outer corner. */
    double cornerAfter(int edge) {
        boolean last = edge + 1 == edges.size();
        Edge here = edges.get(edge);
        Edge next = edges.get(last ? 0 : edge + 1);
        double turn = last ? 2 * Math.PI / repeats : 0;
        double into = Math.atan2(here.dy(1), here.dx(1));
        double out = Math.atan2(next.dy(0), next.dx(0)) + turn;
        return Math.IEEEremainder(out - into, 2 * Math.PI);
    }

    /** An outline being drawn. */
    public static final class Path {
        private final List<Edge> edges = new ArrayList<>();
        private Place at;

        private Path(Place start) {
            this.at = start;
        }

        public Path lineTo(Place end) {
            edges.add(new Edge.Line(
                    at.x().mm(), at.y().mm(), end.x().mm(), end.y().mm()));
            at = end;
            return this;
        }

        /** An arc about a centre; a positive sweep runs counterclockwise. */
        public Path arc(Place centre, Angle sweep) {
            double cx = centre.x().mm();
            double cy = centre.y().mm();
            double from = Math.atan2(at.y().mm() - cy, at.x().mm() - cx);
            double radius = Math.hypot(at.x().mm() - cx, at.y().mm() - cy);
            Edge.Arc arc = new Edge.Arc(cx, cy, radius, from, sweep.rad());
            edges.add(arc);
            at = Place.ofMm(arc.x(1), arc.y(1));
            return this;
        }

        /** The outline that comes round after so many repeats. */
        public Outline repeated(int times) {
            return new Outline(edges, times);
        }
    }
}
