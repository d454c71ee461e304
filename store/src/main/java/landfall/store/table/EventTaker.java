// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import landfall.cards.crib.EventForms;
import landfall.cards.crib.FlatJson;
import landfall.cards.crib.Moments;
import landfall.cards.crib.Told;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.quantity.UnitSystem;
import landfall.store.crib.Crib;
import landfall.store.crib.CribWriter;
import landfall.store.crib.Item;
import org.jdbi.v3.core.Handle;

/**
 * Rows that tell events: mark, event, at, by, ticket and the event's own fields. A row without a ticket gets one made
 * of what it tells, so that a table read twice adds nothing.
 */
final class EventTaker implements TableIn.RowTaker {
    private static final Field<EventKind> EVENT = Field.needed(Columns.EVENT, EventForms.KIND, "tapped");
    private static final Form EVENT_FORM = Form.of("table", EVENT);

    /** Things and rows after which columns are folded; the memory of so many is some tens of megabytes at most. */
    private static final int MOST_OPEN = 20_000;

    private static final int MOST_ROWS = 50_000;

    private final CribWriter crib;
    private final Wish wish;
    private final Map<Mark, About> open = new HashMap<>();
    private int rowsOpen;

    private record About(ItemKind kind, UnitSystem bare) {}

    EventTaker(Handle handle, Wish wish) {
        this.crib = new CribWriter(handle);
        this.wish = wish;
    }

    @Override
    public List<Finding> take(Line line, Report report) {
        Answer<Mark> mark = Mark.read(line.cell("mark"));
        if (!(mark instanceof Answer.Of<Mark> of)) {
            return mark.findings();
        }
        Optional<About> about = about(of.value());
        if (about.isEmpty()) {
            return List.of(Crib.unknown(of.value()));
        }
        Answer<EventKind> kind = EVENT_FORM
                .judge(Map.of(Columns.EVENT, line.cell(Columns.EVENT)), UnitSystem.METRIC)
                .map(entries -> entries.need(EVENT));
        return kind instanceof Answer.Of<EventKind> known
                ? take(line, of.value(), about.get(), known.value(), report)
                : kind.findings();
    }

    private List<Finding> take(Line line, Mark mark, About about, EventKind kind, Report report) {
        if (!about.kind().knows(kind)) {
            return List.of(new Finding(
                    Columns.EVENT,
                    kind.word(),
                    "does not happen to a " + about.kind().word(),
                    "look at the mark and at the event"));
        }
        Answer<Instant> at = line.cell("at").isEmpty()
                ? Answer.of(wish.now().toInstant())
                : Moments.read("at", line.cell("at"), wish.now());
        Map<String, String> typed = new LinkedHashMap<>(line.cells());
        Columns.OF_EVENTS.forEach(typed::remove);
        Answer<Told> told = Told.read(kind, typed, about.bare());
        if (!(at instanceof Answer.Of<Instant> when) || !(told instanceof Answer.Of<Told> good)) {
            return at.findings().isEmpty() ? told.findings() : at.findings();
        }
        String by = line.cell("by").isEmpty() ? wish.by() : line.cell("by");
        String ticket =
                line.cell("ticket").isEmpty() ? ticket(line.cell("at"), kind, by, good.value()) : line.cell("ticket");
        if (crib.append(mark, good.value(), by, when.value(), ticket)) {
            report.added();
            rowsOpen++;
        } else {
            report.unchanged();
        }
        return List.of();
    }

    private Optional<About> about(Mark mark) {
        About known = open.get(mark);
        if (known != null) {
            return Optional.of(known);
        }
        Optional<Item> item = crib.item(mark);
        if (item.isEmpty()) {
            return Optional.empty();
        }
        if (open.size() == MOST_OPEN || rowsOpen >= MOST_ROWS) {
            end();
        }
        About about = new About(item.get().kind(), item.get().bare());
        open.put(mark, about);
        return Optional.of(about);
    }

    /** Two like events of one moment are one; a table that means two gives them tickets. */
    private static String ticket(String at, EventKind kind, String by, Told told) {
        return Ticket.of(at + '\n' + kind.word() + '\n' + by + '\n' + FlatJson.write(new TreeMap<>(told.fields())));
    }

    @Override
    public void end() {
        open.keySet().forEach(crib::fold);
        open.clear();
        rowsOpen = 0;
        crib.flush();
    }
}
