// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.List;
import java.util.Map;
import landfall.app.people.SignInPage;
import landfall.app.shell.Frame;
import landfall.app.shell.Shell;
import landfall.cards.words.Words;
import landfall.fault.Finding;
import landfall.store.StoreFault;

/** Answers that are not what was asked for: a page that is not there, a request too large, a fault of ours. */
final class Trouble {
    private final Shell shell;
    private final SignInPage signIn;

    private Trouble(Shell shell, SignInPage signIn) {
        this.shell = shell;
        this.signIn = signIn;
    }

    static void on(RoutesConfig routes, Shell shell, SignInPage signIn) {
        Trouble trouble = new Trouble(shell, signIn);
        routes.exception(HttpResponseException.class, (e, ctx) -> trouble.refuse(ctx, e));
        routes.exception(StoreFault.class, (e, ctx) -> trouble.lackingStore(ctx, e));
        routes.exception(Exception.class, (e, ctx) -> {
            // What happened goes to standard error with its trace; the person gets a plain sentence.
            System.err.println("landfall: fault while answering " + ctx.method() + " " + ctx.path());
            e.printStackTrace(System.err);
            trouble.show(ctx, 500, "500");
        });
        routes.error(404, ctx -> {
            if (ctx.resultInputStream() == null || plain(ctx)) {
                trouble.show(ctx, 404, "404");
            }
        });
    }

    /** Who has not signed in is asked to; a refusal that has words of its own is told in them. */
    private void refuse(Context ctx, HttpResponseException refusal) {
        int status = refusal.getStatus();
        String own = String.valueOf(refusal.getMessage());
        if (status == 401 && !asksForJson(ctx)) {
            signIn.insteadOf(ctx);
        } else if (Words.find("page.trouble." + own).isPresent()) {
            show(ctx, status, own);
        } else if (Words.find("page.trouble." + status).isPresent()) {
            show(ctx, status, String.valueOf(status));
        } else {
            show(ctx, status, status < 500 ? "400" : "500");
        }
    }

    /** The store is told where the server was started, without a trace; the person is told what to do. */
    private void lackingStore(Context ctx, StoreFault fault) {
        System.err.println("landfall: " + fault.finding().sentence());
        Finding finding = fault.finding();
        say(ctx, 503, Words.of("page.trouble.store", finding.why()), finding.mend());
    }

    private static boolean plain(Context ctx) {
        String type = ctx.res().getContentType();
        return type == null || type.startsWith("text/plain");
    }

    private static boolean asksForJson(Context ctx) {
        return ctx.path().startsWith("/api/") || Shell.asksForEntryOnly(ctx);
    }

    private void show(Context ctx, int status, String kind) {
        say(ctx, status, Words.of("page.trouble." + kind), Words.of("page.trouble." + kind + ".mend"));
    }

    private void say(Context ctx, int status, String says, String mend) {
        ctx.status(status);
        if (asksForJson(ctx)) {
            ApiDoor.refuse(ctx, status, List.of(new Finding("request", ctx.path(), says, mend)));
            return;
        }
        shell.show(ctx, "trouble", Map.of("frame", new Frame(says, null), "says", says, "mend", mend));
    }
}
