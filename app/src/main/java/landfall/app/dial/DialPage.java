// SPDX-License-Identifier: Apache-2.0
package landfall.app.dial;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import landfall.app.example.Examples;
import landfall.app.figure.Reply;
import landfall.app.given.Opened;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.cards.ask.DialAsk;
import landfall.cards.ask.Dialled;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import org.jspecify.annotations.Nullable;

/** What the readings say, and what to turn. */
public final class DialPage {
    static final String PATH = Place.GRIND.path() + "/dial";

    private static final DialAsk QUESTION = new DialAsk();
    /** Longer answers to a form would not fit into the address that a browser is sent to. */
    private static final int LONGEST_REDIRECT = 6000;

    private final Shell shell;

    public DialPage(Shell shell) {
        this.shell = shell;
    }

    public void show(Context ctx) {
        show(ctx, Typed.of(ctx).map(Opened::withoutFiles));
    }

    /** The same, for readings that no address is long enough for. */
    public void post(Context ctx) {
        show(ctx, Answer.of(Opened.of(ctx).typed()));
    }

    /** Takes files of readings and cards, and sends the browser to the address that says the same. */
    public void open(Context ctx) {
        Opened opened = Opened.of(ctx);
        String address = Typed.address(PATH, opened.typed());
        if (!opened.findings().isEmpty()) {
            ctx.status(HttpStatus.BAD_REQUEST);
            page(ctx, opened.typed(), new Reply(null, opened.findings()));
        } else if (address.length() > LONGEST_REDIRECT) {
            show(ctx, Answer.of(opened.typed()));
        } else {
            ctx.redirect(address, HttpStatus.SEE_OTHER);
        }
    }

    /** The sheet as PDF; what was typed stands in the address, the paper beside it. */
    public void pdf(Context ctx) {
        Answer<byte[]> pdf = Typed.of(ctx).then(typed -> {
            Map<String, String> given = Opened.withoutFiles(typed);
            String paper = given.remove("paper");
            return DialPaper.pdf(PlacesRead.of(given).chosen(given), paper == null ? "" : paper);
        });
        if (pdf instanceof Answer.Of<byte[]> of) {
            ctx.contentType("application/pdf").result(of.value());
            ctx.header("Content-Disposition", "inline; filename=\"dialling-in.pdf\"");
        } else {
            ctx.status(HttpStatus.BAD_REQUEST);
            page(ctx, Map.of(), new Reply(null, pdf.findings()));
        }
    }

    private void show(Context ctx, Answer<Map<String, String>> typed) {
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        Map<String, String> chosen = PlacesRead.of(given).chosen(given);
        // A tap that was carried here is no question yet: the page waits for the readings.
        boolean waits = typed instanceof Answer.Of<Map<String, String>> && !given.containsKey("readings");
        Reply reply = waits ? Reply.NOTHING : Reply.to(QUESTION, typed.map(any -> chosen));
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(ctx, "dial-answer", answer(given, chosen, reply));
        } else {
            page(ctx, given, reply);
        }
    }

    private Map<String, Object> answer(Map<String, String> given, Map<String, String> chosen, Reply reply) {
        Map<String, Object> values = new HashMap<>();
        values.put("reply", reply);
        values.put("pictures", reply.answer() == null ? null : pictures(chosen));
        values.put("others", PlacesRead.of(given).others(given));
        return values;
    }

    private static @Nullable DialPictures pictures(Map<String, String> typed) {
        return QUESTION.dialled(typed) instanceof Answer.Of<Dialled> of ? DialPictures.of(of.value()) : null;
    }

    private void page(Context ctx, Map<String, String> given, Reply reply) {
        Map<String, Object> values = answer(given, PlacesRead.of(given).chosen(given), reply);
        values.put("frame", new Frame(title(reply), Place.GRIND));
        values.put("given", GivenReadings.of(QUESTION.form(), given, reply.findings()));
        values.put("example", example());
        values.put("query", Typed.address("", given));
        shell.show(ctx, "dial", values);
    }

    /** The readings that the invented shop took of its left-hand tap. */
    private static String example() {
        Map<String, String> typed = new LinkedHashMap<>();
        List<Examples.Example> all = Examples.all();
        typed.put("readings", Examples.text("readings-m10.csv").strip());
        typed.putAll(new TreeMap<>(all.get(all.size() - 1).typed()));
        return Typed.address(PATH, typed);
    }

    private static String title(Reply reply) {
        String title = Words.of("title.dial");
        return reply.answer() == null ? title : title + " " + reply.answer().subject();
    }
}
