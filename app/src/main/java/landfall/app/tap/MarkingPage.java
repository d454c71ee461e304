// SPDX-License-Identifier: Apache-2.0
package landfall.app.tap;

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
import landfall.cards.ask.MarkingAsk;
import landfall.cards.ask.TapAsk;
import landfall.cards.ask.ThreadAsk;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.tap.MarkingView;

/** What does this marking say? Each part of it pointed at, and the limits that it stands for. */
public final class MarkingPage {
    public static final String PATH = "/marking";

    private static final MarkingAsk QUESTION = new MarkingAsk();

    private final Shell shell;

    public MarkingPage(Shell shell) {
        this.shell = shell;
    }

    public void show(Context ctx) {
        Answer<Map<String, String>> typed = Typed.of(ctx);
        Reply reply = Reply.to(QUESTION, typed);
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        Map<String, Object> answer = Map.of("reply", reply, "sketches", sketches(reply), "onward", onward(reply));
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(ctx, "marking-answer", answer);
            return;
        }
        Cells cells = new Cells(QUESTION.form(), given, reply.findings());
        Map<String, Object> values = new HashMap<>(answer);
        values.put("open", cells.of("marking"));
        values.put("rest", cells.rest());
        values.put("frame", new Frame(title(reply), Place.TAP));
        shell.show(ctx, "marking", values);
    }

    private static List<Drawing> sketches(Reply reply) {
        if (reply.answer() == null) {
            return List.of();
        }
        List<MarkingView.Part> parts = reply.answer().rowsOf("fields").stream()
                .map(row -> new MarkingView.Part(row.code("text"), row.code("means")))
                .toList();
        return List.of(new MarkingView(parts).draw("marking", Ink.SCREEN));
    }

    private static List<Onward> onward(Reply reply) {
        if (reply.answer() == null) {
            return List.of();
        }
        Map<String, String> thread = Map.of("thread", reply.answer().text("callout"));
        return List.of(
                Onward.to(new ThreadAsk(), Place.THREAD.path(), thread),
                Onward.to(new TapAsk(), Place.TAP.path(), thread));
    }

    private static String title(Reply reply) {
        String title = Words.of("title.marking");
        return reply.answer() == null ? title : title + " " + reply.answer().subject();
    }
}
