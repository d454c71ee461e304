// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Moves the heights of labels apart as little as will do, and keeps their order. */
public final class Stacked {
    private Stacked() {}

    /** Where the labels stand, in the order given: so far apart at least, none above the top, none under the foot. */
    public static List<Double> apart(List<Double> wanted, double gap, double top, double foot) {
        List<Integer> order = IntStream.range(0, wanted.size())
                .boxed()
                .sorted(Comparator.comparingDouble(wanted::get))
                .toList();
        double[] placed = new double[wanted.size()];
        double last = top - gap;
        for (int i : order) {
            last = Math.max(wanted.get(i), last + gap);
            placed[i] = last;
        }
        double limit = foot;
        for (int n = order.size() - 1; n >= 0; n--) {
            int i = order.get(n);
            placed[i] = Math.min(placed[i], limit);
            limit = placed[i] - gap;
        }
        List<Double> places = new ArrayList<>();
        for (double each : placed) {
            places.add(each);
        }
        return places;
    }
}
