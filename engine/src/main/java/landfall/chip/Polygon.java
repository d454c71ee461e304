// SPDX-License-Identifier: Apache-2.0
package landfall.chip;

import java.util.ArrayList;
import java.util.List;
import landfall.chip.Slice.Corner;
import landfall.quantity.Length;

/** A convex polygon in the axial plane, corners in order, all in mm. Kernel: clips by half-planes, exactly. */
final class Polygon {
    private final double[] z;
    private final double[] r;
    private final int corners;

    private Polygon(double[] z, double[] r, int corners) {
        this.z = z;
        this.r = r;
        this.corners = corners;
    }

    static Polygon of(double[] z, double[] r) {
        return new Polygon(z.clone(), r.clone(), z.length);
    }

    /** What lies at or below the line r = c + slope z (above it when {@code below} is false). */
    Polygon beside(double slope, double c, boolean below) {
        double sign = below ? 1 : -1;
        double[] newZ = new double[corners + 2];
        double[] newR = new double[corners + 2];
        int count = 0;
        for (int i = 0; i < corners; i++) {
            int j = i + 1 == corners ? 0 : i + 1;
            double here = sign * (r[i] - slope * z[i] - c);
            double next = sign * (r[j] - slope * z[j] - c);
            if (here <= 0) {
                newZ[count] = z[i];
                newR[count++] = r[i];
            }
            if (here < 0 && next > 0 || here > 0 && next < 0) {
                double share = here / (here - next);
                newZ[count] = z[i] + share * (z[j] - z[i]);
                newR[count++] = r[i] + share * (r[j] - r[i]);
            }
        }
        return new Polygon(newZ, newR, count);
    }

    List<Corner> outline() {
        List<Corner> outline = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            outline.add(new Corner(Length.ofMm(z[i]), Length.ofMm(r[i])));
        }
        return outline;
    }

    /** Enclosed area by the shoelace rule, positive whatever the sense of the corners. */
    double area() {
        double twice = 0;
        for (int i = 0; i < corners; i++) {
            int j = i + 1 == corners ? 0 : i + 1;
            twice += z[i] * r[j] - z[j] * r[i];
        }
        return Math.abs(twice) / 2;
    }

    /** Distance of the centroid from the axis; asked only of polygons with area. */
    double centroidRadius() {
        double twice = 0;
        double sixth = 0;
        // counted from the first corner, so that thin slices far from the axis keep their digits
        for (int i = 1; i + 1 < corners; i++) {
            double cross = (z[i] - z[0]) * (r[i + 1] - r[0]) - (z[i + 1] - z[0]) * (r[i] - r[0]);
            twice += cross;
            sixth += cross * (r[i] - r[0] + r[i + 1] - r[0]);
        }
        return r[0] + sixth / (3 * twice);
    }
}
