// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.given.Cells;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.app.visitor.Visitor;
import landfall.cards.crib.ItemForms;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.store.StoreFault;
import landfall.store.crib.Crib;
import landfall.store.crib.Item;
import landfall.store.crib.Row;
import landfall.store.crib.Wanted;
import landfall.thread.callout.CallOuts;

/** The page of all that the shop keeps: look for it, add to it. */
public final class CribPage {
    private static final int MOST = 500;
    private final Shell shell;
    private final CribDoor door;

    public CribPage(Shell shell, CribDoor door) {
        this.shell = shell;
        this.door = door;
    }

    /** The list; {@code thread} keeps one size, {@code all} shows what is broken or scrapped too. */
    public void list(Context ctx) {
        list(ctx, Map.of(), List.of());
    }

    private void list(Context ctx, Map<String, String> typed, List<Finding> findings) {
        Answer<Map<String, String>> query = Typed.of(ctx);
        Map<String, String> asked = query instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        String thread = asked.getOrDefault("thread", "");
        Answer<String> size = thread.isEmpty()
                ? Answer.of("")
                : CallOuts.read(thread).map(callOut -> callOut.withoutClass().normal());
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(size.findings());
        try {
            boolean whole = asked.containsKey("all");
            List<Row> rows = size instanceof Answer.Of<String> of ? rows(of.value(), whole) : List.of();
            show(ctx, typed, all, found(rows, thread, whole, size.findings().isEmpty() ? size.orThrow() : ""));
        } catch (StoreFault e) {
            all.add(e.finding());
            show(ctx, typed, all, new Found(List.of(), thread, List.of(), 0));
        }
    }

    /** What a list was asked for and what it holds. */
    public record Found(List<Row> rows, String thread, List<String> sets, long more) {
        public Found {
            rows = List.copyOf(rows);
            sets = List.copyOf(sets);
        }
    }

    /** With what is to be said of hand sets that are not whole. */
    private Found found(List<Row> rows, String thread, boolean whole, String size) {
        Crib crib = door.crib();
        List<String> sets = rows.stream()
                .map(row -> row.item().handSet())
                .filter(name -> !name.isEmpty())
                .distinct()
                .map(crib::set)
                .filter(set -> !set.isWhole())
                .map(CribText::set)
                .toList();
        Wanted wanted = new Wanted(null, size.isEmpty() ? null : size, whole, MOST);
        return new Found(rows, thread, sets, rows.size() < MOST ? 0 : crib.count(wanted) - rows.size());
    }

    private List<Row> rows(String size, boolean whole) {
        return door.crib().list(new Wanted(null, size.isEmpty() ? null : size, whole, MOST));
    }

    private void show(Context ctx, Map<String, String> typed, List<Finding> findings, Found found) {
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(Words.of("title.crib"), Place.CRIB));
        values.put("found", found);
        values.put("cells", new Cells(ItemForms.FIRST, typed, findings).of("thread", "mark"));
        values.put("findings", findings);
        values.put("visitor", Visitor.of(ctx));
        if (!findings.isEmpty()) {
            ctx.status(HttpStatus.BAD_REQUEST);
        }
        shell.show(ctx, "crib", values);
    }

    /** Adds a tap by its call-out, then shows it. */
    public void add(Context ctx) {
        Map<String, String> typed = FormTyped.of(ctx);
        Map<String, String> card = new LinkedHashMap<>(typed);
        String mark = card.getOrDefault("mark", "");
        card.remove("mark");
        List<Finding> findings = new ArrayList<>();
        Answer<Map<String, String>> lasting = ItemForms.lasting(ItemKind.TAP, card);
        findings.addAll(lasting.findings());
        Answer<Mark> read = mark.isEmpty() ? Answer.of(new Mark("")) : Mark.read(mark);
        findings.addAll(read.findings());
        if (!findings.isEmpty()) {
            list(ctx, typed, findings);
            return;
        }
        Answer<Item> added = add(read.orThrow(), lasting.orThrow());
        if (added instanceof Answer.Of<Item> of) {
            ctx.redirect("/crib/" + of.value().mark(), HttpStatus.SEE_OTHER);
        } else {
            list(ctx, typed, added.findings());
        }
    }

    private Answer<Item> add(Mark mark, Map<String, String> card) {
        try {
            Crib crib = door.crib();
            return mark.text().isEmpty()
                    ? Answer.of(crib.addNumbered(ItemKind.TAP, "", card))
                    : crib.add(new Item(mark, ItemKind.TAP, "", card));
        } catch (StoreFault e) {
            return Answer.refused(e.finding());
        }
    }
}
