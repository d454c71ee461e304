// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import landfall.app.given.Cells;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.visitor.Visitor;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.crib.EventForms;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.store.StoreFault;
import landfall.store.crib.Crib;
import landfall.store.crib.Glance;
import landfall.store.crib.HandSet;
import landfall.store.crib.Item;
import landfall.store.crib.Logged;
import landfall.store.crib.Row;
import landfall.store.crib.Saying;
import landfall.store.crib.Wanted;
import landfall.store.crib.Window;
import org.jspecify.annotations.Nullable;

/** The page of one thing: how it stands, what happened to it, and a form for what happened now. */
public final class ThingPage {
    /** Events on one page. */
    private static final int MOST = 50;

    private final Shell shell;
    private final CribDoor door;

    public ThingPage(Shell shell, CribDoor door) {
        this.shell = shell;
        this.door = door;
    }

    public void show(Context ctx) {
        EventKind kind = kind(Optional.ofNullable(ctx.queryParam("event")).orElse(""));
        show(ctx, find(ctx), kind, Map.of(), List.of());
    }

    private Glance find(Context ctx) {
        Answer<Mark> mark = Mark.read(ctx.pathParam("mark"));
        Optional<Glance> kept =
                mark instanceof Answer.Of<Mark> of ? door.crib().look(of.value(), window(ctx)) : Optional.empty();
        return kept.orElseThrow(() -> new NotFoundResponse("no such mark"));
    }

    private Optional<HandSet> set(Glance kept) {
        String name = kept.item().handSet();
        return name.isEmpty() ? Optional.empty() : Optional.of(door.crib().set(name));
    }

    /** The newest events, or those before the number that the address tells. */
    private static Window window(Context ctx) {
        String before = Optional.ofNullable(ctx.queryParam("before")).orElse("");
        return before.matches("\\d{1,18}") ? new Window(Long.parseLong(before), MOST) : Window.newest(MOST);
    }

    private static EventKind kind(String word) {
        for (EventKind kind : EventKind.values()) {
            if (kind.word().equals(word)) {
                return kind;
            }
        }
        return EventKind.TAPPED;
    }

    private void show(Context ctx, Glance kept, EventKind asked, Map<String, String> typed, List<Finding> findings) {
        EventKind kind = kept.item().kind().knows(asked) ? asked : EventKind.MOVED;
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(kept.item().mark() + " " + kept.item().size(), Place.CRIB));
        values.put(Shell.FOUND, ThingLinks.subject(kept));
        ThingView.More more = more(ctx, kept);
        values.put("thing", new ThingView(kept, ZoneId.systemDefault(), more));
        values.put("kind", kind);
        values.put("cells", new Cells(EventForms.of(kind), typed, findings).rest());
        values.put("about", about(ctx, typed));
        values.put("findings", findings);
        values.put("visitor", Visitor.of(ctx));
        values.put("teaching", Teaching.of(ctx, door, kept, more.due()));
        if (!findings.isEmpty()) {
            ctx.status(HttpStatus.BAD_REQUEST);
        }
        shell.show(ctx, "crib-thing", values);
    }

    private ThingView.More more(Context ctx, Glance kept) {
        if (kept.item().kind() != ItemKind.TAP) {
            return new ThingView.More(List.of(), set(kept), Optional.empty(), done(ctx));
        }
        List<Item> fixtures = door.crib().list(new Wanted(ItemKind.FIXTURE, null, false, MOST)).stream()
                .map(Row::item)
                .toList();
        return new ThingView.More(fixtures, set(kept), door.due().of(kept.item().mark()), done(ctx));
    }

    private static @Nullable EventKind done(Context ctx) {
        String word = Optional.ofNullable(ctx.queryParam("done")).orElse("");
        return EventForms.kind(word) instanceof Answer.Of<EventKind> of ? of.value() : null;
    }

    /** Who says it and when, and a name for the request, so that a form sent twice counts once. */
    private static Map<String, String> about(Context ctx, Map<String, String> typed) {
        Map<String, String> about = new HashMap<>();
        about.put("by", typed.getOrDefault("by", Signing.usual(ctx)));
        about.put("at", typed.getOrDefault("at", ""));
        about.put("ticket", typed.getOrDefault("ticket", UUID.randomUUID().toString()));
        return about;
    }

    /** Adds the event that the form tells; what is refused stands in the form again. */
    public void log(Context ctx) {
        Map<String, String> typed = FormTyped.of(ctx);
        Answer<EventKind> told = Entry.kind(typed);
        EventKind kind = told instanceof Answer.Of<EventKind> of ? of.value() : EventKind.TAPPED;
        List<Finding> findings = new ArrayList<>(told.findings());
        if (kind == EventKind.CORRECTED) {
            findings.add(new Finding(
                    "event",
                    kind.word(),
                    "is not written down here",
                    "take an event back where it stands in the story"));
        }
        log(ctx, kind, typed, findings);
    }

    /** Takes an event back. */
    public void takeBack(Context ctx) {
        log(ctx, EventKind.CORRECTED, FormTyped.of(ctx), List.of());
    }

    private void log(Context ctx, EventKind kind, Map<String, String> typed, List<Finding> before) {
        Glance kept = find(ctx);
        Answer<String> by = Signing.of(ctx, typed);
        Answer<Logged> written = before.isEmpty()
                ? Entry.read(kept.item(), kind, typed, by, now()).then(this::write)
                : Answer.refused(before);
        if (written instanceof Answer.Of<Logged> of) {
            Signing.remember(ctx, by.orThrow());
        }
        if (Shell.asksForEntryOnly(ctx)) {
            ctx.status(written.findings().isEmpty() ? HttpStatus.OK : HttpStatus.BAD_REQUEST);
            ctx.contentType("application/json; charset=utf-8")
                    .result(
                            written instanceof Answer.Of<Logged> of
                                    ? CribJson.entered(of.value(), page(kept, kind))
                                    : JsonAnswer.refusal(written.findings()));
        } else if (written.findings().isEmpty()) {
            ctx.redirect(page(kept, kind), HttpStatus.SEE_OTHER);
        } else {
            show(ctx, find(ctx), kind, typed, written.findings());
        }
    }

    private static String page(Glance kept, EventKind done) {
        return "/crib/" + kept.item().mark() + "?done=" + done.word();
    }

    private Answer<Logged> write(Saying saying) {
        try {
            Crib crib = door.crib();
            return crib.log(saying);
        } catch (StoreFault e) {
            return Answer.refused(e.finding());
        }
    }

    private ZonedDateTime now() {
        return ZonedDateTime.now(door.clock())
                .withZoneSameInstant(ZoneId.systemDefault())
                .truncatedTo(ChronoUnit.MILLIS);
    }
}
