// SPDX-License-Identifier: Apache-2.0
package landfall.app.people;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.net.URI;
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import landfall.app.shell.Frame;
import landfall.app.shell.Shell;
import landfall.app.visitor.Visitor;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.people.Password;
import landfall.store.people.Person;
import landfall.store.people.PersonName;
import org.jspecify.annotations.Nullable;

/** The page to sign in, and the way out again. */
public final class SignInPage {
    public static final String PATH = "/sign-in";
    private static final String KEPT = "kept.";
    private static final int LONGEST_NAME = 60;

    private final Shell shell;
    private final Entrance entrance;
    private final Tries tries;
    private final Function<Context, String> address;

    /** @param address where a request comes from, for the count of tries */
    public SignInPage(Shell shell, Entrance entrance, Function<Context, String> address) {
        this.shell = shell;
        this.entrance = entrance;
        this.tries = new Tries(entrance.door().clock());
        this.address = address;
    }

    public void show(Context ctx) {
        if (Visitor.of(ctx).role() != null) {
            ctx.redirect(OwnPath.of(param(ctx.queryParam("to"))), HttpStatus.SEE_OTHER);
            return;
        }
        show(ctx, new Asked("", param(ctx.queryParam("to")), Map.of()), Optional.empty());
    }

    /** Asks for a sign-in in place of what was asked for; what a form had typed is carried along. */
    public void insteadOf(Context ctx) {
        boolean form = ctx.method() == HandlerType.POST;
        Map<String, String> kept = new LinkedHashMap<>();
        if (form) {
            kept.put("path", OwnPath.of(ctx.path()));
            ctx.formParamMap().forEach((name, texts) -> {
                if (!texts.isEmpty() && !name.startsWith("password") && !name.equals("token")) {
                    kept.put("field." + name, texts.get(0));
                }
            });
        }
        String query = ctx.queryString() == null ? "" : "?" + ctx.queryString();
        ctx.status(HttpStatus.UNAUTHORIZED);
        ctx.header("WWW-Authenticate", "Form realm=\"Landfall\"");
        show(ctx, new Asked("", form ? from(ctx) : ctx.path() + query, kept), Optional.empty());
    }

    /** The page that a form stood on, as the browser tells it. */
    private static String from(Context ctx) {
        try {
            URI page = URI.create(param(ctx.header("Referer")));
            return page.getRawPath() + (page.getRawQuery() == null ? "" : "?" + page.getRawQuery());
        } catch (IllegalArgumentException e) {
            return OwnPath.USUAL;
        }
    }

    /**
     * What the page holds besides the password.
     *
     * @param to where it goes on to
     * @param kept what a form had typed when the sign-in had ended: {@code path}, and {@code field.} with each name
     */
    public record Asked(String name, String to, Map<String, String> kept) {
        public Asked {
            to = OwnPath.of(to);
            kept = Map.copyOf(kept);
        }

        public Map<String, String> hidden() {
            Map<String, String> hidden = new LinkedHashMap<>();
            hidden.put("to", to);
            kept.forEach((name, text) -> hidden.put(KEPT + name, text));
            return hidden;
        }
    }

    private static Asked asked(Context ctx) {
        Map<String, String> kept = new LinkedHashMap<>();
        ctx.formParamMap().forEach((name, texts) -> {
            if (name.startsWith(KEPT) && !texts.isEmpty()) {
                kept.put(name.substring(KEPT.length()), texts.get(0));
            }
        });
        return new Asked(param(ctx.formParam("name")), param(ctx.formParam("to")), kept);
    }

    private void show(Context ctx, Asked asked, Optional<Finding> finding) {
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(Words.of("title.sign-in"), null));
        values.put("asked", asked);
        values.put("findings", finding.map(List::of).orElse(List.of()));
        values.put("plain", !entrance.isTls());
        shell.show(ctx, "sign-in", values);
    }

    /**
     * Signs in. An unknown name, a wrong password and somebody who was shut out get the same answer in the same time.
     */
    public void enter(Context ctx) {
        Asked asked = asked(ctx);
        Optional<Duration> wait = tries.begin(key(asked.name()), address.apply(ctx));
        if (wait.isPresent()) {
            ctx.status(HttpStatus.TOO_MANY_REQUESTS);
            ctx.header("Retry-After", String.valueOf(wait.get().toSeconds() + 1));
            show(ctx, asked, Optional.of(tooOften(wait.get())));
            return;
        }
        Optional<Person> person = person(asked.name(), param(ctx.formParam("password")));
        if (person.isEmpty()) {
            ctx.status(HttpStatus.UNAUTHORIZED);
            show(ctx, asked, Optional.of(wrong()));
            return;
        }
        tries.right(key(asked.name()), address.apply(ctx));
        Visitor visitor = entrance.begin(ctx, person.get());
        visitor.sent(ctx);
        if (asked.kept().isEmpty()) {
            ctx.redirect(asked.to(), HttpStatus.SEE_OTHER);
        } else {
            sendAgain(ctx, asked);
        }
    }

    private Optional<Person> person(String name, String password) {
        Answer<PersonName> read = PersonName.read("name", name);
        Optional<PersonName> known =
                read instanceof Answer.Of<PersonName> of ? Optional.of(of.value()) : Optional.empty();
        return entrance.door().people().enter(known, Password.typed(password));
    }

    /** What had been typed when the sign-in had ended is shown, and sent when the person says so. */
    private void sendAgain(Context ctx, Asked asked) {
        Map<String, String> fields = new LinkedHashMap<>();
        asked.kept().forEach((name, text) -> {
            if (name.startsWith("field.")) {
                fields.put(name.substring("field.".length()), text);
            }
        });
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(Words.of("title.sign-in"), null));
        values.put("path", OwnPath.of(asked.kept().getOrDefault("path", "")));
        values.put("fields", fields);
        values.put("to", asked.to());
        shell.show(ctx, "send-again", values);
    }

    public void out(Context ctx) {
        entrance.end(ctx);
        ctx.redirect(PATH, HttpStatus.SEE_OTHER);
    }

    public void outEverywhere(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        if (visitor.isPerson()) {
            entrance.door().signIns().endAll(new PersonName(visitor.name()));
        }
        out(ctx);
    }

    Tries tries() {
        return tries;
    }

    Function<Context, String> address() {
        return address;
    }

    static Finding wrong() {
        return new Finding("name", "", Words.of("people.wrong"), Words.of("people.wrong.mend"));
    }

    static Finding tooOften(Duration wait) {
        long minutes = wait.toMinutes() + 1;
        return new Finding(
                "name",
                "",
                Words.of("people.tooOften"),
                minutes == 1 ? Words.of("people.waitOne") : Words.of("people.wait", minutes));
    }

    static String key(String name) {
        String text = name.strip().toLowerCase(Locale.ROOT);
        return text.substring(0, Math.min(text.length(), LONGEST_NAME));
    }

    private static String param(@Nullable String text) {
        return text == null ? "" : text;
    }
}
