// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import landfall.app.visitor.Visitor;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * Who signs an event. A person who has signed in signs with that name and no other; at the machine itself a name may be
 * typed, and the user of the machine signs where none is.
 */
public final class Signing {
    private static final String COOKIE = "landfall-by";
    private static final int YEAR_SECONDS = 365 * 24 * 3600;
    private static final int LONGEST = 80;

    private Signing() {}

    public static Answer<String> of(Context ctx, Map<String, String> typed) {
        Visitor visitor = Visitor.of(ctx);
        String by = typed.getOrDefault("by", "");
        if (visitor.isPerson()) {
            return by.isEmpty() || by.equals(visitor.name())
                    ? Answer.of(visitor.name())
                    : Answer.refused(new Finding(
                            "by",
                            by,
                            "is not who has signed in here: that is " + visitor.name(),
                            "sign in as who wrote it, or write it again as " + visitor.name()));
        }
        if (by.length() > LONGEST) {
            return Answer.refused(new Finding(
                    "by", by, "is longer than " + LONGEST + " characters", "write a name that others know you by"));
        }
        return Answer.of(by.isEmpty() ? visitor.name() : by);
    }

    /** What the form's field for the name begins with. */
    public static String usual(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        return visitor.isPerson() ? visitor.name() : remembered(ctx);
    }

    private static String remembered(Context ctx) {
        try {
            return URLDecoder.decode(Optional.ofNullable(ctx.cookie(COOKIE)).orElse(""), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            return "";
        }
    }

    /** At the machine itself the name is there the next time. */
    public static void remember(Context ctx, String by) {
        if (!Visitor.of(ctx).isPerson()) {
            Cookie cookie = new Cookie(COOKIE, URLEncoder.encode(by, StandardCharsets.UTF_8), "/crib", YEAR_SECONDS);
            cookie.setHttpOnly(true);
            cookie.setSameSite(SameSite.STRICT);
            ctx.cookie(cookie);
        }
    }
}
