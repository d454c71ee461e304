// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.wear.Learned;
import landfall.wear.WearLaw;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import landfall.working.Worked;

/**
 * What taps cost a hole when they are sharpened at the usual wear limit: docs/methods/cost-per-hole.md.
 *
 * @param perHole from the kind end of the wear law to the unkind one; in the bench's currency
 * @param rules of the three figures
 */
public record HoleCost(Band perHole, Ends rules) {
    private static final Source NOTE = Source.of("derived", "docs/methods/cost-per-hole.md");

    /** The formula of each end, and of the middle. */
    public record Ends(Rule low, Rule expected, Rule high) {
        static Ends of(String currency) {
            String unit = currency.isEmpty() ? "money" : currency;
            return new Ends(
                    end("C_l", unit, "cost of a hole by the kind end of the wear law"),
                    new CostRules(currency).perHole,
                    end("C_h", unit, "cost of a hole by the unkind end of the wear law"));
        }

        private static Rule end(String symbol, String unit, String means) {
            return new Rule(symbol, Rule.LEARNED, unit, NOTE, Trust.ESTIMATE, means + ", by the formula of C");
        }
    }

    /** @param sharpenings that a new tap allows */
    public static Worked<HoleCost> of(WearLaw law, Bench bench, int sharpenings) {
        Learned learned = law.learned().value();
        return Worked.of(pen -> cost(learned, law.prior().subject().due(), new Shelved(bench, sharpenings), pen));
    }

    private record Shelved(Bench bench, int sharpenings) {}

    private static HoleCost cost(Learned learned, Length due, Shelved taps, Pen pen) {
        Ends ends = Ends.of(taps.bench.currency());
        double expected = at(
                new LimitPoint.Basis(
                        learned.middle().expected(), learned.breaks().expected(), due),
                taps,
                pen);
        double low = at(
                new LimitPoint.Basis(learned.middle().high(), learned.breaks().low(), due), taps, Pen.NONE);
        double high =
                at(new LimitPoint.Basis(learned.middle().low(), learned.breaks().high(), due), taps, Pen.NONE);
        return new HoleCost(new Band(pen.write(ends.low, low), expected, pen.write(ends.high, high)), ends);
    }

    private static double at(LimitPoint.Basis basis, Shelved taps, Pen pen) {
        return LimitPoint.at(basis.due(), taps.sharpenings, basis, taps.bench, pen)
                .perHole()
                .amount();
    }
}
