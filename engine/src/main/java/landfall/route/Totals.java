// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Band;
import landfall.quantity.Money;
import landfall.working.Pen;
import landfall.working.Rule;
import org.jspecify.annotations.Nullable;

/**
 * What the whole job takes.
 *
 * @param work at the machine and the bench; null where no hour's cost was told
 * @param taps worn, broken and sharpened; null where no price was told
 * @param all null where one of the two is
 */
public record Totals(
        Timed time,
        @Nullable Cost work,
        @Nullable Cost taps,
        @Nullable Cost all) {
    /** Money, with the lines that it is printed by. */
    public record Cost(Band amount, String currency, BandRule rule) {}

    private static final double MINUTES = 60;

    static Totals of(List<Planned> holes, List<Operation> operations, RouteWish.Prices prices, Pen pen) {
        Timed time = sum("T~", "the whole job", operations, pen);
        Cost taps = taps(holes, pen);
        Money hour = prices.hour();
        if (hour == null) {
            return new Totals(time, null, null, null);
        }
        double r_h = pen.write(hourRule(hour.currency()), hour.amount());
        // what taps cost a hole has their sharpening in it
        List<Operation> paid = operations.stream()
                .filter(one -> taps == null || one.kind() != Operation.Kind.SHARPEN)
                .toList();
        Timed bench = sum("T_w~", taps == null ? "all of it" : "all of it but the sharpening", paid, pen);
        BandRule rule = RouteRules.band("K_w~", "T_w~/60*r_h", unit(hour.currency()), "cost of the work");
        Cost work = new Cost(rule.write(bench.minutes().times(r_h / MINUTES), pen), hour.currency(), rule);
        if (taps == null) {
            return new Totals(time, work, null, null);
        }
        BandRule both = RouteRules.band("K~", "K_w~ + K_t~", unit(hour.currency()), "cost of the job");
        Band all = both.write(LinePlanner.plus(work.amount, taps.amount), pen);
        return new Totals(time, work, taps, new Cost(all, hour.currency(), both));
    }

    private static Rule hourRule(String currency) {
        return Rule.given("r_h", unit(currency), "an hour at the machine and the bench");
    }

    private static String unit(String currency) {
        return currency.isEmpty() ? "money" : currency;
    }

    private static Timed sum(String symbol, String means, List<Operation> operations, Pen pen) {
        List<String> symbols = new ArrayList<>();
        Band minutes = new Band(0, 0, 0);
        for (Operation operation : operations) {
            symbols.add(operation.time().symbol());
            minutes = LinePlanner.plus(minutes, operation.time().minutes());
        }
        BandRule rule = RouteRules.sum(symbol, symbols, "min", means);
        return new Timed(rule.write(minutes, pen), rule);
    }

    private static @Nullable Cost taps(List<Planned> holes, Pen pen) {
        List<String> symbols = new ArrayList<>();
        Band amount = new Band(0, 0, 0);
        String unit = "";
        for (Planned planned : holes) {
            Planned.Taps taps = planned.work().taps();
            if (taps == null) {
                return null;
            }
            unit = taps.rule().expected().unit();
            symbols.add(taps.rule().expected().symbol() + "~");
            amount = LinePlanner.plus(amount, taps.all());
        }
        BandRule rule = RouteRules.sum("K_t~", symbols, unit, "taps of the whole job");
        return new Cost(rule.write(amount, pen), unit, rule);
    }
}
