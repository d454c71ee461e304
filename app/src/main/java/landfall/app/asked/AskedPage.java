// SPDX-License-Identifier: Apache-2.0
package landfall.app.asked;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import landfall.app.figure.Reply;
import landfall.app.given.Cells;
import landfall.app.given.OpenedFor;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.cards.ask.LifeAsk;
import landfall.cards.ask.Question;
import landfall.cards.words.Words;
import landfall.fault.Answer;

/**
 * The page of one question.
 *
 * @param open paths of the fields that stand open, in order; the others lie under what is assumed
 */
public record AskedPage(Shell shell, Question question, Place place, String path, List<String> open) {
    public AskedPage {
        open = List.copyOf(open);
    }

    public void show(Context ctx) {
        OpenedFor opened = OpenedFor.of(Typed.of(ctx));
        Answer<Map<String, String>> typed = opened.typed();
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        Reply reply = Reply.to(question, typed);
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(
                    ctx,
                    "asked-answer",
                    Map.of("noun", question.noun(), "reply", reply, "pictured", pictured(given, reply)));
            return;
        }
        Cells cells = new Cells(question.form(), given, reply.findings());
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(title(reply), place));
        values.put("opened", opened);
        values.put("noun", question.noun());
        values.put("path", path);
        values.put("cells", cells.of(open.toArray(String[]::new)));
        values.put("rest", cells.rest());
        values.put("reply", reply);
        values.put("pictured", pictured(given, reply));
        shell.show(ctx, "asked", values);
    }

    private Pictured pictured(Map<String, String> given, Reply reply) {
        return reply.answer() != null && question instanceof LifeAsk life
                ? Pictured.of(life, given, reply.answer().units())
                : Pictured.NOTHING;
    }

    private String title(Reply reply) {
        String title = Words.of("title." + question.noun());
        return reply.answer() == null ? title : title + " " + reply.answer().subject();
    }
}
