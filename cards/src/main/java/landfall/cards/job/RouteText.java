// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import landfall.cards.answer.Lines;
import landfall.cards.words.Words;
import landfall.fault.Caution;
import landfall.route.Operation;
import landfall.route.Planned;
import landfall.route.Route;
import landfall.route.Shortage;
import landfall.route.Totals;

/** A job for people, as plain text of 80 columns: what is short first. */
public final class RouteText {
    private static final int HANG = 6;

    private final JobState job;
    private final Route route;
    private final List<String> lines = new ArrayList<>();

    private RouteText(JobState job, Route route) {
        this.job = job;
        this.route = route;
    }

    public static String write(JobState job, Route route) {
        RouteText text = new RouteText(job, route);
        text.title();
        text.shortages();
        text.holes();
        text.operations();
        text.totals();
        text.done();
        text.cautions();
        return String.join("\n", text.lines);
    }

    private void title() {
        String title = (Words.of("job.title") + " " + job.number() + " "
                        + job.card().name())
                .replaceAll("\\s+", " ")
                .strip();
        lines.add(title);
        lines.add("=".repeat(Math.min(80, title.length())));
    }

    private void heading(String key) {
        lines.add("");
        lines.add(Words.of(key));
    }

    private void say(String head, String text) {
        lines.addAll(Lines.wrapped(head, HANG, text));
    }

    private void shortages() {
        if (route.shortages().isEmpty()) {
            heading("job.nothingShort");
            return;
        }
        heading("job.short");
        for (Shortage shortage : route.shortages()) {
            say("  ! ", Words.of("job.shortLine", numbers(shortage.lines()), shortage.says(), shortage.mend()));
        }
    }

    private static String numbers(List<Integer> all) {
        return all.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private void holes() {
        heading("job.holes");
        for (Planned planned : route.holes()) {
            LineWords words = LineWords.of(planned);
            int line = planned.line().line();
            say(
                    "  " + words.number() + " ",
                    Words.of(
                            "job.holeLine",
                            planned.line().count(),
                            words.callOut(),
                            planned.line().material().id(),
                            words.depth()));
            say("", Words.of("job.drillLine", words.drill(), words.drillDepth(), words.tap()));
            say("", Words.of("job.speedLine", words.speed(), words.cuttingSpeed(), words.gauge()));
            if (!job.number().isEmpty()) {
                say("", Words.of("job.progress", job.done(line), planned.line().count()));
            }
        }
    }

    private void operations() {
        heading("job.operations");
        int number = 0;
        for (Operation one : route.operations()) {
            number++;
            say(
                    "  " + number + ". ",
                    Words.of(
                            "job.operationLine",
                            one.kind().code(),
                            one.what(),
                            numbers(one.lines()),
                            LineWords.minutes(one.time().minutes())));
            say("", one.why());
        }
    }

    private void totals() {
        Totals totals = route.totals();
        lines.add("");
        lines.add(Words.of("job.time", LineWords.minutes(totals.time().minutes())));
        if (totals.work() != null) {
            lines.add(Words.of("job.costWork", LineWords.money(totals.work())));
        }
        if (totals.taps() != null) {
            lines.add(Words.of("job.costTaps", LineWords.money(totals.taps())));
        }
        if (totals.all() != null) {
            lines.add(Words.of("job.costAll", LineWords.money(totals.all())));
        }
    }

    private void done() {
        if (job.done().isEmpty()) {
            return;
        }
        heading("job.done");
        for (DoneMark mark : job.done()) {
            say(
                    "  ",
                    Words.of(
                                    "job.doneLine",
                                    mark.line(),
                                    mark.count(),
                                    mark.tap().mark(),
                                    mark.said().by(),
                                    mark.said().at())
                            + (mark.takenBack() ? " (" + Words.of("crib.takenBack") + ")" : ""));
        }
    }

    private void cautions() {
        heading("text.cautions");
        for (Caution caution : route.cautions()) {
            say("  ! ", caution.text());
        }
    }
}
