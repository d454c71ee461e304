// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import landfall.app.people.Entrance;
import landfall.app.visitor.Visitor;
import landfall.store.StoreFault;

/** What every answer carries and every request must satisfy. */
final class Guard {
    /** Nothing is loaded from anywhere but this server, and no other site may frame it. */
    static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "
            + "font-src 'self'; connect-src 'self'; manifest-src 'self'; form-action 'self'; base-uri 'none'; "
            + "frame-ancestors 'none'";

    /** What a program that passes requests on adds to them. */
    private static final List<String> PROXIED =
            List.of("Forwarded", "X-Forwarded-For", "X-Forwarded-Proto", "X-Forwarded-Host", "X-Real-IP", "Via");

    private Guard() {}

    static void on(RoutesConfig routes, Listen listen, Entrance entrance) {
        URI proxy = listen.proxy();
        boolean alone = listen.isForThisMachineAlone();
        routes.before(ctx -> {
            headers(ctx);
            if (alone) {
                refuseProxies(ctx);
                refuseForeignNames(ctx, listen.address());
            }
            if (proxy == null) {
                refuseForeignForms(ctx, "http://" + ctx.host());
            } else {
                refusePlain(ctx);
                refuseForeignForms(ctx, proxy.getScheme() + "://" + proxy.getAuthority());
            }
            if (alone) {
                Visitor.atThisMachine(System.getProperty("user.name", "unknown"))
                        .sent(ctx);
            } else if (!ctx.path().startsWith("/assets/")) {
                tellWho(ctx, entrance);
            }
        });
    }

    /** What computes goes on when the store does not answer; what needs a role says so. */
    private static void tellWho(Context ctx, Entrance entrance) {
        try {
            entrance.visitor(ctx).sent(ctx);
        } catch (StoreFault e) {
            ctx.attribute(Gate.FAULT, e);
        }
    }

    /** Where a request comes from: with a proxy before us what it says, and it says the last of them. */
    static String address(Context ctx, Listen listen) {
        String told = listen.proxy() == null ? null : ctx.header("X-Forwarded-For");
        return told == null
                ? ctx.ip()
                : told.substring(told.lastIndexOf(',') + 1).strip();
    }

    /** Behind a proxy every request comes from this machine; without being told so, the crib would lie open to all. */
    private static void refuseProxies(Context ctx) {
        for (String header : PROXIED) {
            if (ctx.header(header) != null) {
                throw new ForbiddenResponse("proxy");
            }
        }
    }

    /** Behind a proxy a request that did not come over TLS carries no password on. */
    private static void refusePlain(Context ctx) {
        if (!"https".equals(ctx.header("X-Forwarded-Proto"))) {
            throw new ForbiddenResponse("plain");
        }
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

    private static void refuseForeignForms(Context ctx, String own) {
        String origin = ctx.header("Origin");
        if (ctx.method() == HandlerType.POST && origin != null && !origin.equalsIgnoreCase(own)) {
            throw new ForbiddenResponse("form");
        }
    }

    private static String withoutPort(String host) {
        return host.replaceFirst(":\\d+$", "");
    }
}
