// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.time.Instant;
import landfall.cards.crib.Told;
import landfall.history.Mark;
import org.jspecify.annotations.Nullable;

/**
 * Somebody says that something happened.
 *
 * @param ticket names the request; the same one again is answered as the first was
 * @param after number of the event that was the last when this was written; null for whatever is last now
 */
public record Saying(
        Mark mark,
        Told told,
        Who who,
        @Nullable String ticket,
        @Nullable Long after) {
    public record Who(String by, Instant at) {}
}
