// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

/**
 * Chips of unequal teeth.
 *
 * <p>Tooth i cuts after tooth i - 1 on one meridian, i growing backwards over the lands; each stands e_i proud,
 * radially. In its turn it comes to {@code i h0 + e_i}, and cuts what stands above all that came before: {@code h_i =
 * max(0, e_i - max(e_(i-1) - h0, e_(i-2) - 2 h0, .., e_i - N h0))}. The sum over a turn is N h0, whatever the teeth do.
 * h0 = lead/N tan kap.
 */
final class Chips {
    private Chips() {}

    /** Radial chips of the teeth, in the unit of h0 and e. */
    static double[] of(double h0, double[] e) {
        double[] h = new double[e.length];
        for (int i = 0; i < e.length; i++) {
            int before = before(h0, e, i);
            h[i] = Math.max(0, e[i] - level(h0, e, i, before));
        }
        return h;
    }

    /** How many teeth earlier the one passed that left the surface that tooth i meets. */
    static int before(double h0, double[] e, int i) {
        int best = 1;
        for (int back = 2; back <= e.length; back++) {
            if (level(h0, e, i, back) > level(h0, e, i, best)) {
                best = back;
            }
        }
        return best;
    }

    private static double level(double h0, double[] e, int i, int back) {
        return e[Math.floorMod(i - back, e.length)] - back * h0;
    }
}
