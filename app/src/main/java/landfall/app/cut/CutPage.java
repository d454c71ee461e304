// SPDX-License-Identifier: Apache-2.0
package landfall.app.cut;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.figure.Reply;
import landfall.app.given.HoleEnds;
import landfall.app.given.Onward;
import landfall.app.given.Opened;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.cards.ask.CutAsk;
import landfall.cards.ask.GrindAsk;
import landfall.cards.ask.LifeAsk;
import landfall.cards.ask.WhyAsk;
import landfall.fault.Answer;
import landfall.quantity.Band;
import landfall.sheets.cut.CutSketches;
import landfall.sheets.cut.Tapping;
import landfall.sheets.cut.Tappings;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;

/** {@code Cut}: will this tap cut this hole. */
public final class CutPage {
    private static final CutAsk QUESTION = new CutAsk();

    private final Shell shell;

    public CutPage(Shell shell) {
        this.shell = shell;
    }

    /**
     * What stands beside the figures.
     *
     * @param verdict good, unsure or bad: whether the bands of torque and strength stay apart
     */
    public record Beside(List<Drawing> sketches, String verdict, List<Onward> onward) {
        static final Beside NOTHING = new Beside(List.of(), "", List.of());
    }

    public void show(Context ctx) {
        Answer<Map<String, String>> typed =
                Typed.of(ctx).map(Opened::withoutFiles).map(HoleEnds::spelled);
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        Reply reply = Reply.to(QUESTION, typed);
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(ctx, "cut-answer", Map.of("reply", reply, "beside", beside(given, reply)));
        } else {
            page(ctx, given, reply);
        }
    }

    /** The tapping sheet as PDF; what was typed stands in the address, the paper beside it. */
    public void pdf(Context ctx) {
        Map<String, String> asked = new LinkedHashMap<>();
        Answer<byte[]> pdf = Typed.of(ctx).map(HoleEnds::spelled).then(typed -> {
            asked.putAll(typed);
            String paper = asked.remove("paper");
            return CutPaper.pdf(asked, paper == null ? "" : paper);
        });
        if (pdf instanceof Answer.Of<byte[]> of) {
            ctx.contentType("application/pdf").result(of.value());
            ctx.header("Content-Disposition", "inline; filename=\"tapping.pdf\"");
        } else {
            ctx.status(HttpStatus.BAD_REQUEST);
            page(ctx, asked, new Reply(null, pdf.findings()));
        }
    }

    /** Takes a tap card and sends the browser to the address that says so; the work material stays as typed. */
    public void open(Context ctx) {
        Opened opened = Opened.of(ctx);
        Map<String, String> typed = new LinkedHashMap<>(opened.typed());
        String cuts = ctx.formParam("cuts");
        if (cuts != null && !cuts.isBlank()) {
            typed.putIfAbsent("cuts", cuts.strip());
        }
        if (opened.findings().isEmpty()) {
            ctx.redirect(Typed.address(Place.CUT.path(), typed), HttpStatus.SEE_OTHER);
        } else {
            ctx.status(HttpStatus.BAD_REQUEST);
            page(ctx, HoleEnds.spelled(typed), new Reply(null, opened.findings()));
        }
    }

    private void page(Context ctx, Map<String, String> given, Reply reply) {
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(title(reply), Place.CUT));
        values.put("given", GivenCut.of(QUESTION.form(), given, reply.findings()));
        values.put("examples", CutExample.all());
        values.put("reply", reply);
        values.put("beside", beside(given, reply));
        values.put("query", Typed.address("", given));
        shell.show(ctx, "cut", values);
    }

    private static Beside beside(Map<String, String> given, Reply reply) {
        if (reply.answer() == null || !(Tappings.of(given) instanceof Answer.Of<Tapping> of)) {
            return Beside.NOTHING;
        }
        CutSketches sketches =
                new CutSketches(of.value(), new Figures(reply.answer().units()), "sketch");
        return new Beside(
                List.of(
                        sketches.hole(Ink.SCREEN),
                        sketches.torque(Ink.SCREEN),
                        sketches.slices(Ink.SCREEN),
                        sketches.section(Ink.SCREEN)),
                verdict(of.value().cut().load().margin()),
                onward(given));
    }

    private static String verdict(Band margin) {
        return margin.low() >= 1 ? "good" : margin.expected() >= 1 ? "unsure" : "bad";
    }

    /** On to the grinder with the same tap, to its life, and to why. */
    private static List<Onward> onward(Map<String, String> given) {
        Map<String, String> why = new LinkedHashMap<>(given);
        why.put("material", given.getOrDefault("cuts", ""));
        why.keySet().removeIf(path -> path.equals("cuts"));
        return List.of(
                Onward.to(new GrindAsk(), Place.GRIND.path(), given),
                Onward.to(new LifeAsk(), Place.GRIND.path() + "/life", given),
                Onward.to(new WhyAsk(), Place.WHY.path(), why));
    }

    private static String title(Reply reply) {
        return reply.answer() == null
                ? Place.CUT.noun()
                : Place.CUT.noun() + " " + reply.answer().subject();
    }
}
