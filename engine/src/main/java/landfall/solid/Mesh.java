// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import java.util.HashMap;
import java.util.Map;
import landfall.quantity.Area;
import landfall.quantity.Length;
import landfall.quantity.Volume;

/** A closed surface of triangles, each counterclockwise seen from outside. */
public final class Mesh {
    private final double[] xyz;
    private final int[] corners;

    /**
     * @param xyz places, mm, three numbers each
     * @param corners of the triangles, three numbers of places each
     */
    Mesh(double[] xyz, int[] corners) {
        this.xyz = xyz;
        this.corners = corners;
    }

    /** A place on the surface. */
    public record Spot(Length x, Length y, Length z) {}

    /** A triangle by the numbers of its places. */
    public record Triangle(int a, int b, int c) {}

    public int places() {
        return xyz.length / 3;
    }

    public int triangles() {
        return corners.length / 3;
    }

    public Spot place(int i) {
        return new Spot(Length.ofMm(xyz[3 * i]), Length.ofMm(xyz[3 * i + 1]), Length.ofMm(xyz[3 * i + 2]));
    }

    public Triangle triangle(int i) {
        return new Triangle(corners[3 * i], corners[3 * i + 1], corners[3 * i + 2]);
    }

    double[] xyz() {
        return xyz;
    }

    int[] corners() {
        return corners;
    }

    /** By the theorem of divergence: a sixth of the sum of a·(b × c). */
    public Volume volume() {
        double six = 0;
        for (int t = 0; t < corners.length; t += 3) {
            int a = 3 * corners[t];
            int b = 3 * corners[t + 1];
            int c = 3 * corners[t + 2];
            six += xyz[a] * (xyz[b + 1] * xyz[c + 2] - xyz[b + 2] * xyz[c + 1])
                    + xyz[a + 1] * (xyz[b + 2] * xyz[c] - xyz[b] * xyz[c + 2])
                    + xyz[a + 2] * (xyz[b] * xyz[c + 1] - xyz[b + 1] * xyz[c]);
        }
        return Volume.ofMm3(six / 6);
    }

    /** Area of the section square to the axis at a height that no place lies on. */
    public Area section(Length height) {
        double z = height.mm();
        double twice = 0;
        for (int t = 0; t < corners.length; t += 3) {
            twice += crossed(corners[t], corners[t + 1], corners[t + 2], z);
        }
        return Area.ofMm2(twice / 2);
    }

    /** Twice the signed area between the axis and the line in which a triangle crosses the plane. */
    private double crossed(int a, int b, int c, double z) {
        boolean above = xyz[3 * a + 2] > z;
        if (above == xyz[3 * b + 2] > z && above == xyz[3 * c + 2] > z) {
            return 0;
        }
        if (above == xyz[3 * b + 2] > z) {
            return crossed(c, a, b, z);
        }
        if (above == xyz[3 * c + 2] > z) {
            return crossed(b, c, a, z);
        }
        double[] p = between(a, b, z);
        double[] q = between(a, c, z);
        double area = p[0] * q[1] - p[1] * q[0];
        return above ? area : -area;
    }

    private double[] between(int a, int b, double z) {
        double part = (z - xyz[3 * a + 2]) / (xyz[3 * b + 2] - xyz[3 * a + 2]);
        return new double[] {
            xyz[3 * a] + part * (xyz[3 * b] - xyz[3 * a]), xyz[3 * a + 1] + part * (xyz[3 * b + 1] - xyz[3 * a + 1])
        };
    }

    /** Edges that do not have exactly one triangle on either side; 0 when the surface is watertight. */
    public int openEdges() {
        Map<Long, Integer> seen = new HashMap<>();
        for (int t = 0; t < corners.length; t += 3) {
            for (int k = 0; k < 3; k++) {
                long from = corners[t + k];
                long to = corners[t + (k + 1) % 3];
                seen.merge(from << 32 | to, 1, Integer::sum);
            }
        }
        int open = 0;
        for (Map.Entry<Long, Integer> edge : seen.entrySet()) {
            long from = edge.getKey() >> 32;
            long to = edge.getKey() & 0xffffffffL;
            if (edge.getValue() != 1 || seen.getOrDefault(to << 32 | from, 0) != 1) {
                open++;
            }
        }
        return open;
    }

    /** The mirror image that a left-hand tap is. */
    public Mesh mirrored() {
        double[] places = xyz.clone();
        for (int i = 1; i < places.length; i += 3) {
            places[i] = -places[i];
        }
        int[] turned = corners.clone();
        for (int t = 0; t < turned.length; t += 3) {
            turned[t] = corners[t + 1];
            turned[t + 1] = corners[t];
        }
        return new Mesh(places, turned);
    }
}
