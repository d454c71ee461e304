// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.util.List;
import java.util.Set;
import landfall.history.Standing;

/**
 * One thing, how it stands, and a part of what happened to it.
 *
 * @param events in the order of their numbers
 * @param takenBack numbers of events that do not hold
 * @param earlier how many events lie before these
 */
public record Glance(Item item, Standing standing, List<KeptEvent> events, Set<Long> takenBack, long earlier) {
    public Glance {
        events = List.copyOf(events);
        takenBack = Set.copyOf(takenBack);
    }

    public boolean isTakenBack(KeptEvent event) {
        return takenBack.contains(event.event().seq());
    }

    /** The number before which the earlier ones lie. */
    public long firstSeq() {
        return events.isEmpty() ? 0 : events.get(0).event().seq();
    }
}
