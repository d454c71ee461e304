// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import java.util.ArrayList;
import java.util.List;

/** A plane polygon cut into triangles, ear by ear. */
final class EarClipping {
    private final double[] xyz;

    private EarClipping(double[] xyz) {
        this.xyz = xyz;
    }

    /**
     * Triangles of a simple polygon, counterclockwise seen against z.
     *
     * @param polygon numbers of places, counterclockwise
     */
    static List<int[]> of(double[] xyz, List<Integer> polygon) {
        return new EarClipping(xyz).cut(new ArrayList<>(polygon));
    }

    private List<int[]> cut(List<Integer> left) {
        List<int[]> triangles = new ArrayList<>();
        int i = 0;
        int misses = 0;
        while (left.size() > 3) {
            int n = left.size();
            int a = left.get((i + n - 1) % n);
            int b = left.get(i % n);
            int c = left.get((i + 1) % n);
            // with rounding no ear may be left; the flattest corner then goes, which costs no area worth naming
            if (misses > n || isEar(left, a, b, c)) {
                triangles.add(new int[] {a, b, c});
                left.remove(i % n);
                misses = 0;
            } else {
                misses++;
            }
            i = (i + 1) % left.size();
        }
        triangles.add(new int[] {left.get(0), left.get(1), left.get(2)});
        return triangles;
    }

    private boolean isEar(List<Integer> left, int a, int b, int c) {
        if (twice(a, b, c) <= 0) {
            return false;
        }
        for (int p : left) {
            if (p != a && p != b && p != c && twice(a, b, p) >= 0 && twice(b, c, p) >= 0 && twice(c, a, p) >= 0) {
                return false;
            }
        }
        return true;
    }

    private double twice(int a, int b, int c) {
        double ux = xyz[3 * b] - xyz[3 * a];
        double uy = xyz[3 * b + 1] - xyz[3 * a + 1];
        double vx = xyz[3 * c] - xyz[3 * a];
        double vy = xyz[3 * c + 1] - xyz[3 * a + 1];
        return ux * vy - uy * vx;
    }
}
