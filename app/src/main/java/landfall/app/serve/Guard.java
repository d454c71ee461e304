// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import java.net.URI;
import java.util.Locale;
import landfall.app.visitor.Visitor;
import org.jspecify.annotations.Nullable;

/** What every answer carries and every request must satisfy. */
final class Guard {
    /** Nothing is loaded from anywhere but this server, and no other site may frame it. */
    static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "
            + "font-src 'self'; connect-src 'self'; manifest-src 'self'; form-action 'self'; base-uri 'none'; "
            + "frame-ancestors 'none'";

    private Guard() {}

    static void on(RoutesConfig routes, boolean loopback, String address) {
        routes.before(ctx -> {
            headers(ctx);
            if (loopback) {
                refuseForeignNames(ctx, address);
            }
            refuseForeignForms(ctx);
            Visitor visitor =
                    loopback ? Visitor.atThisMachine(System.getProperty("user.name", "unknown")) : Visitor.nobody();
            visitor.sent(ctx);
        });
    }

    private static void headers(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        ctx.header("Permissions-Policy", "geolocation=(), microphone=()");
        ctx.header("Cache-Control", "no-store");
    }

    /** A name that another site made point at this machine must not reach the pages. */
    private static void refuseForeignNames(Context ctx, String address) {
        String host = ctx.host();
        String name = host == null ? "" : withoutPort(host).toLowerCase(Locale.ROOT);
        boolean own = name.equals("localhost")
                || name.equals("[::1]")
                || name.equals(address)
                || name.matches("127\\.\\d+\\.\\d+\\.\\d+");
        if (!own) {
            throw new ForbiddenResponse("this server answers only to the name of this machine");
        }
    }

    private static void refuseForeignForms(Context ctx) {
        String origin = ctx.header("Origin");
        if (ctx.method() == HandlerType.POST && origin != null && !sameHost(origin, ctx.host())) {
            throw new ForbiddenResponse("a form of another site was refused");
        }
    }

    private static boolean sameHost(String origin, @Nullable String host) {
        try {
            String authority = URI.create(origin).getAuthority();
            return authority != null && authority.equalsIgnoreCase(host);
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static String withoutPort(String host) {
        return host.replaceFirst(":\\d+$", "");
    }
}
