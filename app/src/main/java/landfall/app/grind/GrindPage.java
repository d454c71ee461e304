// SPDX-License-Identifier: Apache-2.0
package landfall.app.grind;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.example.Examples;
import landfall.app.figure.Reply;
import landfall.app.given.Onward;
import landfall.app.given.Opened;
import landfall.app.given.OpenedFor;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.cards.ask.DecideAsk;
import landfall.cards.ask.DialAsk;
import landfall.cards.ask.GrindAsk;
import landfall.cards.ask.InspectAsk;
import landfall.cards.ask.LifeAsk;
import landfall.fault.Answer;

/** {@code Grind}: how to set the fixture for a tap. */
public final class GrindPage {
    private static final GrindAsk QUESTION = new GrindAsk();
    private static final OpenedFor FOR_NONE = new OpenedFor("", Answer.of(Map.of()));

    private final Shell shell;

    public GrindPage(Shell shell) {
        this.shell = shell;
    }

    public void show(Context ctx) {
        OpenedFor opened = OpenedFor.of(Typed.of(ctx).map(Opened::withoutFiles));
        Answer<Map<String, String>> typed = opened.typed();
        Reply reply = Reply.to(QUESTION, typed);
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(
                    ctx,
                    "grind-answer",
                    Map.of(
                            "reply",
                            reply,
                            "pictures",
                            pictures(given, reply),
                            "onward",
                            onward(given),
                            "query",
                            Typed.address("", given)));
        } else {
            page(ctx, given, reply, opened);
        }
    }

    /** The sheet as PDF; what was typed stands in the address, the paper beside it. */
    public void pdf(Context ctx) {
        Answer<byte[]> pdf = Typed.of(ctx).then(typed -> {
            Map<String, String> given = new LinkedHashMap<>(typed);
            given.remove(OpenedFor.FIELD);
            String paper = given.remove("paper");
            return GrindPaper.pdf(given, paper == null ? "" : paper);
        });
        if (pdf instanceof Answer.Of<byte[]> of) {
            ctx.contentType("application/pdf").result(of.value());
            ctx.header("Content-Disposition", "inline; filename=\"setup.pdf\"");
        } else {
            ctx.status(HttpStatus.BAD_REQUEST);
            page(ctx, Map.of(), new Reply(null, pdf.findings()), FOR_NONE);
        }
    }

    private static Pictures pictures(Map<String, String> typed, Reply reply) {
        return reply.answer() == null
                ? Pictures.NONE
                : Pictures.of(QUESTION, typed, reply.answer().units());
    }

    /**
     * Takes card files, puts them in the place of what was typed for that tap or fixture, and sends the browser to the
     * address that says so.
     */
    public void open(Context ctx) {
        Opened opened = Opened.of(ctx);
        if (opened.findings().isEmpty()) {
            ctx.redirect(Typed.address(Place.GRIND.path(), opened.typed()), HttpStatus.SEE_OTHER);
        } else {
            ctx.status(HttpStatus.BAD_REQUEST);
            page(ctx, opened.typed(), new Reply(null, opened.findings()), FOR_NONE);
        }
    }

    private void page(Context ctx, Map<String, String> typed, Reply reply, OpenedFor opened) {
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(title(reply), Place.GRIND));
        values.put("given", GivenTapAndFixture.of(QUESTION.form(), typed, reply.findings()));
        values.put("examples", Examples.all());
        values.put("reply", reply);
        values.put("onward", onward(typed));
        values.put("pictures", pictures(typed, reply));
        values.put("opened", opened);
        values.put("query", Typed.address("", typed));
        shell.show(ctx, "grind", values);
    }

    /** The readings first: the dials of the sheet lead there. */
    private static List<Onward> onward(Map<String, String> typed) {
        String path = Place.GRIND.path();
        return List.of(
                Onward.to(new DialAsk(), path + "/dial", typed),
                Onward.to(new InspectAsk(), path + "/inspect", typed),
                Onward.to(new DecideAsk(), path + "/decide", typed),
                Onward.to(new LifeAsk(), path + "/life", typed));
    }

    private static String title(Reply reply) {
        return reply.answer() == null
                ? Place.GRIND.noun()
                : Place.GRIND.noun() + " " + reply.answer().subject();
    }
}
