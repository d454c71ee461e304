// SPDX-License-Identifier: Apache-2.0
package landfall.app.gauge;

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
import landfall.cards.ask.TapAsk;
import landfall.cards.ask.ThreadAsk;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.gauge.GaugeSketches;

/** {@code Gauge}: how a thread is gauged and what a reading says. */
public final class GaugePage {
    private static final GaugeAsk QUESTION = new GaugeAsk();

    private final Shell shell;

    public GaugePage(Shell shell) {
        this.shell = shell;
    }

    public void show(Context ctx) {
        Answer<Map<String, String>> typed = Typed.of(ctx);
        Reply reply = Reply.to(QUESTION, typed);
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        Map<String, Object> answer =
                Map.of("reply", reply, "sketches", sketches(given, reply), "onward", onward(given));
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(ctx, "gauge-answer", answer);
            return;
        }
        Map<String, Object> values = new HashMap<>(answer);
        values.put("given", GivenReadings.of(new Cells(QUESTION.form(), given, reply.findings())));
        values.put("frame", new Frame(title(reply), Place.GAUGE));
        shell.show(ctx, "gauge", values);
    }

    /** The drawings of what was typed; none when it was refused. */
    private static List<Drawing> sketches(Map<String, String> typed, Reply reply) {
        if (reply.answer() == null) {
            return List.of();
        }
        return QUESTION.told(typed) instanceof Answer.Of<GaugeAsk.Told> told
                ? new GaugeSketches(
                                told.value().gauging(),
                                told.value().wish(),
                                new Figures(reply.answer().units()),
                                "gauge")
                        .all(Ink.SCREEN)
                : List.of();
    }

    private static List<Onward> onward(Map<String, String> given) {
        return List.of(
                Onward.to(new ThreadAsk(), Place.THREAD.path(), given),
                Onward.to(new TapAsk(), Place.TAP.path(), given));
    }

    private static String title(Reply reply) {
        String title = Words.of("title.gauge");
        return reply.answer() == null ? title : title + " " + reply.answer().subject();
    }
}
