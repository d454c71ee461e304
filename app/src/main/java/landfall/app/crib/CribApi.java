// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import landfall.app.shell.Typed;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.card.Flat;
import landfall.cards.crib.DueDocument;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.Prospect;
import landfall.cards.crib.ProspectDocument;
import landfall.cards.crib.ShopLaws;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kinds;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.quantity.UnitSystem;
import landfall.store.crib.Crib;
import landfall.store.crib.Glance;
import landfall.store.crib.HandSet;
import landfall.store.crib.Item;
import landfall.store.crib.Logged;
import landfall.store.crib.Row;
import landfall.store.crib.Wanted;
import landfall.store.crib.Window;
import landfall.thread.callout.CallOuts;
import landfall.wear.Job;
import org.jspecify.annotations.Nullable;

/**
 * The crib for other programs: what {@code landfall crib list, show, add, log} and {@code due} say with {@code --json}.
 */
public final class CribApi {
    private static final int MOST_ROWS = 10_000;
    private static final int MOST_EVENTS = 200;
    private static final Form ANY = Form.of("body");
    private static final Field<ItemKind> KIND = Field.optional("kind", ItemForms.KIND, "tap");
    private static final Field<String> THREAD = Field.optional("thread", Kinds.TEXT, "M8x1.25");
    private static final Field<Boolean> ALL = Field.optional("all", Kinds.YES_NO, "yes");
    private static final Field<Boolean> DUE = Field.optional("due", Kinds.YES_NO, "yes");
    private static final Form LIST = Form.of("crib list", KIND, THREAD, ALL, DUE);
    private static final Form ADD = Form.of("crib add", KIND);

    private final CribDoor door;

    public CribApi(CribDoor door) {
        this.door = door;
    }

    /** Rows of the crib; with {@code due=yes} those that are due, soonest first. */
    public void list(Context ctx) {
        Answer<Entries> asked = Typed.of(ctx).then(typed -> LIST.judge(typed, UnitSystem.METRIC));
        Answer<Optional<String>> size = asked.then(entries -> size(entries.get(THREAD)));
        say(ctx, HttpStatus.OK, size.then(thread -> Answer.of(rows(asked.orThrow(), thread.orElse(null)))));
    }

    private static Answer<Optional<String>> size(Optional<String> thread) {
        return thread.isEmpty()
                ? Answer.of(Optional.empty())
                : CallOuts.read(thread.get())
                        .map(callOut -> Optional.of(callOut.withoutClass().normal()));
    }

    private String rows(Entries asked, @Nullable String size) {
        ItemKind kind = asked.get(KIND).orElse(null);
        if (asked.get(DUE).orElse(false)) {
            DueBoard.DueRows due = new DueBoard(door.crib(), door.due())
                    .rows(size, now().toLocalDate())
                    .of(kind);
            return DueText.json(due, now().toLocalDate());
        }
        Wanted wanted = new Wanted(kind, size, asked.get(ALL).orElse(false), MOST_ROWS);
        List<Row> rows = door.crib().list(wanted);
        long more = rows.size() < MOST_ROWS ? 0 : door.crib().count(wanted) - rows.size();
        List<HandSet> sets = rows.stream()
                .map(row -> row.item().handSet())
                .filter(name -> !name.isEmpty())
                .distinct()
                .map(door.crib()::set)
                .toList();
        return CribJson.rows(rows, sets, more);
    }

    /** One thing with its newest events, or with those before the number in {@code before}. */
    public void show(Context ctx) {
        with(
                ctx,
                kept -> Answer.of(CribJson.kept(kept, door.due().of(kept.item().mark()))),
                HttpStatus.OK);
    }

    /** What is due, all of it. */
    public void due(Context ctx) {
        Document board = new DueBoard(door.crib(), door.due()).document(now().toLocalDate());
        say(ctx, HttpStatus.OK, Answer.of(JsonAnswer.write(board)));
    }

    /** When one tap is due; with {@code holes} whether it comes through a job, with prices what is cheapest. */
    public void dueOf(Context ctx) {
        with(ctx, kept -> Typed.of(ctx).then(asked -> due(kept, asked)).map(JsonAnswer::write), HttpStatus.OK);
    }

    private Answer<Document> due(Glance kept, Map<String, String> asked) {
        Optional<ShopLaws.Found> found = door.due().of(kept.item().mark());
        if (found.isEmpty()) {
            return Answer.refused(new Finding(
                    "mark",
                    kept.item().mark().text(),
                    "has no due: it is no tap, it has ended, or nobody told what it cuts",
                    "tell holes that it cut, with their material"));
        }
        if (asked.isEmpty()) {
            return Answer.of(DueDocument.of(found.get(), null));
        }
        if (asked.keySet().equals(Set.of("holes"))
                && asked.getOrDefault("holes", "").matches("[1-9]\\d{0,7}")) {
            return Answer.of(
                    DueDocument.of(found.get(), new Job(Integer.parseInt(asked.getOrDefault("holes", "1")), null)));
        }
        var history = door.crib().find(kept.item().mark()).orElseThrow().history();
        return Prospect.of(found.get(), history, asked).map(ProspectDocument::of);
    }

    /** Adds a thing: {@code {"kind","mark","set","card":{..}}}; without a mark it gets the next number. */
    public void add(Context ctx) {
        Answer<Map<String, String>> body = Flat.read(ctx.body(), ANY);
        say(ctx, HttpStatus.CREATED, body.then(this::add).map(CribJson::added));
    }

    private Answer<Item> add(Map<String, String> body) {
        Map<String, String> card = new LinkedHashMap<>();
        Map<String, String> about = new LinkedHashMap<>(body);
        body.forEach((path, text) -> {
            if (path.startsWith("card.")) {
                card.put(path.substring("card.".length()), text);
                about.remove(path);
            }
        });
        String mark = Optional.ofNullable(about.remove("mark")).orElse("");
        String set = Optional.ofNullable(about.remove("set")).orElse("");
        Answer<ItemKind> kind = ADD.judge(about, UnitSystem.METRIC)
                .map(entries -> entries.get(KIND).orElse(ItemKind.TAP));
        Answer<Map<String, String>> lasting = kind.then(of -> ItemForms.lasting(of, card));
        Answer<Mark> read = mark.isEmpty() ? Answer.of(new Mark("")) : Mark.read(mark);
        List<Finding> findings = new ArrayList<>(lasting.findings());
        findings.addAll(read.findings());
        if (!findings.isEmpty()) {
            return Answer.refused(findings);
        }
        Crib crib = door.crib();
        return mark.isEmpty()
                ? Answer.of(crib.addNumbered(kind.orThrow(), set, lasting.orThrow()))
                : crib.add(new Item(read.orThrow(), kind.orThrow(), set, lasting.orThrow()));
    }

    /** Adds an event: {@code {"event","at","by","ticket",..fields of the event}}. */
    public void log(Context ctx) {
        with(ctx, kept -> Flat.read(ctx.body(), ANY).then(typed -> log(ctx, kept, typed)), HttpStatus.CREATED);
    }

    private Answer<String> log(Context ctx, Glance kept, Map<String, String> typed) {
        Answer<EventKind> kind = Entry.kind(typed);
        Answer<String> by = Signing.of(ctx, typed);
        Answer<Logged> logged = kind.then(of -> Entry.read(kept.item(), of, typed, by, now()))
                .then(saying -> door.crib().log(saying));
        return logged.map(CribJson::logged);
    }

    private void with(Context ctx, Function<Glance, Answer<String>> work, HttpStatus done) {
        Answer<Mark> mark = Mark.read(ctx.pathParam("mark"));
        if (!(mark instanceof Answer.Of<Mark> of)) {
            say(ctx, done, Answer.refused(mark.findings()));
            return;
        }
        String before = Optional.ofNullable(ctx.queryParam("before")).orElse("9".repeat(18));
        if (!before.matches("\\d{1,18}")) {
            say(
                    ctx,
                    done,
                    Answer.refused(new Finding(
                            "before", before, "is not the number of an event", "write a seq of an answer before")));
            return;
        }
        Optional<Glance> kept = door.crib().look(of.value(), new Window(Long.parseLong(before), MOST_EVENTS));
        if (kept.isEmpty()) {
            json(ctx, HttpStatus.NOT_FOUND, JsonAnswer.refusal(List.of(Crib.unknown(of.value()))));
        } else {
            say(ctx, done, work.apply(kept.get()));
        }
    }

    private static void say(Context ctx, HttpStatus done, Answer<String> answer) {
        if (answer instanceof Answer.Of<String> of) {
            json(ctx, done, of.value());
        } else {
            json(ctx, HttpStatus.BAD_REQUEST, JsonAnswer.refusal(answer.findings()));
        }
    }

    private static void json(Context ctx, HttpStatus status, String text) {
        ctx.status(status).contentType("application/json; charset=utf-8").result(text);
    }

    private ZonedDateTime now() {
        return ZonedDateTime.now(door.clock())
                .withZoneSameInstant(ZoneId.systemDefault())
                .truncatedTo(ChronoUnit.MILLIS);
    }
}
