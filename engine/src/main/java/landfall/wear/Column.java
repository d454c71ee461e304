// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.ArrayList;
import java.util.List;

/**
 * One scatter of the posterior: its weight, and the life of another run given it, as the normal distribution with the
 * same mean and variance (exact where every life is known).
 *
 * @param mean of ln life
 * @param sd of ln life of one run: scatter and doubt of the middle together
 */
record Column(double weight, double mean, double sd) {
    private static final double NEGLIGIBLE = 1e-9;

    static List<Column> of(double[] middles, double[] lnScatters, double[][] ln) {
        double top = Moments.top(ln);
        List<Column> raw = new ArrayList<>();
        double all = 0;
        for (int j = 0; j < lnScatters.length; j++) {
            double[][] row = {ln[j]};
            double weight = 0;
            for (double one : ln[j]) {
                weight += Math.exp(one - top);
            }
            if (weight > NEGLIGIBLE) {
                Moments middle = Moments.of(middles, row, true);
                raw.add(new Column(weight, middle.mean(), Math.hypot(Math.exp(lnScatters[j]), middle.sd())));
                all += weight;
            }
        }
        double sum = all;
        return raw.stream()
                .map(column -> new Column(column.weight / sum, column.mean, column.sd))
                .toList();
    }
}
