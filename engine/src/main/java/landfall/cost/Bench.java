// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import landfall.fault.OutOfRange;
import landfall.history.Price;
import landfall.quantity.Money;
import landfall.quantity.TimeSpan;

/**
 * What things cost at the bench, all in one currency.
 *
 * @param tap a new one
 * @param sharpening one tap once
 * @param breakage what a broken tap spoils besides itself: the part, and the time to dig it out or begin again
 */
public record Bench(Money tap, Money sharpening, Money breakage) {
    private static final double SECONDS_PER_HOUR = 3600;

    public Bench {
        require("price of a tap", tap, tap.amount() > 0, "more than 0", "give what a new tap costs");
        require("sharpening", sharpening, sharpening.amount() >= 0, "0 or more", "give what one sharpening costs");
        require("breakage", breakage, breakage.amount() >= 0, "0 or more", "give what a broken tap spoils");
        same("sharpening", sharpening, tap);
        same("breakage", breakage, tap);
    }

    /** Prices as they were told, sharpening as time at the bench. */
    public static Bench of(Price tap, TimeSpan sharpening, Price hour, Price spoilt) {
        double each = hour.amount().doubleValue() * sharpening.s() / SECONDS_PER_HOUR;
        return new Bench(money(tap), new Money(each, hour.currency()), money(spoilt));
    }

    public static Money money(Price price) {
        return new Money(price.amount().doubleValue(), price.currency());
    }

    public String currency() {
        return tap.currency();
    }

    Money in(double amount) {
        return new Money(amount, tap.currency());
    }

    private static void require(String what, Money given, boolean good, String allowed, String mend) {
        if (!good) {
            throw new OutOfRange(what, given.words(), allowed, mend);
        }
    }

    private static void same(String what, Money given, Money tap) {
        if (!given.currency().equals(tap.currency())) {
            throw new OutOfRange(
                    "currency of " + what,
                    given.words(),
                    "that of the tap, " + tap.words(),
                    "give all money in one currency; none is converted");
        }
    }
}
