// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.List;
import java.util.Map;
import landfall.app.shell.Frame;
import landfall.app.shell.Shell;
import landfall.cards.words.Words;
import landfall.fault.Finding;

/** Answers that are not what was asked for: a page that is not there, a request too large, a fault of ours. */
final class Trouble {
    private static final Shell SHELL = new Shell();

    private Trouble() {}

    static void on(RoutesConfig routes) {
        routes.exception(HttpResponseException.class, (e, ctx) -> show(ctx, e.getStatus()));
        routes.exception(Exception.class, (e, ctx) -> {
            // What happened goes to standard error with its trace; the person gets a plain sentence.
            System.err.println("landfall: fault while answering " + ctx.method() + " " + ctx.path());
            e.printStackTrace(System.err);
            show(ctx, 500);
        });
        routes.error(404, ctx -> {
            if (ctx.resultInputStream() == null || plain(ctx)) {
                show(ctx, 404);
            }
        });
    }

    private static boolean plain(Context ctx) {
        String type = ctx.res().getContentType();
        return type == null || type.startsWith("text/plain");
    }

    private static void show(Context ctx, int status) {
        ctx.status(status);
        String kind = Words.find("page.trouble." + status).isPresent()
                ? String.valueOf(status)
                : status < 500 ? "400" : "500";
        String says = Words.of("page.trouble." + kind);
        String mend = Words.of("page.trouble." + kind + ".mend");
        if (ctx.path().startsWith("/api/")) {
            ApiDoor.refuse(ctx, status, List.of(new Finding("request", ctx.path(), says, mend)));
            return;
        }
        SHELL.show(ctx, "trouble", Map.of("frame", new Frame(says, null), "says", says, "mend", mend));
    }
}
