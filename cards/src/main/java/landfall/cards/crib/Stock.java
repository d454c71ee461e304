// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import landfall.cards.form.Entries;
import landfall.cards.words.Words;
import landfall.cost.Bench;
import landfall.cost.Saved;
import landfall.cost.Shelf;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.history.Price;
import landfall.quantity.Money;
import landfall.quantity.TimeSpan;
import landfall.quantity.UnitSystem;
import landfall.wear.Brief;
import landfall.wear.WearLaw;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * What to buy before a shelf is bare, and what sharpening saved.
 *
 * @param buy kinds of which a tap may be missing, the likeliest first
 * @param enough kinds of which there is enough
 * @param saved for each law with sharpenings in the period; empty where no price tells it
 * @param unpriced sharpenings of kinds whose price is not known
 * @param wanting what is not known and how to tell it
 */
public record Stock(
        List<ToBuy> buy,
        int enough,
        List<OfKind> saved,
        String currency,
        int unpriced,
        List<String> wanting,
        List<Caution> cautions) {
    private static final double SECONDS_PER_WEEK = 7 * 86400;
    private static final double DELIVERY_WEEKS = 2;
    private static final double UNTIL_WEEKS = 4;
    private static final double RISK = 0.05;

    /**
     * Taps of one size as they are on record.
     *
     * @param price last paid for one; null where none is on record
     */
    public record Shelved(
            String size, int onHand, int usedUp, @Nullable Price price) {}

    /** One kind of tap that was sharpened: its law, its runs and what a new one costs. */
    public record Ground(
            String size,
            WearLaw law,
            List<Brief> runs,
            @Nullable Price price) {}

    /** What is on record of a crib, in a period. */
    public record OnRecord(List<Shelved> shelves, TimeSpan span, List<Ground> ground, Saved.Period period) {}

    public record ToBuy(Shelved shelved, Worked<Shelf> shelf) {}

    public record OfKind(String size, Worked<Saved> saved) {}

    public static Answer<Stock> of(OnRecord records, Map<String, String> typed) {
        return StockForm.FORM.judge(typed, UnitSystem.METRIC).then(entries -> {
            try {
                return Answer.of(new Reckoning(records, entries).stock());
            } catch (OutOfRange e) {
                return Answer.refused(e.finding());
            }
        });
    }

    /** Works it out once. */
    private static final class Reckoning {
        private final OnRecord records;
        private final Entries entries;
        private final List<String> wanting = new ArrayList<>();
        private final List<Caution> cautions = new ArrayList<>();
        private int unpriced;
        private int enough;

        Reckoning(OnRecord records, Entries entries) {
            this.records = records;
            this.entries = entries;
        }

        Stock stock() {
            List<ToBuy> buy = buy();
            List<Price> prices = new ArrayList<>();
            records.ground.stream()
                    .map(Ground::price)
                    .filter(price -> price != null)
                    .forEach(prices::add);
            entries.get(StockForm.SHARPENING).ifPresent(prices::add);
            String currency = Costs.currency(prices);
            return new Stock(buy, enough, saved(), currency, unpriced, wanting, cautions);
        }

        private List<ToBuy> buy() {
            if (records.span.s() <= 0 || records.shelves.isEmpty()) {
                wanting.add(Words.of("stock.want.events"));
                return List.of();
            }
            assumed();
            double borne = entries.get(StockForm.RISK).orElse(RISK);
            Shelf.Spans spans = new Shelf.Spans(
                    records.span,
                    weeks(entries.get(StockForm.DELIVERY).orElse(DELIVERY_WEEKS)),
                    weeks(entries.get(StockForm.UNTIL).orElse(UNTIL_WEEKS)));
            List<ToBuy> buy = new ArrayList<>();
            for (Shelved shelved : records.shelves) {
                Price price = shelved.price;
                Money each = price == null ? null : Costs.money(price);
                Worked<Shelf> shelf =
                        Shelf.of(new Shelf.Stocked(shelved.onHand, shelved.usedUp, 0), spans, borne, each);
                if (shelved.usedUp > 0 && shelf.value().order() > 0) {
                    buy.add(new ToBuy(shelved, shelf));
                } else {
                    enough++;
                }
            }
            buy.sort(Comparator.comparingDouble((ToBuy one) -> one.shelf.value().risk())
                    .reversed());
            if (records.shelves.stream().allMatch(shelved -> shelved.usedUp == 0)) {
                wanting.add(Words.of("stock.want.ended"));
            }
            return buy;
        }

        private void assumed() {
            if (!entries.has(StockForm.DELIVERY) || !entries.has(StockForm.UNTIL) || !entries.has(StockForm.RISK)) {
                cautions.add(new Caution(
                        "spansAssumed",
                        "Taken where not told: two weeks to deliver, four to the next order, one chance in twenty that"
                                + " a tap is missing.",
                        "delivery"));
            }
        }

        private List<OfKind> saved() {
            Price sharpening = entries.get(StockForm.SHARPENING).orElse(null);
            if (sharpening == null) {
                wanting.add(Words.of("stock.want.sharpening"));
            }
            if (records.ground.isEmpty()) {
                wanting.add(Words.of("stock.want.sharpened"));
            }
            List<OfKind> saved = new ArrayList<>();
            for (Ground ground : records.ground) {
                Price price = ground.price;
                if (price == null || price.amount().signum() == 0) {
                    unpriced += Saved.times(ground.runs, records.period);
                } else if (sharpening != null) {
                    Bench bench = new Bench(Costs.money(price), Costs.money(sharpening), new Money(0, ""));
                    saved.add(new OfKind(ground.size, Saved.ofBriefs(ground.runs, records.period, ground.law, bench)));
                }
            }
            if (unpriced > 0) {
                wanting.add(Words.of("stock.want.price", unpriced));
            }
            return saved;
        }

        private static TimeSpan weeks(double weeks) {
            return TimeSpan.ofSeconds(weeks * SECONDS_PER_WEEK);
        }
    }

    public Stock {
        buy = List.copyOf(buy);
        saved = List.copyOf(saved);
        wanting = List.copyOf(wanting);
        cautions = List.copyOf(cautions);
    }
}
