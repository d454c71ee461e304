// SPDX-License-Identifier: Apache-2.0
package landfall.app.tap;

import io.javalin.http.Context;
import java.util.ArrayList;
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
import landfall.cards.ask.CutAsk;
import landfall.cards.ask.HoleAsk;
import landfall.cards.ask.TapAsk;
import landfall.cards.ask.ThreadAsk;
import landfall.cards.words.Words;
import landfall.choice.TapAdvice;
import landfall.fault.Answer;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.tap.BlankView;
import landfall.working.Worked;

/** {@code Tap}: which tap suits a hole, will it reach, and what its marking must say. */
public final class TapPage {
    private static final TapAsk QUESTION = new TapAsk();
    private static final String[] OPEN = {"thread", "material", "depth", "blind", "through", "hand", "machine"};

    private final Shell shell;

    public TapPage(Shell shell) {
        this.shell = shell;
    }

    public void show(Context ctx) {
        Answer<Map<String, String>> typed = Typed.of(ctx);
        Reply reply = Reply.to(QUESTION, typed);
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        Map<String, Object> answer =
                Map.of("reply", reply, "sketches", sketches(given, reply), "onward", onward(given));
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(ctx, "tap-answer", answer);
            return;
        }
        Cells cells = new Cells(QUESTION.form(), given, reply.findings());
        Map<String, Object> values = new HashMap<>(answer);
        values.put("open", cells.of(OPEN));
        values.put("rest", cells.rest());
        values.put("frame", new Frame(title(reply), Place.TAP));
        shell.show(ctx, "tap", values);
    }

    /** The usual blank; none when it was refused, or no blank is held. */
    private static List<Drawing> sketches(Map<String, String> typed, Reply reply) {
        List<Drawing> all = new ArrayList<>();
        if (reply.answer() != null && QUESTION.advice(typed) instanceof Answer.Of<Worked<TapAdvice>> advice) {
            TapAdvice told = advice.value().value();
            Figures figures = new Figures(reply.answer().units());
            told.reach()
                    .ifPresent(
                            reach -> all.add(new BlankView(told.wish().callOut().thread(), reach, figures)
                                    .draw("tap-blank", Ink.SCREEN)));
        }
        return all;
    }

    private static List<Onward> onward(Map<String, String> given) {
        return List.of(
                Onward.to(new ThreadAsk(), Place.THREAD.path(), given),
                Onward.to(new HoleAsk(), Place.HOLE.path(), given),
                Onward.to(new CutAsk(), Place.CUT.path(), given));
    }

    private static String title(Reply reply) {
        String title = Words.of("title.tap");
        return reply.answer() == null ? title : title + " " + reply.answer().subject();
    }
}
