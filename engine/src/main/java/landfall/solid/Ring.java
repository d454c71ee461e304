// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

/**
 * One way round the tap, column by column: the lands with their places from edge to heel, the flutes between them.
 *
 * <p>A row of the thread or a plane square to the axis gives each place its height. Edge and heel are where the land's
 * surface meets the outline of the flute.
 */
final class Ring {
    private static final int ROUNDS = 60;
    private static final double ALIKE = 1e-12;

    /** The height of a place at a land angle on land i. */
    interface Heights {
        double at(int land, double theta);
    }

    /** A place: height, radius, land angle. */
    record Spot(double z, double radius, double theta) {}

    private final TapSurface surface;
    private final FluteCurve flute;
    private final Steps steps;

    /**
     * Columns from one edge to the next.
     *
     * @param land from edge to heel
     * @param wall of the flute, as far as the thread is deep: behind a heel, and before an edge
     * @param floor of the flute, between its walls
     */
    record Steps(int land, int wall, int floor) {
        int all() {
            return land + 2 * wall + floor;
        }
    }

    Ring(TapSurface surface, FluteCurve flute, Steps steps) {
        this.surface = surface;
        this.flute = flute;
        this.steps = steps;
    }

    /** Columns from one edge to the next. */
    int perLand() {
        return steps.all();
    }

    int columns() {
        return surface.lands * perLand();
    }

    int landSteps() {
        return steps.land;
    }

    /** x, y, z of every column, one after another. */
    double[] places(Heights heights) {
        double[] xyz = new double[3 * columns()];
        Spot edge = edge(heights, 0);
        for (int land = 0; land < surface.lands; land++) {
            Spot next = edge(heights, land + 1);
            Spot heel = heel(heights, land);
            int column = land * perLand();
            for (int j = 0; j <= steps.land; j++) {
                double theta = edge.theta + (heel.theta - edge.theta) * j / steps.land;
                put(xyz, column + j, onLand(heights, land, j == 0 ? edge.theta : theta), land);
            }
            flute(xyz, column + steps.land, land, heel, next);
            edge = next;
        }
        return xyz;
    }

    /** From the heel down its wall, over the floor, up the face to the next edge; heights go evenly along. */
    private void flute(double[] xyz, int column, int land, Spot heel, Spot next) {
        double[] along = {
            flute.heel(heel.radius), under(heel, land, false), under(next, land + 1, true), flute.face(next.radius)
        };
        int[] parts = {steps.wall, steps.floor, steps.wall};
        int g = 0;
        for (int part = 0; part < parts.length; part++) {
            for (int k = 0; k < parts[part]; k++) {
                if (g > 0) {
                    double s = along[part] + (along[part + 1] - along[part]) * k / parts[part];
                    double share = (s - along[0]) / (along[3] - along[0]);
                    double z = heel.z + (next.z - heel.z) * share;
                    put(xyz, column + g, flute.at(s), (land + 1) * surface.division + surface.twist * z, z);
                }
                g++;
            }
        }
    }

    /** Where the flute's outline is as far from the axis as the land under its thread. */
    private double under(Spot spot, int land, boolean face) {
        double inside = Math.min(surface.length, Math.max(0, spot.z));
        double radius = Math.min(spot.radius, surface.under(land % surface.lands, spot.theta, inside));
        return face ? flute.face(radius) : flute.heel(radius);
    }

    private static void put(double[] xyz, int column, double[] at, double turn, double z) {
        double cosine = Math.cos(turn);
        double sine = Math.sin(turn);
        int k = 3 * column;
        xyz[k] = at[0] * cosine - at[1] * sine;
        xyz[k + 1] = at[0] * sine + at[1] * cosine;
        xyz[k + 2] = z;
    }

    private void put(double[] xyz, int column, Spot spot, int land) {
        double round = surface.round(land, spot.theta, spot.z);
        xyz[3 * column] = spot.radius * Math.cos(round);
        xyz[3 * column + 1] = spot.radius * Math.sin(round);
        xyz[3 * column + 2] = spot.z;
    }

    private Spot onLand(Heights heights, int land, double theta) {
        double z = heights.at(land, theta);
        // what lies beyond the ends is laid on their planes later; its radius is not asked for
        double inside = Math.min(surface.length, Math.max(0, z));
        return new Spot(z, surface.radius(land % surface.lands, theta, inside), theta);
    }

    /** Where the face meets the land's surface. */
    private Spot edge(Heights heights, int land) {
        Spot spot = onLand(heights, land, 0);
        for (int i = 0; i < ROUNDS; i++) {
            Spot next = onLand(heights, land, azimuth(flute.face(spot.radius)));
            boolean found = Math.abs(next.theta - spot.theta) < ALIKE;
            spot = next;
            if (found) {
                break;
            }
        }
        return spot;
    }

    private Spot heel(Heights heights, int land) {
        Spot spot = onLand(heights, land, surface.landAngle);
        for (int i = 0; i < ROUNDS; i++) {
            double theta = surface.division + azimuth(flute.heel(spot.radius));
            Spot next = onLand(heights, land, theta);
            boolean found = Math.abs(next.theta - spot.theta) < ALIKE;
            spot = next;
            if (found) {
                break;
            }
        }
        return spot;
    }

    private double azimuth(double s) {
        double[] at = flute.at(s);
        return Math.atan2(at[1], at[0]);
    }
}
