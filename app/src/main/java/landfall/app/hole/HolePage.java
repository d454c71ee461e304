// SPDX-License-Identifier: Apache-2.0
package landfall.app.hole;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.figure.AnswerView;
import landfall.app.figure.Reply;
import landfall.app.given.Cell;
import landfall.app.given.Cells;
import landfall.app.given.HoleEnds;
import landfall.app.given.Onward;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.cards.ask.CutAsk;
import landfall.cards.ask.GaugeAsk;
import landfall.cards.ask.HoleAsk;
import landfall.cards.ask.TapAsk;
import landfall.fault.Answer;
import landfall.hole.HoleChoice;
import landfall.quantity.UnitSystem;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.hole.HoleShape;
import landfall.sheets.hole.HoleView;
import landfall.sheets.hole.TradeOffView;
import landfall.working.Worked;

/** {@code Hole}: which drill for a thread, and how deep. */
public final class HolePage {
    private static final HoleAsk QUESTION = new HoleAsk();

    private final Shell shell;

    public HolePage(Shell shell) {
        this.shell = shell;
    }

    public void show(Context ctx) {
        Answer<Map<String, String>> typed = Typed.of(ctx).map(HoleEnds::spelled);
        Reply reply = Reply.to(QUESTION, typed);
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        AnswerView answered = reply.answer();
        HoleChoice choice = answered == null || !(QUESTION.choice(given) instanceof Answer.Of<Worked<HoleChoice>> of)
                ? null
                : of.value().value();
        Map<String, Object> answer = new HashMap<>();
        answer.put("reply", reply);
        answer.put("sketches", choice == null || answered == null ? List.of() : sketches(choice, answered.units()));
        answer.put(Shell.OFFERED, choice == null ? Map.of() : Map.of("hole", diameter(choice)));
        answer.put("onward", choice == null ? List.of() : onward(given, choice));
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(ctx, "hole-answer", answer);
            return;
        }
        Map<String, Object> values = new HashMap<>(answer);
        Cells cells = new Cells(QUESTION.form(), given, reply.findings());
        List<Cell> open = new ArrayList<>(cells.of("thread", "depth"));
        open.add(HoleEnds.cell(given));
        open.addAll(cells.of("material", "tap", "drills"));
        cells.of("blind", "through");
        values.put("open", open);
        values.put("rest", cells.rest());
        values.put("frame", new Frame(title(reply), Place.HOLE));
        shell.show(ctx, "hole", values);
    }

    private static List<Drawing> sketches(HoleChoice choice, UnitSystem units) {
        Figures figures = new Figures(units);
        List<Drawing> sketches = new ArrayList<>();
        String callOut = choice.wish().callOut().normal();
        sketches.add(new HoleView(HoleShape.of(choice), callOut, figures).draw("sketch-hole", Ink.SCREEN));
        if (!choice.curve().isEmpty()) {
            sketches.add(TradeOffView.of(choice, figures).draw("sketch-share", Ink.SCREEN));
        }
        return sketches;
    }

    /** On to the tap, to the cut with the drill chosen, and to the gauge. */
    private static List<Onward> onward(Map<String, String> given, HoleChoice choice) {
        Map<String, String> cut = new LinkedHashMap<>(given);
        cut.putIfAbsent("hole", diameter(choice));
        if (given.containsKey("material")) {
            cut.put("cuts", given.get("material"));
        }
        cut.remove("material");
        return List.of(
                Onward.to(new TapAsk(), Place.TAP.path(), given),
                Onward.to(new CutAsk(), Place.CUT.path(), cut),
                Onward.to(new GaugeAsk(), Place.GAUGE.path(), Map.of("thread", given.getOrDefault("thread", ""))));
    }

    private static String diameter(HoleChoice choice) {
        return choice.tools().drill().drill().diameter().mm() + " mm";
    }

    private static String title(Reply reply) {
        return reply.answer() == null
                ? Place.HOLE.noun()
                : Place.HOLE.noun() + " " + reply.answer().subject();
    }
}
