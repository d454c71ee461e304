// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.scan.Numerals;
import landfall.thread.unified.UnifiedLimits.Minor;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * The hole before tapping, by length of engagement: the longer the thread, the larger the hole may be, and should be.
 *
 * <p>With t the minor diameter tolerance the limits lie at these shares of t above the basic minor diameter: to D/3
 * from 0 to t/2; to 2D/3 from t/4 to 3t/4; to 1.5 D from t/2 to t; from there on from 3t/4 to 5t/4. An engagement on a
 * border belongs to the longer row. From 1/4 in up and over D/3 the two limits are at least .004 in apart; the source
 * does not say which one gives way, and the greatest stays here. Rounded once, to the places of the class's own limits.
 *
 * <p>Below 1/4 in the handbook keeps a wider difference that it takes from another tolerance; that is not held.
 */
final class HoleByEngagement {
    private static final Source RULE = Source.of("machinerys-handbook-31", "hole size limits before threading");
    private static final Source APART = Source.of("derived", "docs/methods/tap-drill.md, hole by engagement");

    private static final Rule ENGAGEMENT = Rule.given("Leh", "in", "length of engagement");
    private static final Rule LEAST_IF_CLOSE =
            new Rule("Dhmin", "Dhmax - 0.004", "in", APART, Trust.DERIVED, "least hole: .004 in under the greatest");
    private static final long LEAST_APART = 4 * InchGrain.PLACES_3;
    private static final long QUARTER_INCH = Numerals.ONE / 4;
    /** Room for binary noise at a border; far under what anyone can measure. */
    private static final double NOISE = 1e-9;

    private enum Row {
        TO_A_THIRD(0, 2),
        TO_TWO_THIRDS(1, 3),
        TO_ONE_AND_A_HALF(2, 4),
        BEYOND(3, 5);

        private final int leastQuarters;
        private final int greatestQuarters;

        Row(int leastQuarters, int greatestQuarters) {
            this.leastQuarters = leastQuarters;
            this.greatestQuarters = greatestQuarters;
        }

        static Row of(double diameters) {
            if (diameters < 1.0 / 3 - NOISE) {
                return TO_A_THIRD;
            }
            if (diameters < 2.0 / 3 - NOISE) {
                return TO_TWO_THIRDS;
            }
            return diameters < 1.5 - NOISE ? TO_ONE_AND_A_HALF : BEYOND;
        }
    }

    private HoleByEngagement() {}

    static Limits of(Minor minor, UnifiedSize size, Length engagement, Pen pen) {
        pen.write(ENGAGEMENT, engagement.inch());
        Row row = Row.of(engagement.inch() / InchGrain.inches(size.major()));
        long max = InchGrain.write(pen, greatest(row, minor.places()), at(minor, row.greatestQuarters));
        long min = at(minor, row.leastQuarters);
        boolean kept = row == Row.TO_A_THIRD || size.major() < QUARTER_INCH || max - min >= LEAST_APART;
        if (kept) {
            InchGrain.write(pen, least(row, minor.places()), min);
        } else {
            min = InchGrain.write(pen, LEAST_IF_CLOSE, max - LEAST_APART);
        }
        return new Limits(InchGrain.length(min), InchGrain.length(max));
    }

    private static long at(Minor minor, int quarters) {
        return InchGrain.up(minor.least() * 4 + minor.tolerance() * quarters, minor.places() * 4) / 4;
    }

    private static Rule least(Row row, long places) {
        return rule("Dhmin", row.leastQuarters, places, "least hole for this engagement");
    }

    private static Rule greatest(Row row, long places) {
        return rule("Dhmax", row.greatestQuarters, places, "greatest hole for this engagement");
    }

    private static Rule rule(String symbol, int quarters, long places, String means) {
        String formula =
                "round(D1 + TD1 * " + quarters + "/4, " + (places == InchGrain.PLACES_3 ? "0.001" : "0.0001") + ")";
        return new Rule(symbol, formula, "in", RULE, Trust.HANDBOOK, means);
    }
}
