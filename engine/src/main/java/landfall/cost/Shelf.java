// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.quantity.Money;
import landfall.quantity.TimeSpan;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * What to buy before a shelf is bare. Taps are used up one by one at random; how often is known from a count, so the
 * number that goes while an order is on its way has a negative binomial law.
 *
 * @param lasts until the shelf is bare, as things went so far
 * @param short chance that a tap is missing before an order of today arrives
 * @param order fewest taps to buy so that this chance falls to the risk that is borne
 * @param price of the order; null where no price is known
 */
public record Shelf(
        TimeSpan lasts, double risk, int order, @Nullable Money price, List<Caution> cautions) {
    private static final Source NOTE = Source.of("derived", "docs/methods/cost-per-hole.md");
    private static final double SECONDS_PER_WEEK = 7 * 86400;
    private static final int FEW = 3;

    /**
     * Taps of one kind.
     *
     * @param onHand sharp, or worth sharpening
     * @param usedUp broken and scrapped in the period on record
     * @param ordered on their way
     */
    public record Stocked(int onHand, int usedUp, int ordered) {
        public Stocked {
            if (onHand < 0 || usedUp < 0 || ordered < 0) {
                throw new OutOfRange(
                        "taps", onHand + ", " + usedUp + " and " + ordered, "0 or more", "count what is there");
            }
        }
    }

    /**
     * How long things take.
     *
     * @param record time over which those were used up
     * @param delivery from the order to the shelf
     * @param until the next order is thought of
     */
    public record Spans(TimeSpan record, TimeSpan delivery, TimeSpan until) {
        public Spans {
            if (!(record.s() > 0 && delivery.s() > 0 && until.s() >= 0)) {
                throw new OutOfRange(
                        "spans",
                        weeks(record) + ", " + weeks(delivery) + " and " + weeks(until) + " weeks",
                        "more than 0; the time to the next order 0 or more",
                        "give the time on record, the time of delivery and how often you order");
            }
        }
    }

    static final Rule USED_UP = Rule.given("k_u", "1", "taps used up in the time on record");
    static final Rule RECORD = Rule.given("T_r", "wk", "time on record");
    static final Rule AHEAD = Rule.given("T_a", "wk", "time of delivery, and to the next order");
    static final Rule HELD = Rule.given("n_s", "1", "taps on hand and on their way");
    public static final Rule RATE = new Rule(
            "r_u",
            "(k_u + 0.5)/T_r",
            "1",
            NOTE,
            Trust.ESTIMATE,
            "taps used up in a week; half a tap is not yet counted");
    public static final Rule LASTS =
            new Rule("T_l", "n_s/r_u", "wk", NOTE, Trust.ESTIMATE, "time until the shelf is bare");
    public static final Rule EXPECTED =
            new Rule("n_a", "r_u*T_a", "1", NOTE, Trust.ESTIMATE, "taps used up in the time ahead");
    static final Rule NONE = new Rule(
            "P_0", "(T_r/(T_r + T_a))^(k_u + 0.5)", "1", NOTE, Trust.ESTIMATE, "chance that none is used up in it");
    public static final Rule SHORT =
            Rule.learned("p_s", "1", NOTE, "chance that a tap is missing in the time ahead, with nothing bought");
    static final Rule BORNE = Rule.given("p_r", "1", "risk that is borne");
    public static final Rule ORDER = Rule.learned("n_o", "1", NOTE, "fewest taps to buy for that risk");

    public Shelf {
        cautions = List.copyOf(cautions);
    }

    /**
     * @param borne chance of a missing tap that the shop bears, such as 0.05
     * @param each price of one; null where it is not known
     */
    public static Worked<Shelf> of(Stocked taps, Spans spans, double borne, @Nullable Money each) {
        if (!(borne > 0 && borne < 1)) {
            throw new OutOfRange(
                    "risk", borne + "", "between 0 and 1", "give the chance of a missing tap that you bear");
        }
        return Worked.of(pen -> shelf(taps, spans, borne, each, pen));
    }

    private static Shelf shelf(Stocked taps, Spans spans, double borne, @Nullable Money each, Pen pen) {
        double k_u = pen.write(USED_UP, taps.usedUp);
        double T_r = pen.write(RECORD, weeks(spans.record));
        double T_a = pen.write(AHEAD, weeks(spans.delivery) + weeks(spans.until));
        double n_s = pen.write(HELD, taps.onHand + taps.ordered);
        double r_u = pen.write(RATE, (k_u + 0.5) / T_r);
        double lasts = pen.write(LASTS, n_s / r_u);
        pen.write(EXPECTED, r_u * T_a);
        double chance = pen.write(NONE, Math.pow(T_r / (T_r + T_a), k_u + 0.5));
        double beyond = 1 - chance;
        int k = 0;
        int enough = beyond <= borne ? 0 : -1;
        double missing = beyond;
        while (k < n_s || enough < 0) {
            chance *= (k_u + 0.5 + k) / (k + 1) * T_a / (T_r + T_a);
            k++;
            beyond -= chance;
            missing = k <= n_s ? beyond : missing;
            enough = enough < 0 && beyond <= borne ? k : enough;
        }
        return answer(taps, lasts, missing, new Order((int) Math.max(0, enough - n_s), borne, each), pen);
    }

    private record Order(int taps, double borne, @Nullable Money each) {}

    private static Shelf answer(Stocked taps, double lasts, double missing, Order order, Pen pen) {
        double p_s = pen.write(SHORT, missing);
        pen.write(BORNE, order.borne);
        double n_o = pen.write(ORDER, order.taps);
        Money price = null;
        if (order.each != null) {
            CostRules rules = new CostRules(order.each.currency());
            double p = pen.write(rules.tap, order.each.amount());
            price = new Money(pen.write(rules.order, p * n_o), order.each.currency());
        }
        List<Caution> cautions = new ArrayList<>();
        if (taps.usedUp < FEW) {
            cautions.add(new Caution(
                    "fewRecords",
                    "Taps used up on record: " + taps.usedUp + ". How fast they go is hardly known.",
                    "k_u"));
        }
        return new Shelf(TimeSpan.ofSeconds(lasts * SECONDS_PER_WEEK), p_s, order.taps, price, cautions);
    }

    private static double weeks(TimeSpan span) {
        return span.s() / SECONDS_PER_WEEK;
    }
}
