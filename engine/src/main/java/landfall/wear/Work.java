// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import landfall.history.Happening;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Holes as length of thread in diameters, in the subject's material: holes in another count by what practice says that
 * it wears.
 *
 * @param usual depth of thread: of most of the records, else one and a half diameters
 * @param told whether any record told a depth
 */
record Work(Prior prior, Length usual, boolean told, Map<String, Double> weights) {
    static Work of(List<Run> runs, Prior prior) {
        double holes = 0;
        double length = 0;
        Map<String, Double> weights = new HashMap<>();
        for (Run run : runs) {
            for (Happening.Tapped cut : run.cuts()) {
                Length depth = cut.work().depth();
                if (depth != null) {
                    holes += cut.holes().count();
                    length += cut.holes().count() * depth.mm();
                }
                String material = cut.work().material();
                if (material != null) {
                    weights.computeIfAbsent(material, prior::weight);
                }
            }
        }
        boolean told = holes > 0;
        Length usual =
                told ? Length.ofMm(length / holes) : prior.subject().major().times(Prior.USUAL_DEPTH);
        return new Work(prior, usual, told, weights);
    }

    /** Diameters of thread in one hole of the usual depth. */
    double perHole() {
        return usual.over(prior.subject().major());
    }

    /** Diameters that the first cuts of a run are worth. */
    double diameters(Run run, int cuts) {
        double sum = 0;
        for (Happening.Tapped cut : run.cuts().subList(0, cuts)) {
            sum += cut.holes().count()
                    * perHole(cut.work().depth())
                    * weight(cut.work().material());
        }
        return sum;
    }

    double perHole(@Nullable Length depth) {
        return depth == null ? perHole() : depth.over(prior.subject().major());
    }

    private double weight(@Nullable String material) {
        Double known = material == null ? Double.valueOf(1) : weights.get(material);
        return known == null ? prior.weight(material) : known;
    }
}
