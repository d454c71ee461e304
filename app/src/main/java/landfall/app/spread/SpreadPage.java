// SPDX-License-Identifier: Apache-2.0
package landfall.app.spread;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.sse.SseClient;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import landfall.app.crib.FormTyped;
import landfall.app.figure.AnswerView;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.app.visitor.Visitor;
import landfall.cards.spread.SpreadDocument;
import landfall.cards.spread.SpreadFields;
import landfall.cards.spread.SpreadFile;
import landfall.cards.spread.SpreadSetup;
import landfall.cards.spread.SpreadText;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.spread.AlongView;
import landfall.sheets.spread.CausesView;
import landfall.sheets.spread.HistogramView;
import landfall.spread.Summary;

/** {@code What if}: what varies, what is watched; then the run with its progress and what it found. */
public final class SpreadPage {
    private static final long EVERY_NS = 200_000_000L;

    private final Shell shell;
    private final Runs runs;

    public SpreadPage(Shell shell, Runs runs) {
        this.shell = shell;
        this.runs = runs;
    }

    /** The form, as its address fills it in. */
    public void show(Context ctx) {
        Answer<Map<String, String>> typed = Typed.of(ctx);
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        show(ctx, WishForm.of(given), typed.findings());
    }

    private void show(Context ctx, WishForm form, List<Finding> findings) {
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(Words.of("title.spread"), Place.WHAT_IF));
        values.put("form", new FormView(form, findings));
        values.put(
                "runs",
                Visitor.of(ctx).mayUse()
                        ? runs.latest().stream().map(RunLine::of).toList()
                        : List.of());
        values.put("visitor", Visitor.of(ctx));
        if (!findings.isEmpty()) {
            ctx.status(HttpStatus.BAD_REQUEST);
        }
        shell.show(ctx, "spread", values);
    }

    /** Starts a run, or shows what is wrong with it; with {@code do=lines} only makes room for more. */
    public void start(Context ctx) {
        Map<String, String> typed = FormTyped.of(ctx);
        String act = typed.remove("do");
        WishForm form = WishForm.of(typed);
        if ("lines".equals(act)) {
            ctx.redirect(form.address(), HttpStatus.SEE_OTHER);
            return;
        }
        Answer<Going> started = SpreadSetup.of(form.wish()).then(runs::start);
        if (started instanceof Answer.Of<Going> of) {
            ctx.redirect(path(of.value()), HttpStatus.SEE_OTHER);
        } else {
            show(ctx, form, started.findings());
        }
    }

    private static String path(Going run) {
        return WishForm.PATH + "/" + run.name();
    }

    private Going find(Context ctx) {
        return runs.find(ctx.pathParam("run")).orElseThrow(() -> new NotFoundResponse("no such run"));
    }

    /** One run: how far it is, or what it found. */
    public void run(Context ctx) {
        Going run = find(ctx);
        Summary found = run.found();
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(Words.of("title.spread"), Place.WHAT_IF));
        values.put("run", RunLine.of(run));
        values.put("again", WishForm.of(run.setup().wish()).address());
        values.put("visitor", Visitor.of(ctx));
        values.put(
                "answer",
                Optional.ofNullable(found).map(summary -> new AnswerView(SpreadDocument.of(run.setup(), summary))));
        values.put("charts", found == null ? List.of() : charts(run.setup(), found));
        values.put("says", found == null ? "" : SpreadText.write(run.setup(), found));
        shell.show(ctx, "spread-run", values);
    }

    /**
     * A drawing of what a run found.
     *
     * @param said the same in words
     */
    public record Chart(Drawing drawing, String said) {}

    private static List<Chart> charts(SpreadSetup setup, Summary found) {
        List<Chart> charts = new ArrayList<>();
        for (int result = 0; result < setup.watched().size(); result++) {
            HistogramView histogram = new HistogramView(setup, found, result);
            if (histogram.isThere()) {
                charts.add(new Chart(histogram.draw("spread-" + result, Ink.SCREEN), histogram.said()));
            }
            CausesView causes = new CausesView(setup, found, result);
            if (causes.isThere()) {
                charts.add(new Chart(causes.draw("causes-" + result, Ink.SCREEN), causes.said()));
            }
            for (int input = 0; input < setup.varied().size(); input++) {
                AlongView along = new AlongView(setup, found, result, input);
                if (along.isThere()) {
                    charts.add(new Chart(along.draw("along-" + result + "-" + input, Ink.SCREEN), along.said()));
                }
            }
        }
        return charts;
    }

    /** Tells a browser how far a run is, until it stands still. */
    public void events(SseClient client) {
        Going run = find(client.ctx());
        client.keepAlive();
        AtomicLong last = new AtomicLong(System.nanoTime() - EVERY_NS);
        Consumer<Going.Told> listener = told -> {
            boolean still = told.stand() != Going.Stand.WAITS && told.stand() != Going.Stand.WORKS;
            long now = System.nanoTime();
            if (still || now - last.get() >= EVERY_NS) {
                last.set(now);
                client.sendEvent(still ? "still" : "far", RunLine.words(told));
            }
            if (still) {
                client.close();
            }
        };
        client.onClose(() -> run.leave(listener));
        run.listen(listener);
    }

    public void stop(Context ctx) {
        Going run = find(ctx);
        run.stop();
        ctx.redirect(path(run), HttpStatus.SEE_OTHER);
    }

    public void goOn(Context ctx) {
        Going run = find(ctx);
        runs.goOn(run);
        ctx.redirect(path(run), HttpStatus.SEE_OTHER);
    }

    public void throwAway(Context ctx) {
        runs.throwAway(find(ctx));
        ctx.redirect(WishForm.PATH, HttpStatus.SEE_OTHER);
    }

    /** The file that {@code landfall spread run} takes: the same seed gives the same digits there. */
    public void file(Context ctx) {
        Going run = find(ctx);
        ctx.contentType("application/json; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"what-if-%s.json\"".formatted(run.name()))
                .result(SpreadFile.write(run.setup().wish()));
    }

    /**
     * A run in a list.
     *
     * @param stand its state as a word of code: {@code works}
     */
    public record RunLine(String name, String address, String subject, String stand, String words) {
        static RunLine of(Going run) {
            return new RunLine(
                    run.name(),
                    path(run),
                    Words.of("page." + run.setup().wish().question() + ".question") + " "
                            + run.setup().nominal().subject(),
                    run.told().stand().name().toLowerCase(Locale.ROOT),
                    words(run.told()));
        }

        static String words(Going.Told told) {
            return Words.of(
                    "page.spread." + told.stand().name().toLowerCase(Locale.ROOT),
                    Long.toString(told.samples()),
                    Long.toString(told.of()));
        }

        public boolean isStopped() {
            return stand.equals("stopped");
        }

        public boolean isBusy() {
            return stand.equals("waits") || stand.equals("works");
        }
    }

    /** The form as the page shows it. */
    public record FormView(WishForm form, List<Finding> findings) {
        public List<String> nouns() {
            return SpreadFields.nouns();
        }

        public List<WishForm.Line> vary() {
            return WishForm.spare(form.vary());
        }

        public List<WishForm.Line> watch() {
            return WishForm.spare(form.watch());
        }

        public List<String> fields() {
            return form.fields();
        }

        public List<String> results() {
            return form.results();
        }

        public String number(String path) {
            return form.numbers().getOrDefault(path, "");
        }
    }
}
