// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * How a thing stands after its events.
 *
 * @param place where it is kept or with whom it is; empty when nobody told
 * @param sizes as last measured; what has been ground since is forgotten
 * @param passed the last verdict; null when it was never inspected since it was last ground
 * @param calibrationDue a gauge's; null when never told
 * @param lastSeq number of the last event, 0 for none
 */
public record Standing(Status status, String place, Uses uses, Condition condition, Last last) {
    /** What is known of its cutting part. */
    public record Condition(
            Happening.Sizes sizes,
            @Nullable Boolean passed,
            boolean coatingLost,
            @Nullable LocalDate calibrationDue) {
        static final Condition UNKNOWN = new Condition(new Happening.Sizes(null, null, null, null), null, false, null);
    }

    /** The newest event of its history, taken back or not. */
    public record Last(long seq, @Nullable Instant at) {}

    static final Standing NEW = new Standing(Status.ON_HAND, "", Uses.NONE, Condition.UNKNOWN, new Last(0, null));
}
