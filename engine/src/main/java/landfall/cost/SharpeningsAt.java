// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.regrind.LifeWish;
import landfall.regrind.SharpeningsLeft;
import landfall.tap.Tap;
import landfall.tap.Wear;
import org.jspecify.annotations.Nullable;

/** How many sharpenings a new tap allows when it is always ground at one wear limit: a wider land costs more stock. */
@FunctionalInterface
public interface SharpeningsAt {
    int count(Length limit);

    /** By the tap's own figures, on the chamfer. */
    static Answer<SharpeningsAt> of(Tap tap, @Nullable Integer cap) {
        return SharpeningsLeft.of(tap, new LifeWish(Wear.DUE, null, cap)).then(left -> {
            if (left.value().chamfer().count() == null) {
                return Answer.refused(new Finding(
                        "threadLength",
                        "",
                        "is needed: nothing known limits the sharpenings of this tap",
                        "give the thread length, or a cap on sharpenings"));
            }
            return Answer.of(limit -> {
                Integer count = SharpeningsLeft.of(tap, new LifeWish(Wear.of(limit), null, cap))
                        .orThrow()
                        .value()
                        .chamfer()
                        .count();
                if (count == null) {
                    throw new IllegalStateException("no count at a wear land of " + limit.words());
                }
                return count;
            });
        });
    }

    /**
     * By lengths alone.
     *
     * @param available thread length that may be ground away
     * @param atDue stock along the axis for a wear land of this width
     * @param allowance below the damage, each time
     */
    static SharpeningsAt of(Length available, Length atDue, Length due, Length allowance) {
        if (!(available.mm() >= 0 && atDue.mm() >= 0 && due.mm() > 0 && allowance.mm() > 0)) {
            throw new OutOfRange(
                    "lengths to grind",
                    available.words() + " by " + atDue.words() + " and " + allowance.words(),
                    "0 or more, the wear land and the allowance more than 0",
                    "measure the thread, and take stock and allowance from the set-up");
        }
        double perWear = atDue.over(due);
        return limit -> (int) Math.floor(available.mm() / (perWear * limit.mm() + allowance.mm()) + 1e-9);
    }
}
