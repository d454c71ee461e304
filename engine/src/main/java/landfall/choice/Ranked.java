// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.util.List;
import landfall.quantity.Band;
import landfall.wear.Survival;
import org.jspecify.annotations.Nullable;

/**
 * One tap on record, held against a hole.
 *
 * @param points that order the fit ones; they measure nothing
 * @param unfit every reason why it cannot do it; empty for a fit tap
 * @param wear how far it is worn; null for a tap of another thread and for one that has ended
 */
public record Ranked(
        OnHand tap,
        int points,
        List<Unfit> unfit,
        Words words,
        @Nullable Worn wear) {
    /** What speaks for it, and what must be said against it. */
    public record Words(List<String> reasons, List<String> cautions) {
        public Words {
            reasons = List.copyOf(reasons);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * By the wear law.
     *
     * @param used holes of the usual depth since it was sharp
     * @param job what may become of it before the last hole
     */
    public record Worn(Band used, Survival job) {}

    public Ranked {
        unfit = List.copyOf(unfit);
    }

    public boolean isFit() {
        return unfit.isEmpty();
    }

    /** Whether sharpening is all that it needs. */
    public boolean isOnlyDull() {
        return !unfit.isEmpty() && unfit.stream().allMatch(one -> one.why() == Unfit.Why.DULL);
    }

    public boolean isOfTheThread() {
        return unfit.stream().noneMatch(one -> one.why() == Unfit.Why.THREAD);
    }
}
