// SPDX-License-Identifier: Apache-2.0
package landfall.app.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import landfall.app.crib.CribDoor;
import landfall.app.shell.Frame;
import landfall.app.shell.Shell;
import landfall.app.visitor.Visitor;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.people.Password;
import landfall.store.people.People;
import landfall.store.people.Person;
import landfall.store.people.PersonName;
import landfall.store.people.Role;

/** Who is let in, for those who keep the crib. */
public final class PeoplePage {
    public static final String PATH = "/people";

    private final Shell shell;
    private final CribDoor door;

    public PeoplePage(Shell shell, CribDoor door) {
        this.shell = shell;
        this.door = door;
    }

    public void list(Context ctx) {
        show(ctx, Map.of(), List.of());
    }

    private void show(Context ctx, Map<String, String> typed, List<Finding> findings) {
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(Words.of("title.people"), null));
        values.put("people", door.people().list());
        values.put("typed", typed);
        values.put("findings", findings);
        values.put("visitor", Visitor.of(ctx));
        if (!findings.isEmpty()) {
            ctx.status(HttpStatus.BAD_REQUEST);
        }
        shell.show(ctx, "people", values);
    }

    /** Adds somebody with a first password, which the person then changes. */
    public void add(Context ctx) {
        Answer<PersonName> name = PersonName.read("name", text(ctx, "name"));
        Answer<Role> role = Role.read("role", text(ctx, "role"));
        List<Finding> findings = new ArrayList<>(name.findings());
        findings.addAll(role.findings());
        Answer<String> shown = name.then(known -> People.shown("shown", text(ctx, "shown"), known));
        Answer<Password> password = name.then(known -> Password.chosen("password", raw(ctx, "password"), known));
        if (name.findings().isEmpty()) {
            findings.addAll(shown.findings());
            findings.addAll(password.findings());
        }
        if (findings.isEmpty()) {
            findings.addAll(door.people()
                    .add(name.orThrow(), shown.orThrow(), role.orThrow(), password.orThrow())
                    .findings());
        }
        answer(ctx, findings);
    }

    public void role(Context ctx) {
        change(
                ctx,
                name -> Role.read("role", text(ctx, "role"))
                        .then(role -> door.people().role(name, role)));
    }

    public void reset(Context ctx) {
        change(
                ctx,
                name -> Password.chosen("password", raw(ctx, "password"), name)
                        .then(password -> door.people().reset(name, password)));
    }

    public void close(Context ctx) {
        change(ctx, name -> door.people().close(name));
    }

    public void open(Context ctx) {
        change(ctx, name -> door.people().open(name));
    }

    private void change(Context ctx, Function<PersonName, Answer<Person>> how) {
        Answer<PersonName> name = PersonName.read("name", ctx.pathParam("name"));
        Optional<PersonName> there =
                name instanceof Answer.Of<PersonName> of ? Optional.of(of.value()) : Optional.empty();
        PersonName known = there.filter(one -> door.people().find(one).isPresent())
                .orElseThrow(() -> new NotFoundResponse("no such person"));
        answer(ctx, how.apply(known).findings());
    }

    private void answer(Context ctx, List<Finding> findings) {
        if (findings.isEmpty()) {
            ctx.redirect(PATH, HttpStatus.SEE_OTHER);
        } else {
            show(
                    ctx,
                    Map.of("name", text(ctx, "name"), "shown", text(ctx, "shown"), "role", text(ctx, "role")),
                    findings);
        }
    }

    private static String text(Context ctx, String field) {
        return raw(ctx, field).strip();
    }

    private static String raw(Context ctx, String field) {
        return Optional.ofNullable(ctx.formParam(field)).orElse("");
    }
}
