// SPDX-License-Identifier: Apache-2.0
package landfall.app.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
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
import landfall.store.people.People;
import landfall.store.people.Person;
import landfall.store.people.PersonName;

/** What a person does about the own sign-in: another password, out of every browser. */
public final class OwnPage {
    public static final String PATH = "/me";

    private final Shell shell;
    private final Entrance entrance;
    private final Tries tries;
    private final Function<Context, String> address;

    /** Tries to change a password count with those to sign in. */
    public OwnPage(Shell shell, Entrance entrance, SignInPage signIn) {
        this.shell = shell;
        this.entrance = entrance;
        this.tries = signIn.tries();
        this.address = signIn.address();
    }

    public void show(Context ctx) {
        if (Visitor.of(ctx).isPerson()) {
            show(ctx, List.of());
        } else {
            ctx.redirect(PeoplePage.PATH, HttpStatus.SEE_OTHER);
        }
    }

    private void show(Context ctx, List<Finding> findings) {
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(Words.of("title.me"), null));
        values.put("visitor", Visitor.of(ctx));
        values.put("findings", findings);
        if (!findings.isEmpty()) {
            ctx.status(HttpStatus.BAD_REQUEST);
        }
        shell.show(ctx, "me", values);
    }

    /** Changes the password for who knows the old one; every other browser is signed out. */
    public void password(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        if (!visitor.isPerson()) {
            ctx.redirect(PeoplePage.PATH, HttpStatus.SEE_OTHER);
            return;
        }
        PersonName name = new PersonName(visitor.name());
        Answer<Password> chosen = Password.chosen("password", param(ctx, "password"), name);
        if (!chosen.findings().isEmpty()) {
            show(ctx, chosen.findings());
            return;
        }
        Optional<Duration> wait = tries.begin(name.text(), address.apply(ctx));
        if (wait.isPresent()) {
            show(ctx, List.of(SignInPage.tooOften(wait.get())));
            return;
        }
        People people = entrance.door().people();
        if (people.enter(Optional.of(name), Password.typed(param(ctx, "password-now")))
                .isEmpty()) {
            show(
                    ctx,
                    List.of(new Finding("password-now", "", Words.of("people.notIt"), Words.of("people.notIt.mend"))));
            return;
        }
        tries.right(name.text(), address.apply(ctx));
        Answer<Person> changed = people.reset(name, chosen.orThrow());
        changed.map(person -> entrance.begin(ctx, person));
        ctx.redirect(PATH + "?changed=yes", HttpStatus.SEE_OTHER);
    }

    private static String param(Context ctx, String field) {
        return Optional.ofNullable(ctx.formParam(field)).orElse("");
    }
}
