// SPDX-License-Identifier: Apache-2.0
package landfall.app.people;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import landfall.app.crib.CribDoor;
import landfall.app.visitor.Visitor;
import landfall.store.people.Person;
import landfall.store.people.SignIns;

/** Tells by its cookie who sends a request. */
public final class Entrance {
    /** With this beginning a browser takes the cookie over TLS only, and from this very server. */
    private static final String OVER_TLS = "__Host-landfall";

    private static final String PLAIN = "landfall";

    /** The header that other programs bring the token of a form in. */
    public static final String TOKEN = "Landfall-Token";

    private final CribDoor door;
    private final boolean tls;

    /** @param tls whether browsers speak TLS with what stands before this server */
    public Entrance(CribDoor door, boolean tls) {
        this.door = door;
        this.tls = tls;
    }

    boolean isTls() {
        return tls;
    }

    CribDoor door() {
        return door;
    }

    /** Looks anew with every request, so that a role that was changed and a person who was shut out count at once. */
    public Visitor visitor(Context ctx) {
        return token(ctx)
                .flatMap(token -> door.signIns()
                        .find(token)
                        .map(person -> Visitor.person(
                                person.name().text(), person.shown(), person.role(), SignIns.formToken(token))))
                .orElseGet(Visitor::nobody);
    }

    /** Whether a form was written for the one who sends it. */
    public static boolean isOwnForm(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        byte[] brought = Optional.ofNullable(ctx.header(TOKEN))
                .or(() -> Optional.ofNullable(ctx.formParam("token")))
                .orElse("")
                .getBytes(StandardCharsets.UTF_8);
        return !visitor.isPerson()
                || MessageDigest.isEqual(brought, visitor.token().getBytes(StandardCharsets.UTF_8));
    }

    /** Signs in under a new token; one that somebody had put into the browser before is worth nothing. */
    Visitor begin(Context ctx, Person person) {
        String token = door.signIns().begin(person, token(ctx));
        ctx.cookie(cookie(token, -1));
        return Visitor.person(person.name().text(), person.shown(), person.role(), SignIns.formToken(token));
    }

    void end(Context ctx) {
        token(ctx).ifPresent(door.signIns()::end);
        ctx.cookie(cookie("", 0));
    }

    private Optional<String> token(Context ctx) {
        return Optional.ofNullable(ctx.cookie(tls ? OVER_TLS : PLAIN)).filter(token -> !token.isEmpty());
    }

    /** It ends with the browser, no script reads it, and no other site's link brings it along. */
    private Cookie cookie(String value, int maxAge) {
        Cookie cookie = new Cookie(tls ? OVER_TLS : PLAIN, value, "/", maxAge);
        cookie.setHttpOnly(true);
        cookie.setSecure(tls);
        cookie.setSameSite(SameSite.STRICT);
        return cookie;
    }
}
