// SPDX-License-Identifier: Apache-2.0
package landfall.app.thread;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import landfall.app.figure.Reply;
import landfall.app.given.Cells;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.cards.ask.ThreadAsk;
import landfall.fault.Answer;

/** {@code Thread}: what a call-out allows, by the standard that it names. */
public final class ThreadPage {
    private static final ThreadAsk QUESTION = new ThreadAsk();

    private final Shell shell;

    public ThreadPage(Shell shell) {
        this.shell = shell;
    }

    public void show(Context ctx) {
        Answer<Map<String, String>> typed = Typed.of(ctx);
        Reply reply = Reply.to(QUESTION, typed);
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(ctx, "thread-answer", Map.of("reply", reply));
            return;
        }
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        Cells cells = new Cells(QUESTION.form(), given, reply.findings());
        Map<String, Object> values = new HashMap<>();
        values.put("callOut", cells.of("thread"));
        values.put("rest", cells.rest());
        values.put("reply", reply);
        values.put("frame", new Frame(title(reply), Place.THREAD));
        shell.show(ctx, "thread", values);
    }

    private static String title(Reply reply) {
        return reply.answer() == null ? Place.THREAD.noun() : reply.answer().subject();
    }
}
