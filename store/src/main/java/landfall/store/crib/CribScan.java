// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;

/** A walk over every thing and every event, in the order of marks and numbers, in constant memory. */
public final class CribScan {
    private static final int FETCH = 500;

    private CribScan() {}

    /** An event as it lies in the store. */
    public record RawEvent(String mark, long seq, Instant at, Words words) {}

    public record Words(String kind, String by, String fields, String ticket) {}

    public static void things(Handle handle, Consumer<Row> each) {
        ItemRows.each(handle, each);
    }

    public static void events(Handle handle, Consumer<RawEvent> each) {
        handle.createQuery("select mark, seq, at, kind, by_whom, fields, ticket from event order by mark, seq")
                .setFetchSize(FETCH)
                .map((rows, context) -> new RawEvent(
                        rows.getString("mark"),
                        rows.getLong("seq"),
                        Instant.ofEpochMilli(rows.getLong("at")),
                        new Words(
                                rows.getString("kind"),
                                rows.getString("by_whom"),
                                rows.getString("fields"),
                                rows.getString("ticket"))))
                .useStream(all -> all.forEach(each));
    }

    /** A thing with all its events, and the tickets of the events by their numbers. */
    public static Whole whole(Handle handle, Row row) {
        Map<Long, String> tickets = new HashMap<>();
        handle.createQuery("select seq, ticket from event where mark = :mark")
                .bind("mark", row.item().mark().text())
                .map((rows, context) -> tickets.put(rows.getLong("seq"), rows.getString("ticket")))
                .list();
        return new Whole(Crib.look(handle, row, Window.newest(Integer.MAX_VALUE)), tickets);
    }

    /** @param tickets by the number of the event */
    public record Whole(Glance thing, Map<Long, String> tickets) {
        public Whole {
            tickets = Map.copyOf(tickets);
        }
    }

    /** The number of things that were ever entered: none for a new store. */
    public static long count(Handle handle) {
        return handle.createQuery("select count(*) from item").mapTo(Long.class).one();
    }
}
