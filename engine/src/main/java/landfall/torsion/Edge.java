// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

/** One smooth piece of an outline, run through by t from 0 to 1 with the metal on the left. In mm. */
interface Edge {
    double x(double t);

    double y(double t);

    /** Derivatives by t. */
    double dx(double t);

    double dy(double t);

    default double length() {
        double sum = 0;
        for (int i = 0; i < 32; i++) {
            double t = (i + 0.5) / 32;
            sum += Math.hypot(dx(t), dy(t)) / 32;
        }
        return sum;
    }

    /** How far the edge turns, in radians; sets how many panels it needs. */
    double turn();

    record Line(double x0, double y0, double x1, double y1) implements Edge {
        @Override
        public double x(double t) {
            return x0 + t * (x1 - x0);
        }

        @Override
        public double y(double t) {
            return y0 + t * (y1 - y0);
        }

        @Override
        public double dx(double t) {
            return x1 - x0;
        }

        @Override
        public double dy(double t) {
            return y1 - y0;
        }

        @Override
        public double turn() {
            return 0;
        }
    }

    /**
     * An arc.
     *
     * @param from angle of its start about its centre, radians
     * @param sweep positive counterclockwise
     */
    record Arc(double cx, double cy, double radius, double from, double sweep) implements Edge {
        @Override
        public double x(double t) {
            return cx + radius * Math.cos(from + t * sweep);
        }

        @Override
        public double y(double t) {
            return cy + radius * Math.sin(from + t * sweep);
        }

        @Override
        public double dx(double t) {
            return -radius * sweep * Math.sin(from + t * sweep);
        }

        @Override
        public double dy(double t) {
            return radius * sweep * Math.cos(from + t * sweep);
        }

        @Override
        public double turn() {
            return Math.abs(sweep);
        }
    }
}
