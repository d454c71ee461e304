// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.SameSite;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import landfall.app.given.Cells;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.cards.crib.EventForms;
import landfall.cards.crib.Moments;
import landfall.cards.crib.Told;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.EventKind;
import landfall.history.Mark;
import landfall.store.StoreFault;
import landfall.store.crib.Crib;
import landfall.store.crib.Kept;
import landfall.store.crib.Saying;
import org.jspecify.annotations.Nullable;

/** The page of one thing: how it stands, what happened to it, and a form for what happened now. */
public final class ThingPage {
    private static final String BY = "landfall-by";
    private static final int YEAR_SECONDS = 365 * 24 * 3600;
    private static final List<String> ABOUT = List.of("by", "at", "ticket", "after");

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

    private Kept find(Context ctx) {
        Answer<Mark> mark = Mark.read(ctx.pathParam("mark"));
        Optional<Kept> kept = mark instanceof Answer.Of<Mark> of ? door.crib().find(of.value()) : Optional.empty();
        return kept.orElseThrow(() -> new NotFoundResponse("no such mark"));
    }

    private static EventKind kind(String word) {
        for (EventKind kind : EventKind.values()) {
            if (kind.word().equals(word)) {
                return kind;
            }
        }
        return EventKind.TAPPED;
    }

    private void show(Context ctx, Kept kept, EventKind asked, Map<String, String> typed, List<Finding> findings) {
        EventKind kind = kept.item().kind().knows(asked) ? asked : EventKind.MOVED;
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(kept.item().mark() + " " + kept.item().size(), Place.CRIB));
        values.put("thing", new ThingView(kept, ZoneId.systemDefault()));
        values.put("kind", kind);
        values.put("cells", new Cells(EventForms.of(kind), typed, findings).rest());
        values.put("about", about(ctx, typed));
        values.put("findings", findings);
        if (!findings.isEmpty()) {
            ctx.status(HttpStatus.BAD_REQUEST);
        }
        shell.show(ctx, "crib-thing", values);
    }

    /** Who says it and when, and a name for the request, so that a form sent twice counts once. */
    private static Map<String, String> about(Context ctx, Map<String, String> typed) {
        Map<String, String> about = new HashMap<>();
        String remembered =
                URLDecoder.decode(Optional.ofNullable(ctx.cookie(BY)).orElse(""), StandardCharsets.UTF_8);
        about.put("by", typed.getOrDefault("by", remembered));
        about.put("at", typed.getOrDefault("at", ""));
        about.put("ticket", typed.getOrDefault("ticket", UUID.randomUUID().toString()));
        return about;
    }

    /** Adds the event that the form tells; what is refused stands in the form again. */
    public void log(Context ctx) {
        Map<String, String> typed = FormTyped.of(ctx);
        Kept kept = find(ctx);
        EventKind kind = kind(typed.getOrDefault("event", ""));
        Map<String, String> fields = new LinkedHashMap<>(typed);
        ABOUT.forEach(fields::remove);
        fields.remove("event");
        List<Finding> findings = new ArrayList<>();
        Answer<Told> told = Told.read(kind, fields, kept.item().bare());
        findings.addAll(told.findings());
        Answer<Instant> at = at(typed);
        findings.addAll(at.findings());
        String by = typed.getOrDefault("by", "");
        if (by.isEmpty()) {
            findings.add(new Finding("by", "", "is needed", "write your name: who says that it happened"));
        }
        if (findings.isEmpty()) {
            remember(ctx, by);
            Saying saying = new Saying(
                    kept.item().mark(),
                    told.orThrow(),
                    new Saying.Who(by, at.orThrow()),
                    typed.get("ticket"),
                    after(typed));
            findings.addAll(write(saying).findings());
        }
        if (findings.isEmpty()) {
            ctx.redirect("/crib/" + kept.item().mark(), HttpStatus.SEE_OTHER);
        } else {
            show(ctx, find(ctx), kind, typed, findings);
        }
    }

    private Answer<Kept> write(Saying saying) {
        try {
            Crib crib = door.crib();
            return crib.log(saying);
        } catch (StoreFault e) {
            return Answer.refused(e.finding());
        }
    }

    private Answer<Instant> at(Map<String, String> typed) {
        ZonedDateTime now = ZonedDateTime.now(door.clock())
                .withZoneSameInstant(ZoneId.systemDefault())
                .truncatedTo(ChronoUnit.MILLIS);
        return Moments.read("at", typed.getOrDefault("at", "now"), now);
    }

    /** The last event that the person had seen; a figure that is none is as if none had been told. */
    private static @Nullable Long after(Map<String, String> typed) {
        String text = typed.getOrDefault("after", "");
        return text.matches("\\d{1,12}") ? Long.valueOf(text) : null;
    }

    private static void remember(Context ctx, String by) {
        Cookie cookie = new Cookie(BY, URLEncoder.encode(by, StandardCharsets.UTF_8), "/crib", YEAR_SECONDS);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        ctx.cookie(cookie);
    }
}
