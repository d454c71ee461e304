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
    private static final int MOST_OPEN = 4_000;

    private static final int MOST_UNSENT = 500;

    /** Events whose tickets are remembered. */
    private static final int MOST_TICKETS = 200_000;

    private final Handle handle;
    private final Writes writes;
    private final PreparedStatement select;
    private final Map<Mark, Open> open = new HashMap<>();
    private final Set<Mark> unsent = new HashSet<>();
    private long tickets;

    /** A thing while events are added to it. */
    private static final class Open {
        private final Ledger ledger;
        private final Tickets tickets;
        private long seq;
        private boolean touched;

        Open(Ledger ledger, Tickets tickets) {
            this.ledger = ledger;
            this.tickets = tickets;
            this.seq = ledger.lastSeq();
        }
    }

    /** An event as a table tells it. */
    public record Entry(Told told, String by, Instant at, String ticket) {}

    public CribWriter(Handle handle) {
        this.handle = handle;
        this.writes = Writes.of(handle);
        try {
            this.select = handle.getConnection().prepareStatement(Ledger.SELECT);
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
        if (!thing.tickets.add(entry.ticket()) && isThere(mark, entry.ticket())) {
            return false;
        }
        tickets++;
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
        if (open.size() > MOST_OPEN || tickets > MOST_TICKETS) {
            fold();
        }
    }

    /** Writes what follows from all that was added. */
    public void end() {
        fold();
        writes.close();
        try {
            select.close();
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
        tickets = 0;
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
        Open thing = new Open(ledger, ledger.lastSeq() == 0 ? new Tickets() : ticketsOf(mark));
        tickets += thing.tickets.size();
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

    private Tickets ticketsOf(Mark mark) {
        Tickets there = new Tickets();
        handle.createQuery("select ticket from event where mark = :mark")
                .bind("mark", mark.text())
                .mapTo(String.class)
                .forEach(there::add);
        return there;
    }

    private boolean isThere(Mark mark, String ticket) {
        send();
        return EventRows.ofTicket(handle, mark, ticket).isPresent();
    }
}
