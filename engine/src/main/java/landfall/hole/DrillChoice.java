// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import landfall.drill.Drill;
import landfall.hole.Drilled.Against;
import landfall.quantity.Length;
import landfall.working.Pen;

/**
 * The drill for a hole, from those that the shop owns.
 *
 * <p>Cutting taps: of the drills whose expected hole lies in the limits, the one whose share is nearest to the wanted
 * one; none inside: the nearest of all. Forming taps: the nearest of those whose smallest usual hole still takes the
 * thread without jamming the tap. Of two equally near ones the larger.
 */
record DrillChoice(Drilled drill, List<Drilled> others) {
    private static final double TIE = 1e-9;
    private static final List<String> MARKS = List.of("_a", "_b", "_c", "_d");

    static DrillChoice cutting(List<Drill> drills, Against against, double wanted, Pen pen) {
        Drill chosen = nearest(drills, against, wanted, against::expectedInside)
                .or(() -> nearest(drills, against, wanted, drill -> true))
                .orElseThrow();
        return of(chosen, drills, against, pen);
    }

    /** {@code least}: the hole that a forming tap jams in when it is smaller. */
    static Optional<DrillChoice> forming(List<Drill> drills, Against against, double wanted, Length least, Pen pen) {
        Predicate<Drill> free =
                drill -> drill.diameter().inch() + Oversize.LEAST.inches(drill.diameter()) >= least.inch();
        return nearest(drills, against, wanted, free).map(chosen -> of(chosen, drills, against, pen));
    }

    private static Optional<Drill> nearest(
            List<Drill> drills, Against against, double wanted, Predicate<Drill> allowed) {
        Drill best = null;
        double apart = Double.POSITIVE_INFINITY;
        for (Drill drill : drills) {
            double here = Math.abs(against.share(drill) - wanted);
            // the drills stand thinnest first, so that a tie goes to the larger
            if (allowed.test(drill) && here <= apart + TIE) {
                best = drill;
                apart = here;
            }
        }
        return Optional.ofNullable(best);
    }

    private static DrillChoice of(Drill chosen, List<Drill> drills, Against against, Pen pen) {
        Drilled drilled = Drilled.of(chosen, against, "", pen);
        List<Drill> near = new ArrayList<>();
        List<Drill> thinner = drills.stream()
                .filter(drill -> drill.diameter().compareTo(chosen.diameter()) < 0)
                .toList();
        near.addAll(thinner.subList(Math.max(0, thinner.size() - 2), thinner.size()));
        drills.stream()
                .filter(drill -> drill.diameter().compareTo(chosen.diameter()) > 0)
                .limit(2)
                .forEach(near::add);
        List<Drilled> others = new ArrayList<>();
        for (int i = 0; i < near.size(); i++) {
            others.add(Drilled.of(near.get(i), against, MARKS.get(i), pen));
        }
        return new DrillChoice(drilled, List.copyOf(others));
    }

    static List<Drill> sorted(List<Drill> drills) {
        return drills.stream().sorted(Comparator.comparing(Drill::diameter)).toList();
    }
}
