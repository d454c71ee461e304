// SPDX-License-Identifier: Apache-2.0
package landfall.app.thread;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import landfall.app.figure.Reply;
import landfall.app.given.Cells;
import landfall.app.given.Onward;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.cards.ask.GaugeAsk;
import landfall.cards.ask.HoleAsk;
import landfall.cards.ask.TapAsk;
import landfall.cards.ask.ThreadAsk;
import landfall.fault.Answer;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.thread.ThreadSketches;
import landfall.thread.LimitsOfSize;
import landfall.working.Worked;

/**
 * {@code Thread}: what a call-out allows, by the standard that it names, beside the thread as drawn from its limits.
 */
public final class ThreadPage {
    private static final ThreadAsk QUESTION = new ThreadAsk();

    private final Shell shell;

    public ThreadPage(Shell shell) {
        this.shell = shell;
    }

    public void show(Context ctx) {
        Answer<Map<String, String>> typed = Typed.of(ctx);
        Reply reply = Reply.to(QUESTION, typed);
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        Map<String, Object> answer =
                Map.of("reply", reply, "sketches", sketches(given, reply), "onward", onward(given));
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(ctx, "thread-answer", answer);
            return;
        }
        Cells cells = new Cells(QUESTION.form(), given, reply.findings());
        Map<String, Object> values = new HashMap<>(answer);
        values.put("callOut", cells.of("thread"));
        values.put("rest", cells.rest());
        values.put("frame", new Frame(title(reply), Place.THREAD));
        shell.show(ctx, "thread", values);
    }

    /** The drawings of what was typed; none when it was refused. */
    private static List<Drawing> sketches(Map<String, String> typed, Reply reply) {
        if (reply.answer() == null) {
            return List.of();
        }
        return QUESTION.limits(typed) instanceof Answer.Of<Worked<LimitsOfSize>> limits
                ? new ThreadSketches(
                                limits.value().value(),
                                new Figures(reply.answer().units()),
                                "thread")
                        .all(Ink.SCREEN)
                : List.of();
    }

    private static List<Onward> onward(Map<String, String> given) {
        return List.of(
                Onward.to(new HoleAsk(), Place.HOLE.path(), given),
                Onward.to(new TapAsk(), Place.TAP.path(), given),
                Onward.to(new GaugeAsk(), Place.GAUGE.path(), given));
    }

    private static String title(Reply reply) {
        return reply.answer() == null ? Place.THREAD.noun() : reply.answer().subject();
    }
}
