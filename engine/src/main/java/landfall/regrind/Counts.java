// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.ArrayList;
import java.util.List;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/** Whole sharpenings by each limit, the least of them, and which it was. */
final class Counts {
    static final Source GEOMETRY = Source.of("derived", "docs/methods/regrind.md");
    /** A count that comes out whole but for the last digits of a double is whole. */
    private static final double WHOLE = 1e-9;

    private final List<String> symbols = new ArrayList<>();
    private double leastExact = Double.POSITIVE_INFINITY;
    private @Nullable Integer least;
    private @Nullable LifeLimit limit;

    /** A rule for a count: the formula is without its floor. */
    static Rule rule(String symbol, String formula, String means) {
        return new Rule(symbol, "floor(" + formula + " + 1e-9)", "1", GEOMETRY, Trust.DERIVED, means);
    }

    void add(LifeLimit by, Rule rule, double exact, Pen pen) {
        put(by, rule, exact, pen);
    }

    void cap(@Nullable Integer cap, Rule rule, Pen pen) {
        if (cap != null) {
            put(LifeLimit.CAP, rule, cap, pen);
        }
    }

    /** The limit that is met first ends it, also where two allow the same whole count. */
    private void put(LifeLimit by, Rule rule, double exact, Pen pen) {
        int count = whole(exact);
        pen.write(rule, count);
        symbols.add(rule.symbol());
        if (exact < leastExact) {
            leastExact = exact;
            least = count;
            limit = by;
        }
    }

    @Nullable
    Integer least(String symbol, String means, Pen pen) {
        if (least != null) {
            String formula = symbols.size() == 1 ? symbols.get(0) : "min(" + String.join(", ", symbols) + ")";
            pen.write(new Rule(symbol, formula, "1", GEOMETRY, Trust.DERIVED, means), least);
        }
        return least;
    }

    @Nullable
    LifeLimit limit() {
        return limit;
    }

    static int whole(double exact) {
        return (int) Math.floor(exact + WHOLE);
    }
}
