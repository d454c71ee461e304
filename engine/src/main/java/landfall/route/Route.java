// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.quantity.Money;
import landfall.working.Pen;
import landfall.working.Worked;

/**
 * The whole answer to "how do I make the holes of this drawing, and what do I lack?".
 *
 * @param holes in the order of the drawing
 * @param operations in the order in which they are done
 * @param shortages what to see to before anything is cut
 */
public record Route(
        List<Planned> holes,
        List<Operation> operations,
        List<Shortage> shortages,
        Totals totals,
        List<Caution> cautions) {
    public Route {
        holes = List.copyOf(holes);
        operations = List.copyOf(operations);
        shortages = List.copyOf(shortages);
        cautions = List.copyOf(cautions);
    }

    /** The route, or why there is none, line by line: all of it at once. */
    public static Answer<Worked<Route>> of(RouteWish wish) {
        List<Finding> findings = new ArrayList<>(money(wish.prices()));
        if (!findings.isEmpty()) {
            return Answer.refused(findings);
        }
        LinePlanner planner = new LinePlanner(wish);
        for (HoleLine line : wish.holes()) {
            try {
                planner.plan(line).findings().forEach(found -> findings.add(placed(line, found)));
            } catch (OutOfRange e) {
                findings.add(placed(line, e.finding()));
            }
        }
        return findings.isEmpty() ? Answer.of(Worked.of(pen -> compute(wish, pen))) : Answer.refused(findings);
    }

    /** A finding on a hole belongs to its line; the call-out is what the other questions call thread. */
    private static Finding placed(HoleLine line, Finding found) {
        String field = found.field().equals("thread") ? "callout" : found.field();
        return new Finding("holes." + line.line() + "." + field, found.given(), found.why(), found.mend());
    }

    private static List<Finding> money(RouteWish.Prices prices) {
        List<Finding> findings = new ArrayList<>();
        Money first = prices.hour() != null ? prices.hour() : prices.tap();
        for (Money other : new Money[] {prices.tap(), prices.spoilt()}) {
            if (first != null && other != null && !other.currency().equals(first.currency())) {
                findings.add(new Finding(
                        other.equals(prices.tap()) ? "tap-price" : "spoilt",
                        other.words(),
                        "is in another currency than " + first.words(),
                        "give all money in one currency; none is converted"));
            }
        }
        if (prices.tap() != null && !(prices.tap().amount() > 0)) {
            findings.add(
                    new Finding("tap-price", prices.tap().words(), "must be more than 0", "give what a new tap costs"));
        }
        return findings;
    }

    private static Route compute(RouteWish wish, Pen pen) {
        LinePlanner planner = new LinePlanner(wish);
        List<Planned> holes = new ArrayList<>();
        wish.holes().forEach(line -> holes.add(planner.plan(line, pen)));
        List<Operation> operations = Operations.of(holes, wish.shop().taps(), pen);
        return new Route(
                holes,
                operations,
                Shortages.of(holes),
                Totals.of(holes, operations, wish.prices(), pen),
                RouteCautions.of(wish, holes));
    }
}
