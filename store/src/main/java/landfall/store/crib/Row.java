// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.time.Instant;
import java.time.LocalDate;
import landfall.history.Standing;
import landfall.history.Status;
import org.jspecify.annotations.Nullable;

/** A thing as a list shows it: what it is, and the columns folded from its events. */
public record Row(Item item, Status status, String place, Counts counts, Seen seen) {
    public record Counts(long holes, long sinceSharp, long sharpenings) {}

    /** @param lastAt null when nothing has happened yet */
    public record Seen(
            long lastSeq,
            @Nullable Instant lastAt,
            @Nullable LocalDate calibrationDue) {}

    /** The columns that follow from how a thing stands. */
    static Row of(Item item, Standing standing) {
        return new Row(
                item,
                standing.status(),
                standing.place(),
                new Counts(
                        standing.uses().holes(),
                        standing.uses().sinceSharp(),
                        standing.uses().sharpenings()),
                new Seen(
                        standing.last().seq(),
                        standing.last().at(),
                        standing.condition().calibrationDue()));
    }
}
