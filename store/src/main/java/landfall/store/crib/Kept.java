// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.util.List;
import landfall.history.History;

/** One thing with all that happened to it. */
public record Kept(Item item, History history, List<KeptEvent> events) {
    public Kept {
        events = List.copyOf(events);
    }
}
