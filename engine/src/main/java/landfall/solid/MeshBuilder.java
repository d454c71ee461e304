// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rows of the thread sewn to a closed surface. Rows below the point or beyond the thread's end lie on those planes, one
 * place for each column, so that what they would enclose is nothing.
 */
final class MeshBuilder {
    private static final int POINT = 0;
    private static final double ON_PLANE = 1e-9;

    private final TapSurface surface;
    private final Ring ring;
    private final Rows rows;
    private final List<int[]> triangles = new ArrayList<>();
    private double[] xyz = new double[1 << 16];
    private int places;

    MeshBuilder(TapSurface surface, Ring ring, Rows rows) {
        this.surface = surface;
        this.ring = ring;
        this.rows = rows;
    }

    /** A shank behind the thread, its flutes running out over a length; mm. */
    record Shank(double radius, double runOut, double overall) {}

    Mesh build(@Nullable Shank shank) {
        int[] point = plane(0);
        int[] end = plane(surface.length);
        int[][] ids = rows(point, end);
        sew(ids, end);
        close(point, true);
        if (shank == null) {
            close(end, false);
        } else {
            shank(end, shank);
        }
        int[] corners = new int[3 * triangles.size()];
        for (int t = 0; t < triangles.size(); t++) {
            System.arraycopy(triangles.get(t), 0, corners, 3 * t, 3);
        }
        return new Mesh(Arrays.copyOf(xyz, 3 * places), corners);
    }

    private int[] plane(double z) {
        double[] at = ring.places((land, theta) -> z);
        int[] ids = new int[ring.columns()];
        for (int column = 0; column < ids.length; column++) {
            ids[column] =
                    column > 0 && alike(at, column) ? ids[column - 1] : add(at[3 * column], at[3 * column + 1], z);
        }
        return ids;
    }

    private int[][] rows(int[] point, int[] end) {
        int[][] ids = new int[rows.count()][];
        for (int row = 0; row < ids.length; row++) {
            int number = row;
            double[] at = ring.places((land, theta) -> rows.height(number, land, theta));
            ids[row] = new int[ring.columns()];
            for (int column = 0; column < ids[row].length; column++) {
                double z = at[3 * column + 2];
                if (z < ON_PLANE) {
                    ids[row][column] = point[column];
                } else if (z > surface.length - ON_PLANE) {
                    ids[row][column] = end[column];
                } else if (column > 0 && alike(at, column)) {
                    ids[row][column] = ids[row][column - 1];
                } else {
                    ids[row][column] = add(at[3 * column], at[3 * column + 1], z);
                }
            }
        }
        return ids;
    }

    /** Whether a column falls on the one before it, as a wall of the flute does where the thread has no depth. */
    private static boolean alike(double[] at, int column) {
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            sum += Math.abs(at[3 * column + k] - at[3 * column - 3 + k]);
        }
        return sum < ON_PLANE;
    }

    private void sew(int[][] ids, int[] end) {
        int columns = ring.columns();
        for (int row = 0; row + 1 < ids.length; row++) {
            for (int column = 0; column < columns; column++) {
                boolean last = column == columns - 1;
                int next = last ? 0 : column + 1;
                int b = last ? id(ids, row + rows.perTurn(), next, end) : ids[row][next];
                int c = last ? id(ids, row + 1 + rows.perTurn(), next, end) : ids[row + 1][next];
                quad(ids[row][column], b, c, ids[row + 1][column]);
            }
        }
        // the first turn of land 1 has nothing to its left but the point's plane
        for (int row = 0; row < rows.perTurn(); row++) {
            if (ids[row][0] != ids[POINT][0]) {
                throw new IllegalStateException("row " + row + " of the first turn lies over the point");
            }
        }
    }

    private static int id(int[][] ids, int row, int column, int[] end) {
        return row < ids.length ? ids[row][column] : end[column];
    }

    /** Two triangles, split along the shorter diagonal; one or none where corners fall together. */
    private void quad(int a, int b, int c, int d) {
        if (square(a, c) <= square(b, d)) {
            triangle(a, b, c);
            triangle(a, c, d);
        } else {
            triangle(a, b, d);
            triangle(b, c, d);
        }
    }

    private void triangle(int a, int b, int c) {
        if (a != b && b != c && c != a) {
            triangles.add(new int[] {a, b, c});
        }
    }

    private double square(int a, int b) {
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            double off = xyz[3 * a + k] - xyz[3 * b + k];
            sum += off * off;
        }
        return sum;
    }

    private void close(int[] ids, boolean down) {
        List<Integer> polygon = new ArrayList<>();
        for (int column = 0; column < ids.length; column++) {
            if (ids[column] != ids[(column + 1) % ids.length]) {
                polygon.add(ids[column]);
            }
        }
        for (int[] ear : EarClipping.of(xyz, polygon)) {
            triangles.add(down ? new int[] {ear[2], ear[1], ear[0]} : ear);
        }
    }

    private void shank(int[] end, Shank shank) {
        int[] begin = circle(end, shank.radius, surface.length + shank.runOut);
        int[] tail = circle(end, shank.radius, shank.overall);
        int centre = add(0, 0, shank.overall);
        for (int column = 0; column < end.length; column++) {
            int next = (column + 1) % end.length;
            quad(end[column], end[next], begin[next], begin[column]);
            quad(begin[column], begin[next], tail[next], tail[column]);
            triangles.add(new int[] {tail[column], tail[next], centre});
        }
    }

    /** Places on a circle, each at about the azimuth of its column; the flutes' columns evenly between the lands. */
    private int[] circle(int[] end, double radius, double z) {
        int[] ids = new int[end.length];
        int per = ring.perLand();
        for (int land = 0; land < surface.lands; land++) {
            double edge = azimuth(end[land * per]);
            double heel = forward(edge, azimuth(end[land * per + ring.landSteps()]));
            double next = forward(edge, azimuth(end[(land + 1) * per % end.length]));
            for (int k = 0; k < per; k++) {
                double part = (double) (k - ring.landSteps()) / (per - ring.landSteps());
                double turn = k <= ring.landSteps()
                        ? edge + (heel - edge) * k / ring.landSteps()
                        : heel + (next - heel) * part;
                ids[land * per + k] = add(radius * Math.cos(turn), radius * Math.sin(turn), z);
            }
        }
        return ids;
    }

    private double azimuth(int id) {
        return Math.atan2(xyz[3 * id + 1], xyz[3 * id]);
    }

    private static double forward(double from, double angle) {
        double turned = (angle - from) % (2 * Math.PI);
        return from + (turned <= 0 ? turned + 2 * Math.PI : turned);
    }

    private int add(double x, double y, double z) {
        if (3 * places + 3 > xyz.length) {
            xyz = Arrays.copyOf(xyz, 2 * xyz.length);
        }
        xyz[3 * places] = x;
        xyz[3 * places + 1] = y;
        xyz[3 * places + 2] = z;
        return places++;
    }
}
