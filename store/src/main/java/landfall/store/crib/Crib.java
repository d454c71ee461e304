// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cards.crib.GaugeDue;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.Event;
import landfall.history.History;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.history.Standing;
import landfall.store.Store;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** The things that a shop keeps, and what happened to them. */
public final class Crib {
    private final Store store;

    public Crib(Store store) {
        this.store = store;
    }

    /** Adds a thing; a mark that is taken is refused. */
    public Answer<Item> add(Item item) {
        return store.write(handle -> addIfFree(handle, item)
                ? Answer.of(item)
                : Answer.refused(new Finding(
                        "mark",
                        item.mark().text(),
                        "is the mark of another thing already",
                        "look at it with landfall crib show " + item.mark() + ", or choose another mark")));
    }

    /** Adds a thing under the next number of its kind. */
    public Item addNumbered(ItemKind kind, String handSet, Map<String, String> card) {
        return store.write(handle -> {
            Numbers numbers = new Numbers(handle);
            while (true) {
                Item item = new Item(numbers.next(kind), kind, handSet, card);
                if (addIfFree(handle, item)) {
                    return item;
                }
            }
        });
    }

    private static boolean addIfFree(Handle handle, Item item) {
        if (!ItemRows.addIfFree(handle, Row.of(item, Standing.NEW))) {
            return false;
        }
        Writes writes = Writes.of(handle);
        Ledger.fresh(item).writeRuns(handle, writes);
        writes.send();
        writes.close();
        return true;
    }

    /** Writes another card for a thing; its events stay. */
    public boolean recard(Item item) {
        return store.write(handle -> {
            RunRows.recard(handle, item);
            return ItemRows.recard(handle, item);
        });
    }

    /** One thing with all that happened to it; for a look at it {@link #look} is quicker. */
    public Optional<Kept> find(Mark mark) {
        return store.read(handle -> ItemRows.find(handle, mark).map(row -> {
            List<KeptEvent> events = EventRows.of(handle, mark);
            return new Kept(row.item(), History.of(bare(events)), events);
        }));
    }

    /** One thing as it was entered, inside a transaction that does more. */
    public static Optional<Item> item(Handle handle, Mark mark) {
        return ItemRows.find(handle, mark).map(Row::item);
    }

    /** One thing as it stands, with part of what happened to it. */
    public Optional<Glance> look(Mark mark, Window window) {
        return store.read(handle -> ItemRows.find(handle, mark).map(row -> look(handle, row, window)));
    }

    static Glance look(Handle handle, Row row, Window window) {
        Mark mark = row.item().mark();
        List<KeptEvent> events = EventRows.before(handle, mark, window);
        long first = events.isEmpty() ? 0 : events.get(0).event().seq();
        Standing standing =
                row.current() ? row.standing() : EventRows.history(handle, mark).standing();
        return new Glance(
                row.item(),
                standing,
                events,
                EventRows.takenBack(handle, mark),
                EventRows.countBefore(handle, mark, first));
    }

    /** One thing as a list shows it. */
    public Optional<Row> row(Mark mark) {
        return store.read(handle -> ItemRows.find(handle, mark));
    }

    /** How many things there are of the wanted, however many the list may hold. */
    public long count(Wanted wanted) {
        return store.read(handle -> ItemRows.count(handle, wanted));
    }

    /** The taps of a hand set; none where nobody entered one. */
    public HandSet set(String name) {
        return store.read(handle -> new HandSet(name, ItemRows.ofSet(handle, name)));
    }

    /**
     * Gauges whose calibration ends by that day or has ended, the first at the head.
     *
     * @param size call-out without class; null for all
     */
    public List<GaugeDue> calibrations(@Nullable String size, LocalDate until) {
        return store.read(handle -> ItemRows.calibrations(handle, size, until));
    }

    /** How many gauges there are of which no calibration was ever told. */
    public int gaugesWithoutCalibration() {
        return store.read(ItemRows::gaugesWithoutCalibration);
    }

    public List<Row> list(Wanted wanted) {
        return store.read(handle -> ItemRows.list(handle, wanted));
    }

    private static List<Event> bare(List<KeptEvent> events) {
        return events.stream().map(KeptEvent::event).toList();
    }

    /** Adds an event, or says why it cannot be. */
    public Answer<Logged> log(Saying saying) {
        return store.write(handle -> log(handle, saying));
    }

    /** The same inside a transaction that does more. */
    public static Answer<Logged> log(Handle handle, Saying saying) {
        ItemRows.hold(handle, saying.mark());
        Optional<Ledger> found = Ledger.of(handle, saying.mark());
        if (found.isEmpty()) {
            return Answer.refused(unknown(saying.mark()));
        }
        Ledger ledger = found.get();
        Optional<KeptEvent> there =
                saying.ticket() == null ? Optional.empty() : EventRows.ofTicket(handle, saying.mark(), saying.ticket());
        if (there.isPresent()) {
            return Answer.of(new Logged(ledger.item(), standing(handle, ledger), there.get()));
        }
        long last = ledger.lastSeq();
        if (saying.after() != null && saying.after() != last) {
            return Answer.refused(meanwhile(handle, saying));
        }
        KeptEvent event = new KeptEvent(
                new Event(
                        last + 1,
                        saying.who().at(),
                        saying.who().by(),
                        saying.told().what()),
                saying.told().fields());
        Optional<Finding> against = against(handle, ledger, event);
        if (against.isPresent()) {
            return Answer.refused(against.get());
        }
        Writes writes = Writes.of(handle);
        writes.event().row(EventRows.values(saying, last + 1));
        ledger.write(handle, writes);
        writes.send();
        writes.close();
        return Answer.of(new Logged(ledger.item(), ledger.standing(), event));
    }

    private static Standing standing(Handle handle, Ledger ledger) {
        return ledger.isUnknown()
                ? EventRows.history(handle, ledger.item().mark()).standing()
                : ledger.standing();
    }

    /** What speaks against the event; nothing does, and it is folded in. */
    private static Optional<Finding> against(Handle handle, Ledger ledger, KeptEvent event) {
        ItemKind kind = ledger.item().kind();
        if (ledger.follows(event.event())) {
            Optional<Finding> never = History.never(kind, event.event().what());
            if (never.isEmpty()) {
                ledger.take(event.event());
            }
            return never;
        }
        List<Event> events =
                new ArrayList<>(bare(EventRows.of(handle, ledger.item().mark())));
        Optional<Finding> against =
                History.of(events).against(kind, event.event().what());
        if (against.isEmpty()) {
            events.add(event.event());
            ledger.foldAnew(History.of(events));
        }
        return against;
    }

    private static Finding meanwhile(Handle handle, Saying saying) {
        long after = saying.after() == null ? 0 : saying.after();
        List<String> since = EventRows.since(handle, saying.mark(), after).stream()
                .map(KeptEvent::event)
                .map(event -> "%d %s by %s".formatted(event.seq(), event.kind().word(), event.by()))
                .toList();
        return new Finding(
                "after",
                String.valueOf(after),
                since.isEmpty()
                        ? "is not the number of an event of this mark"
                        : "is no longer the last: meanwhile " + String.join(", ", since),
                "look at " + saying.mark() + " again, and say it again if it still holds");
    }

    /** What is said of a mark that nobody entered. */
    public static Finding unknown(Mark mark) {
        return new Finding(
                "mark", mark.text(), "is not in the crib", "look with landfall crib list, or add it with crib add");
    }
}
