// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.Event;
import landfall.history.Happening;
import landfall.history.History;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.store.Store;
import org.jdbi.v3.core.Handle;

/** The things that a shop keeps, and what happened to them. */
public final class Crib {
    private final Store store;

    public Crib(Store store) {
        this.store = store;
    }

    /** Adds a thing; a mark that is taken is refused. */
    public Answer<Item> add(Item item) {
        return store.write(handle -> add(handle, item));
    }

    /** Adds a thing under the next number of its kind. */
    public Item addNumbered(ItemKind kind, String handSet, Map<String, String> card) {
        return store.write(handle -> {
            Numbers numbers = new Numbers(handle);
            while (true) {
                Item item = new Item(numbers.next(kind), kind, handSet, card);
                if (ItemRows.addIfFree(
                        handle, Row.of(item, History.of(List.of()).standing()))) {
                    return item;
                }
            }
        });
    }

    static Answer<Item> add(Handle handle, Item item) {
        Row row = Row.of(item, History.of(List.of()).standing());
        return ItemRows.addIfFree(handle, row)
                ? Answer.of(item)
                : Answer.refused(new Finding(
                        "mark",
                        item.mark().text(),
                        "is the mark of another thing already",
                        "look at it with landfall crib show " + item.mark() + ", or choose another mark"));
    }

    /** Writes another card for a thing; its events stay. */
    public boolean recard(Item item) {
        return store.write(handle -> ItemRows.recard(handle, item));
    }

    public Optional<Kept> find(Mark mark) {
        return store.read(handle -> find(handle, mark));
    }

    public List<Row> list(Wanted wanted) {
        return store.read(handle -> ItemRows.list(handle, wanted));
    }

    private static Optional<Kept> find(Handle handle, Mark mark) {
        return ItemRows.find(handle, mark).map(row -> {
            List<KeptEvent> events = EventRows.of(handle, mark);
            return new Kept(row.item(), History.of(bare(events)), events);
        });
    }

    private static List<Event> bare(List<KeptEvent> events) {
        return events.stream().map(KeptEvent::event).toList();
    }

    /** Adds an event, or says why it cannot be; the answer is the thing as it then stands. */
    public Answer<Kept> log(Saying saying) {
        return store.write(handle -> log(handle, saying));
    }

    private static Answer<Kept> log(Handle handle, Saying saying) {
        ItemRows.hold(handle, saying.mark());
        Optional<Kept> found = find(handle, saying.mark());
        if (found.isEmpty()) {
            return Answer.refused(unknown(saying.mark()));
        }
        Kept before = found.get();
        if (saying.ticket() != null && EventRows.isThere(handle, saying.mark(), saying.ticket())) {
            return Answer.of(before);
        }
        Optional<Finding> against = against(before, saying);
        if (against.isPresent()) {
            return Answer.refused(against.get());
        }
        long last = before.history().standing().last().seq();
        Kept after = after(before, saying, last + 1);
        if (!ItemRows.fold(handle, Row.of(before.item(), after.history().standing()), last)) {
            throw new IllegalStateException("another writer while it was held: " + saying.mark());
        }
        EventRows.add(handle, saying, last + 1);
        return Answer.of(after);
    }

    private static Kept after(Kept before, Saying saying, long seq) {
        Happening what = saying.told().what();
        List<KeptEvent> events = new ArrayList<>(before.events());
        events.add(new KeptEvent(
                new Event(seq, saying.who().at(), saying.who().by(), what),
                saying.told().fields()));
        return new Kept(before.item(), History.of(bare(events)), events);
    }

    private static Optional<Finding> against(Kept before, Saying saying) {
        long last = before.history().standing().last().seq();
        if (saying.after() != null && saying.after() != last) {
            return Optional.of(meanwhile(before, saying.after()));
        }
        return before.history().against(before.item().kind(), saying.told().what());
    }

    private static Finding meanwhile(Kept before, long after) {
        List<String> since = before.events().stream()
                .map(KeptEvent::event)
                .filter(event -> event.seq() > after)
                .map(event -> "%d %s by %s".formatted(event.seq(), event.kind().word(), event.by()))
                .toList();
        return new Finding(
                "after",
                String.valueOf(after),
                since.isEmpty()
                        ? "is not the number of an event of this mark"
                        : "is no longer the last: meanwhile " + String.join(", ", since),
                "look at " + before.item().mark() + " again, and say it again if it still holds");
    }

    /** What is said of a mark that nobody entered. */
    public static Finding unknown(Mark mark) {
        return new Finding(
                "mark", mark.text(), "is not in the crib", "look with landfall crib list, or add it with crib add");
    }
}
