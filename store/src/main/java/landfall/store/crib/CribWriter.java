// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import landfall.cards.crib.FlatJson;
import landfall.cards.crib.Told;
import landfall.history.Event;
import landfall.history.EventKind;
import landfall.history.History;
import landfall.history.Mark;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * Adds much at once inside one transaction. Whether events can happen was judged by whoever kept the records before.
 * What follows from them is folded as they come and written by {@link #end}, and now and then before it, so that the
 * memory it takes does not grow with what is added.
 */
public final class CribWriter {
    /** Things whose fold waits; a few kilobytes each. */
    private static final int MOST_OPEN = 8_000;

    private static final int MOST_UNSENT = 500;

    private final Handle handle;
    private final Writes writes;
    private final SeenTickets seen;
    private final PreparedStatement select;
    private final PreparedStatement lookUp;
    private final Map<Mark, Open> open = new HashMap<>();
    private final Set<Mark> unsent = new HashSet<>();

    /** A thing while events are added to it. */
    private static final class Open {
        private final Ledger ledger;
        private long seq;
        private boolean touched;

        Open(Ledger ledger) {
            this.ledger = ledger;
            this.seq = ledger.lastSeq();
        }
    }

    /** An event as a table tells it. */
    public record Entry(Told told, String by, Instant at, String ticket) {}

    /** @param seen of the whole import, which may take several transactions */
    public CribWriter(Handle handle, SeenTickets seen) {
        this.handle = handle;
        this.seen = seen;
        this.writes = Writes.of(handle);
        try {
            this.select = handle.getConnection().prepareStatement(Ledger.SELECT);
            this.lookUp =
                    handle.getConnection().prepareStatement("select seq from event where mark = ? and ticket = ?");
        } catch (SQLException e) {
            throw Bulk.fault(handle, e);
        }
    }

    public Optional<Item> item(Mark mark) {
        return Optional.ofNullable(open(mark)).map(found -> found.ledger.item());
    }

    /** Adds a thing with its first events, in the order of time; a mark that is taken is a fault of the caller. */
    public void add(Item item, List<Entry> first) {
        Ledger ledger = Ledger.fresh(item);
        List<Event> events = new ArrayList<>();
        for (Entry entry : first) {
            events.add(new Event(
                    events.size() + 1, entry.at(), entry.by(), entry.told().what()));
        }
        events.forEach(ledger::take);
        ledger.write(handle, writes);
        unsent.add(item.mark());
        for (int i = 0; i < events.size(); i++) {
            Entry entry = first.get(i);
            put(item.mark(), events.get(i), FlatJson.write(entry.told().fields()), entry.ticket());
        }
        if (unsent.size() >= MOST_UNSENT) {
            send();
        }
    }

    public void recard(Item item) {
        fold();
        ItemRows.recard(handle, item);
        RunRows.recard(handle, item);
    }

    /** Adds an event under the next number; nothing when its ticket is there already. */
    public boolean append(Mark mark, Entry entry) {
        Open thing = open(mark);
        if (thing == null) {
            throw new IllegalStateException("not in the crib: " + mark);
        }
        if (isThere(thing, mark, entry.ticket())) {
            return false;
        }
        Event event =
                new Event(++thing.seq, entry.at(), entry.by(), entry.told().what());
        put(mark, event, FlatJson.write(entry.told().fields()), entry.ticket());
        thing.ledger.take(event);
        thing.touched = true;
        room();
        return true;
    }

    /** Adds an event as it lay in another store; those of a thing come in the order of their numbers. */
    public void restore(CribScan.RawEvent raw) {
        Mark mark = new Mark(raw.mark());
        Open thing = open(mark);
        if (thing == null) {
            throw new IllegalStateException("not in the backup: " + mark);
        }
        EventKind kind = EventKind.valueOf(raw.words().kind().toUpperCase(Locale.ROOT));
        Event event = new Event(
                raw.seq(),
                raw.at(),
                raw.words().by(),
                Told.kept(kind, FlatJson.read(raw.words().fields())));
        put(mark, event, raw.words().fields(), raw.words().ticket());
        thing.seq = raw.seq();
        thing.ledger.take(event);
        thing.touched = true;
        room();
    }

    private void put(Mark mark, Event event, String fields, String ticket) {
        boolean full = writes.event()
                .row(
                        mark.text(),
                        event.seq(),
                        event.at().toEpochMilli(),
                        event.kind().word(),
                        event.by(),
                        fields,
                        ticket);
        if (full) {
            send();
        }
    }

    private void send() {
        writes.send();
        unsent.clear();
    }

    private void room() {
        if (open.size() > MOST_OPEN) {
            fold();
        }
    }

    /** Writes what follows from all that was added. */
    public void end() {
        fold();
        writes.close();
        try {
            select.close();
            lookUp.close();
        } catch (SQLException e) {
            throw Bulk.fault(handle, e);
        }
    }

    private void fold() {
        send();
        open.values().stream().filter(thing -> thing.touched).forEach(thing -> {
            Ledger ledger = thing.ledger;
            if (ledger.isUnknown()) {
                History history = EventRows.history(handle, ledger.item().mark());
                ledger.foldAnew(history);
            }
            ledger.write(handle, writes);
        });
        send();
        open.clear();
    }

    private @Nullable Open open(Mark mark) {
        Open there = open.get(mark);
        if (there != null) {
            return there;
        }
        if (unsent.contains(mark)) {
            send();
        }
        Ledger ledger = ledger(mark);
        if (ledger == null) {
            return null;
        }
        Open thing = new Open(ledger);
        open.put(mark, thing);
        return thing;
    }

    private @Nullable Ledger ledger(Mark mark) {
        try {
            select.setString(1, mark.text());
            try (ResultSet rows = select.executeQuery()) {
                return rows.next() ? Ledger.of(rows) : null;
            }
        } catch (SQLException e) {
            throw Bulk.fault(handle, e);
        }
    }

    /** What this import has added before is known by its ticket; what was there before may have to be looked up. */
    private boolean isThere(Open thing, Mark mark, String ticket) {
        boolean complete = thing.ledger.lastSeq() == 0 || seen.isComplete(handle);
        boolean added = seen.addedBefore(mark.text(), ticket);
        if (added) {
            send();
        }
        return (added || !complete) && lookUp(mark, ticket);
    }

    private boolean lookUp(Mark mark, String ticket) {
        try {
            lookUp.setString(1, mark.text());
            lookUp.setString(2, ticket);
            try (ResultSet rows = lookUp.executeQuery()) {
                return rows.next();
            }
        } catch (SQLException e) {
            throw Bulk.fault(handle, e);
        }
    }
}
