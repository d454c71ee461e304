// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.Told;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.quantity.UnitSystem;
import landfall.store.crib.CribWriter;
import landfall.store.crib.Item;
import landfall.store.crib.SeenTickets;
import org.jdbi.v3.core.Handle;

/** Rows that tell things: mark, kind, set, place, price, supplier and whatever their cards hold. */
final class ThingTaker implements TableIn.RowTaker {
    private static final Field<ItemKind> KIND = Field.optional("kind", ItemForms.KIND, "tap");
    private static final Form KIND_FORM = Form.of("table", KIND);

    private final CribWriter crib;
    private final Wish wish;

    ThingTaker(Handle handle, Wish wish, SeenTickets seen) {
        this.crib = new CribWriter(handle, seen);
        this.wish = wish;
    }

    @Override
    public List<Finding> take(Line line, Report report) {
        Answer<Mark> mark = line.mark();
        Answer<ItemKind> kind = KIND_FORM
                .judge(Map.of("kind", line.cell("kind")), UnitSystem.METRIC)
                .map(entries -> entries.get(KIND).orElse(ItemKind.TAP));
        if (!(mark instanceof Answer.Of<Mark> marked) || !(kind instanceof Answer.Of<ItemKind> kinded)) {
            return mark.findings().isEmpty() ? kind.findings() : mark.findings();
        }
        Map<String, String> typed = new LinkedHashMap<>(line.cells());
        Columns.OF_THINGS.forEach(typed::remove);
        Answer<Map<String, String>> card = ItemForms.lasting(kinded.value(), typed);
        Answer<Map<EventKind, Told>> first = first(line);
        if (!(card instanceof Answer.Of<Map<String, String>> good)
                || !(first instanceof Answer.Of<Map<EventKind, Told>> told)) {
            return card.findings().isEmpty() ? first.findings() : card.findings();
        }
        return put(new Item(marked.value(), kinded.value(), line.cell("set"), good.value()), told.value(), report);
    }

    @Override
    public void end(Report report) {
        crib.end();
    }

    private List<Finding> put(Item item, Map<EventKind, Told> first, Report report) {
        Item there = crib.item(item.mark()).orElse(null);
        if (there == null) {
            Instant now = wish.now().toInstant();
            List<CribWriter.Entry> entries = new ArrayList<>();
            first.forEach(
                    (kind, told) -> entries.add(new CribWriter.Entry(told, wish.by(), now, "imported " + kind.word())));
            crib.add(item, entries);
            report.added();
            return List.of();
        }
        if (there.equals(item)) {
            report.unchanged();
            return List.of();
        }
        if (wish.how().replace() && there.kind() == item.kind()) {
            crib.recard(item);
            report.replaced();
            return List.of();
        }
        return List.of(new Finding(
                "mark",
                item.mark().text(),
                "is in the crib with another card",
                there.kind() == item.kind()
                        ? "give it another mark, or write --replace for the card of the table"
                        : "give it another mark: it is the mark of a "
                                + there.kind().word()));
    }

    /** What a table of things tells beside the card: where it lies and what it cost. */
    private static Answer<Map<EventKind, Told>> first(Line line) {
        Map<EventKind, Told> all = new LinkedHashMap<>();
        Map<String, String> bought = new LinkedHashMap<>();
        List.of("price", "supplier").forEach(name -> {
            if (!line.cell(name).isEmpty()) {
                bought.put(name, line.cell(name));
            }
        });
        if (!bought.isEmpty()) {
            Answer<Told> told = Told.read(EventKind.BOUGHT, bought, UnitSystem.METRIC);
            if (!(told instanceof Answer.Of<Told> of)) {
                return Answer.refused(told.findings());
            }
            all.put(EventKind.BOUGHT, of.value());
        }
        if (!line.cell("place").isEmpty()) {
            Answer<Told> told = Told.read(EventKind.MOVED, Map.of("place", line.cell("place")), UnitSystem.METRIC);
            if (!(told instanceof Answer.Of<Told> of)) {
                return Answer.refused(told.findings());
            }
            all.put(EventKind.MOVED, of.value());
        }
        return Answer.of(all);
    }
}
