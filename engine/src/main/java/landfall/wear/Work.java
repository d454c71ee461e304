// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
    static Work of(List<Brief> runs, Prior prior) {
        long holes = 0;
        double length = 0;
        Map<String, Double> weights = new HashMap<>();
        for (Brief run : runs) {
            for (Map.Entry<String, Tally.Share> share :
                    run.course().whole().byMaterial().entrySet()) {
                holes += share.getValue().told();
                length += share.getValue().depth().mm();
                if (!share.getKey().isEmpty()) {
                    weights.computeIfAbsent(share.getKey(), prior::weight);
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

    /** Diameters that so many holes are worth. */
    double diameters(Tally holes) {
        double sum = 0;
        for (Map.Entry<String, Tally.Share> share : holes.byMaterial().entrySet()) {
            Tally.Share of = share.getValue();
            double deep = of.depth().over(prior.subject().major());
            sum += ((of.holes() - of.told()) * perHole() + deep) * weight(share.getKey());
        }
        return sum;
    }

    double perHole(@Nullable Length depth) {
        return depth == null ? perHole() : depth.over(prior.subject().major());
    }

    private double weight(String material) {
        Double known = material.isEmpty() ? Double.valueOf(1) : weights.get(material);
        return known == null ? prior.weight(material) : known;
    }
}
