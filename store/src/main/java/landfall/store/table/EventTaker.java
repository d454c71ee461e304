// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import landfall.cards.crib.EventForms;
import landfall.cards.crib.FlatJson;
import landfall.cards.crib.Told;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.EventKind;
import landfall.history.Mark;
import landfall.quantity.UnitSystem;
import landfall.store.crib.Crib;
import landfall.store.crib.CribWriter;
import landfall.store.crib.Item;
import landfall.store.crib.SeenTickets;
import org.jdbi.v3.core.Handle;

/**
 * Rows that tell events: mark, event, at, by, ticket and the event's own fields. A row without a ticket gets one made
 * of what it tells, so that a table read twice adds nothing.
 */
final class EventTaker implements TableIn.RowTaker {
    private static final Field<EventKind> EVENT = Field.needed(Columns.EVENT, EventForms.KIND, "tapped");
    private static final Form EVENT_FORM = Form.of("table", EVENT);

    private static final Map<String, EventKind> KINDS =
            Arrays.stream(EventKind.values()).collect(Collectors.toMap(EventKind::word, kind -> kind));

    private static final int LATELY = 4000;

    private final CribWriter crib;
    private final Wish wish;
    private final Map<Saying, Answer<Told>> lately = new LinkedHashMap<>(64, 0.75F, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Saying, Answer<Told>> eldest) {
            return size() > LATELY;
        }
    };

    private final Map<String, UnitSystem> bare = new HashMap<>();

    private record Saying(EventKind kind, Map<String, String> typed, UnitSystem bare) {}

    EventTaker(Handle handle, Wish wish, SeenTickets seen) {
        this.crib = new CribWriter(handle, seen);
        this.wish = wish;
    }

    @Override
    public List<Finding> take(Line line, Report report) {
        Answer<Mark> mark = line.mark();
        if (!(mark instanceof Answer.Of<Mark> of)) {
            return mark.findings();
        }
        Optional<Item> item = crib.item(of.value());
        if (item.isEmpty()) {
            return List.of(Crib.unknown(of.value()));
        }
        Answer<EventKind> kind = kind(line.cell(Columns.EVENT));
        return kind instanceof Answer.Of<EventKind> known
                ? take(line, item.get(), known.value(), report)
                : kind.findings();
    }

    private static Answer<EventKind> kind(String word) {
        EventKind known = KINDS.get(word);
        return known != null
                ? Answer.of(known)
                : EVENT_FORM
                        .judge(Map.of(Columns.EVENT, word), UnitSystem.METRIC)
                        .map(entries -> entries.need(EVENT));
    }

    private List<Finding> take(Line line, Item item, EventKind kind, Report report) {
        if (!item.kind().knows(kind)) {
            return List.of(new Finding(
                    Columns.EVENT,
                    kind.word(),
                    "does not happen to a " + item.kind().word(),
                    "look at the mark and at the event"));
        }
        Answer<Instant> at = line.at();
        Map<String, String> typed = new LinkedHashMap<>(line.cells());
        Columns.OF_EVENTS.forEach(typed::remove);
        Answer<Told> told = told(new Saying(kind, typed, bare(item)));
        if (!(at instanceof Answer.Of<Instant> when) || !(told instanceof Answer.Of<Told> good)) {
            return at.findings().isEmpty() ? told.findings() : at.findings();
        }
        String by = line.cell("by").isEmpty() ? wish.by() : line.cell("by");
        String ticket =
                line.cell("ticket").isEmpty() ? ticket(line.cell("at"), kind, by, good.value()) : line.cell("ticket");
        if (crib.append(item.mark(), new CribWriter.Entry(good.value(), by, when.value(), ticket))) {
            report.added();
        } else {
            report.unchanged();
        }
        return List.of();
    }

    private UnitSystem bare(Item item) {
        if (bare.size() > LATELY) {
            bare.clear();
        }
        return bare.computeIfAbsent(item.card().getOrDefault("thread", ""), thread -> item.bare());
    }

    /** Shops say the same again and again; what was judged lately is not judged anew. */
    private Answer<Told> told(Saying saying) {
        Answer<Told> known = lately.get(saying);
        if (known == null) {
            known = Told.read(saying.kind, saying.typed, saying.bare);
            lately.put(saying, known);
        }
        return known;
    }

    /** Two like events of one moment are one; a table that means two gives them tickets. */
    private static String ticket(String at, EventKind kind, String by, Told told) {
        return Ticket.of(at + '\n' + kind.word() + '\n' + by + '\n' + FlatJson.write(new TreeMap<>(told.fields())));
    }

    @Override
    public void end(Report report) {
        crib.end();
    }
}
