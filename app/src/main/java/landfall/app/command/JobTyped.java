// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.app.crib.DueTaps;
import landfall.app.job.JobHolds;
import landfall.app.job.JobJson;
import landfall.cards.card.ShopCard;
import landfall.cards.form.Field;
import landfall.cards.job.Amiss;
import landfall.cards.job.JobCard;
import landfall.cards.job.JobForms;
import landfall.cards.job.JobGiven;
import landfall.cards.job.JobPlan;
import landfall.cards.job.JobText;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.route.Route;
import landfall.working.Worked;

/** A job as it is written for a command: a file or standard input, the job's own options, the shop's card. */
final class JobTyped {
    private static final int GREATEST = (int) InputFile.GREATEST;

    private JobTyped() {}

    static Options options(Options options) {
        options.word("FILE").text("shop");
        for (Field<?> field : JobForms.JOB.fields()) {
            options.text(field.path());
        }
        return options;
    }

    /** A job that can be planned. */
    record Ready(JobGiven given, JobCard card, Worked<Route> route) {}

    /** The job with its plan, or the exit after everything that is amiss was said. */
    static Optional<Ready> read(CribDesk desk) {
        JobGiven given = given(desk);
        JobCard.Read read = JobCard.of(given);
        if (!(read instanceof JobCard.Good good)) {
            say(((JobCard.Bad) read).amiss(), desk);
            return Optional.empty();
        }
        Answer<Worked<Route>> route = plan(desk, good.card());
        if (!(route instanceof Answer.Of<Worked<Route>> of)) {
            say(JobPlan.amiss(route, given), desk);
            return Optional.empty();
        }
        return Optional.of(new Ready(given, good.card(), of.value()));
    }

    static Answer<Worked<Route>> plan(CribDesk desk, JobCard card) {
        return JobPlan.of(card, JobHolds.of(desk.crib(), new DueTaps(desk.store()), card), today(desk));
    }

    static LocalDate today(CribDesk desk) {
        return desk.now().toLocalDate();
    }

    private static JobGiven given(CribDesk desk) {
        String file = desk.written().word(0).orElse("");
        Answer<String> text = file.isEmpty()
                ? Answer.refused(
                        new Finding("file", "", "is needed", "write a table of holes, or - for standard input"))
                : file.equals("-") ? input(desk.terminal()) : InputFile.text("file", file);
        if (!(text instanceof Answer.Of<String> of)) {
            return refused(text.findings());
        }
        Answer<Map<String, String>> shop = shop(desk.written());
        if (!(shop instanceof Answer.Of<Map<String, String>> card)) {
            return refused(shop.findings());
        }
        Map<String, String> told = new LinkedHashMap<>();
        JobForms.JOB.paths().forEach(path -> desk.written().text(path).ifPresent(given -> told.put(path, given)));
        return JobText.read(of.value()).with(told).in(card.value());
    }

    private static JobGiven refused(List<Finding> findings) {
        return new JobGiven(
                Map.of(),
                List.of(),
                findings.stream().map(finding -> new Amiss(0, finding)).toList());
    }

    private static Answer<String> input(Terminal terminal) {
        try {
            byte[] bytes = terminal.in().readNBytes(GREATEST + 1);
            return bytes.length > GREATEST
                    ? Answer.refused(new Finding("file", "-", "is over 4 MB", "give the holes of one job"))
                    : Answer.of(new String(bytes, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Answer<Map<String, String>> shop(Options.Written written) {
        Optional<String> file = written.text("shop");
        return file.isEmpty()
                ? Answer.of(Map.of())
                : InputFile.text("shop", file.get()).then(ShopCard::read);
    }

    private static void say(List<Amiss> amiss, CribDesk desk) {
        if (desk.json()) {
            desk.terminal().out().println(JobJson.refusal(amiss));
        } else {
            amiss.forEach(one -> desk.terminal().err().println(one.placed().sentence()));
        }
    }
}
