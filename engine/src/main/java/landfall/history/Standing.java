// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * How a thing stands after its events.
 *
 * @param place where it is kept or with whom it is; empty when nobody told
 * @param last the newest event of its history
 */
public record Standing(Status status, String place, Uses uses, Condition condition, Last last) {
    /**
     * What is known of its cutting part.
     *
     * @param sizes as last measured; a grind makes all of them unknown, the wear land too
     * @param passed the last verdict; null when it was never inspected since it was last ground
     * @param coatingLost whether its coating is gone
     * @param calibrationDue a gauge's; null when never told
     */
    public record Condition(
            Happening.Sizes sizes,
            @Nullable Boolean passed,
            boolean coatingLost,
            @Nullable LocalDate calibrationDue) {
        static final Condition UNKNOWN = new Condition(new Happening.Sizes(null, null, null, null), null, false, null);
    }

    /**
     * The newest event of its history, taken back or not.
     *
     * @param seq the highest number, 0 for none
     * @param at the latest moment, null for none
     */
    public record Last(long seq, @Nullable Instant at) {}

    public static final Standing NEW =
            new Standing(Status.ON_HAND, "", Uses.NONE, Condition.UNKNOWN, new Last(0, null));

    /** Whether the event happened after all others, so that {@link #then} tells the same as the whole history. */
    public boolean isBefore(Event event) {
        return event.kind() != EventKind.CORRECTED
                && event.seq() > last.seq
                && (last.at == null || !event.at().isBefore(last.at));
    }

    /** How it stands after one more event. */
    public Standing then(Event event) {
        if (!isBefore(event)) {
            throw new IllegalArgumentException("event " + event.seq() + " did not happen after all others");
        }
        Standing after = Fold.after(this, event.what());
        return new Standing(after.status, after.place, after.uses, after.condition, new Last(event.seq(), event.at()));
    }
}
