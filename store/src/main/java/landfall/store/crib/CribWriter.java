// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import landfall.cards.crib.FlatJson;
import landfall.cards.crib.Told;
import landfall.history.Event;
import landfall.history.History;
import landfall.history.Mark;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/**
 * Adds much at once inside one transaction. Events go in as they come; whether they can happen was judged by whoever
 * kept the records before. The folded columns are written by {@link #fold}, once for all events of a thing.
 */
public final class CribWriter {
    private static final int BATCH = 1000;

    private final Handle handle;
    private final Map<Mark, Long> last = new HashMap<>();
    private final Map<Mark, Set<String>> tickets = new HashMap<>();
    private PreparedBatch batch;
    private int waiting;

    public CribWriter(Handle handle) {
        this.handle = handle;
        this.batch = handle.prepareBatch(EventRows.INSERT);
    }

    public Optional<Item> item(Mark mark) {
        return ItemRows.find(handle, mark).map(Row::item);
    }

    /** A mark that is taken is a fault of the caller. */
    public void add(Item item) {
        if (!ItemRows.addIfFree(handle, Row.of(item, History.of(List.of()).standing()))) {
            throw new IllegalStateException("taken: " + item.mark());
        }
    }

    public void recard(Item item) {
        ItemRows.recard(handle, item);
    }

    /** Adds an event under the next number; nothing when its ticket is there already. */
    public boolean append(Mark mark, Told told, String by, Instant at, String ticket) {
        long seq = last.computeIfAbsent(mark, this::lastSeq) + 1;
        if (!tickets.computeIfAbsent(mark, this::ticketsOf).add(ticket)) {
            return false;
        }
        last.put(mark, seq);
        String fields = FlatJson.write(told.fields());
        restore(new CribScan.RawEvent(
                mark.text(), seq, at, new CribScan.Words(told.what().kind().word(), by, fields, ticket)));
        return true;
    }

    /** Adds an event as it lay in another store. */
    public void restore(CribScan.RawEvent event) {
        batch.bind("mark", event.mark())
                .bind("seq", event.seq())
                .bind("at", event.at().toEpochMilli())
                .bind("kind", event.words().kind())
                .bind("by", event.words().by())
                .bind("fields", event.words().fields())
                .bind("ticket", event.words().ticket())
                .add();
        if (++waiting == BATCH) {
            flush();
        }
    }

    /** Sends what waits. */
    public void flush() {
        if (waiting > 0) {
            batch.execute();
            batch.close();
            batch = handle.prepareBatch(EventRows.INSERT);
            waiting = 0;
        }
    }

    /** Writes the columns that follow from the events of a thing, and forgets it. */
    public void fold(Mark mark) {
        flush();
        Row row = ItemRows.find(handle, mark).orElseThrow();
        List<Event> events =
                EventRows.of(handle, mark).stream().map(KeptEvent::event).toList();
        Row folded = Row.of(row.item(), History.of(events).standing());
        if (!ItemRows.fold(handle, folded, row.seen().lastSeq())) {
            throw new IllegalStateException("another writer inside the transaction: " + mark);
        }
        last.remove(mark);
        tickets.remove(mark);
    }

    private Set<String> ticketsOf(Mark mark) {
        return new HashSet<>(handle.createQuery("select ticket from event where mark = :mark")
                .bind("mark", mark.text())
                .mapTo(String.class)
                .list());
    }

    private long lastSeq(Mark mark) {
        return ItemRows.find(handle, mark).orElseThrow().seen().lastSeq();
    }
}
