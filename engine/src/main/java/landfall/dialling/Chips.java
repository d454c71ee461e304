// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import landfall.quantity.Length;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * Chips of unequal teeth.
 *
 * <p>Tooth i cuts after tooth i - 1 on one meridian, i growing backwards over the lands; each stands e_i proud,
 * radially. In its turn it comes to {@code i h0 + e_i}, and cuts what stands above all that came before: {@code h_i =
 * max(0, e_i - max(e_(i-1) - h0, e_(i-2) - 2 h0, .., e_i - N h0))}. The sum over a turn is N h0, whatever the teeth do.
 * h0 = lead/N tan kap.
 */
public final class Chips {
    private static final Source SOURCE = Source.of("derived", "docs/methods/dialling.md, load share");

    private Chips() {}

    /** The chip of a tooth, by the symbols e_1, e_2, .. and h_0. */
    public static Rule rule(int land, int flutes) {
        List<String> levels = new ArrayList<>();
        for (int back = 1; back <= flutes; back++) {
            levels.add("e_%d - %d*h_0".formatted(Math.floorMod(land - 1 - back, flutes) + 1, back));
        }
        return new Rule(
                "h_" + land,
                "max(0, e_%d - max(%s))".formatted(land, String.join(", ", levels)),
                "mm",
                SOURCE,
                Trust.DERIVED,
                "radial chip of tooth %d".formatted(land));
    }

    /** Largest chip over the mean chip, by the symbols h_1, h_2, .. and h_0. */
    public static Rule worst(int flutes) {
        List<String> all = new ArrayList<>();
        for (int land = 1; land <= flutes; land++) {
            all.add("h_" + land);
        }
        return new Rule(
                "m_h",
                "max(%s)/h_0".formatted(String.join(", ", all)),
                "1",
                SOURCE,
                Trust.DERIVED,
                "largest chip over the mean chip");
    }

    /** Radial chips of teeth that stand proud by so much, for a mean chip h0. */
    public static List<Length> of(Length h0, List<Length> proud) {
        double[] e = proud.stream().mapToDouble(Length::mm).toArray();
        return Arrays.stream(of(h0.mm(), e)).mapToObj(Length::ofMm).toList();
    }

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
