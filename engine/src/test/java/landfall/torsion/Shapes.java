// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

import java.util.List;
import landfall.quantity.Angle;

/** Sections with known solutions, and tap-like ones, in mm. */
final class Shapes {
    private Shapes() {}

    static Outline circle(double radius) {
        return new Outline(
                List.of(new Edge.Arc(0, 0, radius, 0, Math.PI), new Edge.Arc(0, 0, radius, Math.PI, Math.PI)), 1);
    }

    /** Half-axes a and b; a quarter at a time would do, but the whole is drawn, so that nothing rests on repeats. */
    static Outline ellipse(double a, double b) {
        return new Outline(List.of(new Ellipse(a, b)), 1);
    }

    static Outline rectangle(double width, double height) {
        double x = width / 2;
        double y = height / 2;
        return Outline.from(Place.ofMm(-x, -y))
                .lineTo(Place.ofMm(x, -y))
                .lineTo(Place.ofMm(x, y))
                .lineTo(Place.ofMm(-x, y))
                .lineTo(Place.ofMm(-x, -y))
                .repeated(1);
    }

    /** One side, turned three times. */
    static Outline triangle(double side) {
        double r = side / Math.sqrt(3);
        return Outline.from(polar(r, -150)).lineTo(polar(r, -30)).repeated(3);
    }

    /** A circle of radius 1 with a round groove whose centre lies on the rim. */
    static Outline keyway(double groove) {
        double half = 2 * Math.asin(groove / 2);
        double rim = Math.toDegrees(half);
        double into = Math.toDegrees(Math.atan2(Math.sin(half), Math.cos(half) - 1));
        return Outline.from(polar(1, rim))
                .arc(Place.ofMm(0, 0), Angle.ofDeg(360 - 2 * rim))
                .arc(Place.ofMm(1, 0), Angle.ofDeg(-(360 - 2 * into)))
                .repeated(1);
    }

    /** Outer radius 1, round flutes of radius rho whose floors touch the core circle. */
    static Outline fluted(int flutes, double core, double rho) {
        double centre = core + rho;
        double gap = Math.acos((1 + centre * centre - rho * rho) / (2 * centre));
        double open = Math.PI - Math.acos((rho * rho + centre * centre - 1) / (2 * rho * centre));
        double division = 360.0 / flutes;
        double rim = Math.toDegrees(gap);
        return Outline.from(polar(1, rim))
                .arc(Place.ofMm(0, 0), Angle.ofDeg(division - 2 * rim))
                .arc(
                        Place.polar(landfall.quantity.Length.ofMm(centre), Angle.ofDeg(division)),
                        Angle.ofDeg(-(360 - 2 * Math.toDegrees(open))))
                .repeated(flutes);
    }

    private static Place polar(double radius, double deg) {
        return Place.polar(landfall.quantity.Length.ofMm(radius), Angle.ofDeg(deg));
    }

    private record Ellipse(double a, double b) implements Edge {
        @Override
        public double x(double t) {
            return a * Math.cos(2 * Math.PI * t);
        }

        @Override
        public double y(double t) {
            return b * Math.sin(2 * Math.PI * t);
        }

        @Override
        public double dx(double t) {
            return -2 * Math.PI * a * Math.sin(2 * Math.PI * t);
        }

        @Override
        public double dy(double t) {
            return 2 * Math.PI * b * Math.cos(2 * Math.PI * t);
        }

        @Override
        public double turn() {
            return 2 * Math.PI;
        }
    }
}
