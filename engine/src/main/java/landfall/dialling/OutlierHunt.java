// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.ArrayList;
import java.util.List;
import landfall.grind.CamProfile;
import org.jspecify.annotations.Nullable;

/**
 * Finds readings that the others do not bear out, worst first.
 *
 * <p>Externally studentised residuals against Student's t at 0.05/(2n) (Bonferroni), so that a sound set is suspected
 * once in twenty or less: n - p - 1 degrees of freedom here even where the dial's division decides, for to suspect a
 * sound reading is worse than to pass a small slip. A reading on which its own fitted figure hangs (leverage 1: the
 * only one on its land) has no residual and cannot be judged. At most one reading in five is taken out, one at a time.
 */
record OutlierHunt(List<Outlier> outliers, @Nullable Solution without) {

    static OutlierHunt of(Readings readings, CamProfile cam, Solution all) {
        List<Outlier> found = new ArrayList<>();
        Readings rest = readings;
        Solution now = all;
        Solution without = null;
        while (found.size() < Math.max(1, readings.list().size() / 5)) {
            Outlier worst = worst(rest, now);
            if (worst == null) {
                break;
            }
            Readings fewer = rest.without(worst.reading());
            Solution next = Fits.orNull(fewer, cam, all.model.terms);
            if (next == null) {
                break;
            }
            found.add(worst);
            rest = fewer;
            now = next;
            without = next;
        }
        return new OutlierHunt(List.copyOf(found), without);
    }

    /** The same readings as they were typed. */
    List<Outlier> asRead(Readings hunted, Readings typed) {
        return outliers.stream()
                .map(outlier -> new Outlier(
                        typed.list().get(hunted.list().indexOf(outlier.reading())),
                        outlier.studentised(),
                        outlier.limit()))
                .toList();
    }

    private static @Nullable Outlier worst(Readings readings, Solution solution) {
        Design design = solution.model.design;
        int spare = design.spare() - 1;
        if (spare < 2) {
            return null;
        }
        double probability = 1 - 0.05 / (2 * design.readings);
        Outlier worst = null;
        for (int i = 0; i < design.readings; i++) {
            double free = 1 - design.leverage(i);
            if (free < 1e-9) {
                continue;
            }
            double squares = solution.squares - solution.residuals[i] * solution.residuals[i] / free;
            Spread others =
                    Spread.of(Math.max(0, squares), spare, readings.resolution().mm());
            double distance = solution.residuals[i] / (others.sigma() * Math.sqrt(free));
            double limit = Spread.studentQuantile(probability, spare);
            boolean stands = Math.abs(distance) > limit;
            if (stands && (worst == null || Math.abs(distance) > Math.abs(worst.studentised()))) {
                worst = new Outlier(readings.list().get(i), distance, limit);
            }
        }
        return worst;
    }
}
