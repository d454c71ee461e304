// SPDX-License-Identifier: Apache-2.0
package landfall.app.tap;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import landfall.app.figure.Reply;
import landfall.app.given.Cells;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.cards.ask.IdentifyAsk;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.tap.CandidatesView;

/** Which tap is this? Candidates for an unmarked one, and the one further look that tells the first two apart. */
public final class IdentifyPage {
    public static final String PATH = "/identify";

    private static final IdentifyAsk QUESTION = new IdentifyAsk();
    private static final String[] OPEN = {
        "major", "tpi", "pitch", "shank", "flutes", "flank-angle", "rings", "hand", "uncertainty"
    };

    private final Shell shell;

    public IdentifyPage(Shell shell) {
        this.shell = shell;
    }

    public void show(Context ctx) {
        Answer<Map<String, String>> typed = Typed.of(ctx);
        Reply reply = Reply.to(QUESTION, typed);
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        Map<String, Object> answer =
                Map.of("reply", reply, "sketches", sketches(given, reply), "candidates", CandidateRow.of(reply));
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(ctx, "identify-answer", answer);
            return;
        }
        Cells cells = new Cells(QUESTION.form(), given, reply.findings());
        Map<String, Object> values = new HashMap<>(answer);
        values.put("open", cells.of(OPEN));
        values.put("rest", cells.rest());
        values.put("frame", new Frame(title(reply), Place.TAP));
        shell.show(ctx, "identify", values);
    }

    private static List<Drawing> sketches(Map<String, String> typed, Reply reply) {
        if (reply.answer() == null || !(QUESTION.told(typed) instanceof Answer.Of<IdentifyAsk.Told> told)) {
            return List.of();
        }
        var found = told.value().found();
        var seen = told.value().sighting();
        Figures figures = new Figures(reply.answer().units());
        return found.candidates().isEmpty()
                ? List.of()
                : List.of(new CandidatesView(found, seen.major(), seen.uncertainty(), figures)
                        .draw("candidates", Ink.SCREEN));
    }

    private static String title(Reply reply) {
        String title = Words.of("title.identify");
        return reply.answer() == null ? title : title + " " + reply.answer().subject();
    }
}
