// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.time.Instant;
import java.time.LocalDate;
import landfall.history.Standing;
import landfall.history.Status;
import org.jspecify.annotations.Nullable;

/**
 * A thing as a list shows it: what it is, and how it stands as folded from its events.
 *
 * @param current false where an earlier program folded it, which did not keep its condition
 */
public record Row(Item item, Standing standing, boolean current) {
    public record Counts(long holes, long sinceSharp, long sharpenings) {}

    /** @param lastAt null when nothing has happened yet */
    public record Seen(
            long lastSeq,
            @Nullable Instant lastAt,
            @Nullable LocalDate calibrationDue) {}

    static Row of(Item item, Standing standing) {
        return new Row(item, standing, true);
    }

    public Status status() {
        return standing.status();
    }

    public String place() {
        return standing.place();
    }

    public Counts counts() {
        return new Counts(
                standing.uses().holes(),
                standing.uses().sinceSharp(),
                standing.uses().sharpenings());
    }

    public Seen seen() {
        return new Seen(
                standing.last().seq(),
                standing.last().at(),
                standing.condition().calibrationDue());
    }
}
