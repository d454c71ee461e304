// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.util.Optional;
import java.util.Set;
import landfall.history.Mark;
import org.jdbi.v3.core.Handle;

/** Events by the tickets that named their requests: the same in every store that they are restored into. */
public final class TicketRows {
    private TicketRows() {}

    public static Optional<KeptEvent> event(Handle handle, Mark mark, String ticket) {
        return EventRows.ofTicket(handle, mark, ticket);
    }

    /** Numbers of the events of a thing that were taken back. */
    public static Set<Long> takenBack(Handle handle, Mark mark) {
        return EventRows.takenBack(handle, mark);
    }
}
