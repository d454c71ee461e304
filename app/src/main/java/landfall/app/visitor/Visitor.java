// SPDX-License-Identifier: Apache-2.0
package landfall.app.visitor;

import io.javalin.http.Context;
import java.util.Optional;
import landfall.store.people.Role;
import org.jspecify.annotations.Nullable;

/**
 * Whoever sends a request.
 *
 * @param name what events are signed with; empty for nobody
 * @param shown how the person is called on pages
 * @param role null for nobody
 * @param token what a form of a signed-in person must bring back; empty where none is needed
 */
public record Visitor(
        Kind kind, String name, String shown, @Nullable Role role, String token) {
    private static final String ATTRIBUTE = "landfall.visitor";

    /** Nobody, a person who has signed in, or the user of the machine that the server runs on. */
    public enum Kind {
        NOBODY,
        PERSON,
        MACHINE
    }

    public static Visitor nobody() {
        return new Visitor(Kind.NOBODY, "", "", null, "");
    }

    /** Whoever sits at the machine may do all: the store's file is theirs anyway. */
    public static Visitor atThisMachine(String user) {
        return new Visitor(Kind.MACHINE, user, user, Role.KEEP, "");
    }

    public static Visitor person(String name, String shown, Role role, String token) {
        return new Visitor(Kind.PERSON, name, shown, role, token);
    }

    public static Visitor of(Context ctx) {
        return Optional.ofNullable(ctx.<Visitor>attribute(ATTRIBUTE)).orElseGet(Visitor::nobody);
    }

    /** Tells the handlers of a request who sent it. */
    public void sent(Context ctx) {
        ctx.attribute(ATTRIBUTE, this);
    }

    public boolean may(Role needed) {
        return role != null && role.includes(needed);
    }

    public boolean mayUse() {
        return may(Role.USE);
    }

    public boolean mayKeep() {
        return may(Role.KEEP);
    }

    public boolean isPerson() {
        return kind == Kind.PERSON;
    }
}
