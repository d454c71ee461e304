// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import landfall.cards.form.Entries;
import landfall.cards.words.Words;
import landfall.cost.Bench;
import landfall.cost.LimitChoice;
import landfall.cost.LimitPoint;
import landfall.cost.NextStep;
import landfall.cost.SharpeningsAt;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.history.Event;
import landfall.history.Happening;
import landfall.history.History;
import landfall.history.Price;
import landfall.history.Standing;
import landfall.quantity.Length;
import landfall.quantity.Money;
import landfall.tap.Body;
import landfall.tap.Tap;
import landfall.wear.WearLaw;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * What holes cost with such taps, and what to do with this one when it is due.
 *
 * @param bench the three prices, their currency kept apart
 * @param currency as the shop writes it; empty when it was not told
 * @param next of this tap, sharpened at the best limit
 * @param left sharpenings that it still allows at the best limit
 */
public record Costs(WearLaw law, Bench bench, String currency, LimitChoice choice, Worked<NextStep> next, int left) {

    /**
     * What is kept of a tap.
     *
     * @param tap from its card; null where that is not whole
     */
    record Kept(
            ShopLaws.Found found, History history, @Nullable Tap tap) {}

    static @Nullable Costs of(Kept kept, Entries entries, List<String> wanting, List<Caution> cautions) {
        Tap tap = kept.tap;
        Optional<Price> price = entries.get(ProspectForm.PRICE).or(() -> bought(kept.history.holding()));
        Optional<Price> sharpening = entries.get(ProspectForm.SHARPENING);
        Optional<Price> spoilt = entries.get(ProspectForm.SPOILT);
        if (price.isEmpty()) {
            wanting.add(Words.of("prospect.want.price"));
        }
        if (sharpening.isEmpty()) {
            wanting.add(Words.of("prospect.want.sharpening"));
        }
        if (spoilt.isEmpty()) {
            wanting.add(Words.of("prospect.want.spoilt"));
        }
        if (tap == null) {
            wanting.add(Words.of("prospect.want.card"));
        }
        if (price.isEmpty() || sharpening.isEmpty() || spoilt.isEmpty() || tap == null) {
            return null;
        }
        Answer<SharpeningsAt> sharpenings = SharpeningsAt.of(tap, null);
        if (!(sharpenings instanceof Answer.Of<SharpeningsAt> told)) {
            sharpenings.findings().stream().map(Finding::sentence).forEach(wanting::add);
            return null;
        }
        List<Price> prices = List.of(price.get(), sharpening.get(), spoilt.get());
        boolean missed = entries.get(ProspectForm.MISSED).orElse(true);
        Costs costs = of(kept, new OnBench(tap, told.value(), missed), prices, cautions);
        cautions.addAll(costs.choice.cautions());
        return costs;
    }

    /** The tap itself, what a new one of its kind allows, and whether the shelf misses it. */
    private record OnBench(Tap tap, SharpeningsAt asNew, boolean missed) {}

    private static Costs of(Kept kept, OnBench on, List<Price> prices, List<Caution> cautions) {
        ShopLaws.Found found = kept.found;
        SharpeningsAt sharpenings = on.asNew;
        String currency = currency(prices);
        Bench bench = new Bench(money(prices.get(0)), money(prices.get(1)), money(prices.get(2)));
        LimitChoice choice = LimitChoice.of(found.law(), bench, sharpenings);
        Length limit = choice.best().limit();
        int left = left(kept.history.standing(), on, limit, cautions);
        NextStep.DueNow now = new NextStep.DueNow(left, 1, on.missed);
        Worked<NextStep> next = NextStep.of(found.law(), bench, sharpenings, limit, now);
        return new Costs(found.law(), bench, currency, choice, next, left);
    }

    /** By the thread length that was measured since it was last ground, else by the card less what was ground. */
    private static int left(Standing standing, OnBench on, Length limit, List<Caution> cautions) {
        Tap tap = on.tap;
        Length measured = standing.condition().sizes().threadLength();
        if (measured != null) {
            Body body = tap.body();
            Body now = new Body(
                    measured, body.overallLength(), body.shank(), body.neck(), body.backTaper(), body.centres());
            Tap shorter = new Tap(tap.callOut(), tap.cutting(), now, tap.pitch(), tap.make());
            if (SharpeningsAt.of(shorter, null) instanceof Answer.Of<SharpeningsAt> of) {
                return of.value().count(limit);
            }
        }
        int ground = standing.uses().sharpenings();
        if (ground > 0) {
            cautions.add(new Caution(
                    "cardAsNew",
                    "The card's thread length is taken as of the new tap, and the sharpenings since, " + ground
                            + ", are taken off what it allowed. Measure the thread to know better.",
                    "threadLength"));
        }
        return Math.max(0, on.asNew.count(limit) - ground);
    }

    /** The last price that was paid for it. */
    static Optional<Price> bought(List<Event> events) {
        List<Price> paid = new ArrayList<>();
        for (Event event : events) {
            if (event.what() instanceof Happening.Bought bought && bought.price() != null) {
                paid.add(Objects.requireNonNull(bought.price()));
            }
        }
        return paid.isEmpty() ? Optional.empty() : Optional.of(paid.get(paid.size() - 1));
    }

    /** One currency for all; a price without one is of the others'. */
    static String currency(List<Price> prices) {
        List<String> named = prices.stream()
                .map(Price::currency)
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList();
        if (named.size() > 1) {
            throw new OutOfRange(
                    "sharpening",
                    String.join(" and ", named),
                    "all in one currency; none is converted",
                    "write every price in the same currency");
        }
        return named.isEmpty() ? "" : named.get(0);
    }

    static Money money(Price price) {
        return new Money(price.amount().doubleValue(), "");
    }

    /** Some points of the curve for a table, the best and the ends among them. */
    public List<LimitPoint> some() {
        List<LimitPoint> curve = choice.curve();
        int step = Math.max(1, curve.size() / 6);
        return Stream.concat(Stream.of(choice.best()), curve.stream().filter(point -> curve.indexOf(point) % step == 0))
                .distinct()
                .sorted((one, other) -> one.limit().compareTo(other.limit()))
                .toList();
    }
}
