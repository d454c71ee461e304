// SPDX-License-Identifier: Apache-2.0
package landfall.app.job;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import landfall.app.crib.CribDoor;
import landfall.app.crib.Signing;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.card.Flat;
import landfall.cards.form.Form;
import landfall.cards.job.Amiss;
import landfall.cards.job.JobCard;
import landfall.cards.job.JobDocument;
import landfall.cards.job.JobGiven;
import landfall.cards.job.JobPlan;
import landfall.cards.job.JobState;
import landfall.cards.job.JobText;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.JobNumber;
import landfall.history.Mark;
import landfall.route.Route;
import landfall.store.crib.Saying;
import landfall.store.job.Done;
import landfall.store.job.Jobs;
import landfall.store.job.KeptJob;
import landfall.working.Worked;

/**
 * Jobs for other programs: what {@code landfall job plan, add, list, show, done} and {@code undo} say with
 * {@code --json}.
 */
public final class JobApi {
    private static final int MOST = 1000;
    private static final Form ANY = Form.of("body");

    private final JobDoor door;

    public JobApi(CribDoor door) {
        this.door = new JobDoor(door);
    }

    public void list(Context ctx) {
        json(ctx, HttpStatus.OK, JobJson.list(door.jobs().list(MOST)));
    }

    /** Plans a job, given as {@code landfall job plan} takes it, and keeps nothing. */
    public void plan(Context ctx) {
        ready(ctx, (card, route) -> json(ctx, HttpStatus.OK, written(JobState.planned(card), route)));
    }

    /** Keeps a job and plans it. */
    public void add(Context ctx) {
        Answer<String> by = Signing.of(ctx, Map.of());
        if (!by.findings().isEmpty()) {
            refuse(ctx, by.findings());
            return;
        }
        ready(ctx, (card, route) -> {
            JobNumber number = door.jobs().add(card, new KeptJob.Made(door.now().toInstant(), by.orThrow()));
            json(ctx, HttpStatus.CREATED, written(new JobState(number.text(), card, List.of()), route));
        });
    }

    private interface Ready {
        void with(JobCard card, Worked<Route> route);
    }

    private void ready(Context ctx, Ready ready) {
        JobGiven given = JobText.read(ctx.body());
        JobCard.Read read = JobCard.of(given);
        if (!(read instanceof JobCard.Good good)) {
            amiss(ctx, ((JobCard.Bad) read).amiss());
            return;
        }
        Answer<Worked<Route>> route = door.plan(good.card());
        if (route instanceof Answer.Of<Worked<Route>> of) {
            ready.with(good.card(), of.value());
        } else {
            amiss(ctx, JobPlan.amiss(route, given));
        }
    }

    private static String written(JobState state, Worked<Route> route) {
        return JsonAnswer.write(JobDocument.of(state, route));
    }

    public void show(Context ctx) {
        with(ctx, Answer::of);
    }

    /** Holes of a line are done: {@code {"line","tap","count","by","ticket"}}. */
    public void done(Context ctx) {
        with(ctx, job -> Flat.read(ctx.body(), ANY).then(typed -> done(ctx, job, typed)));
    }

    private Answer<KeptJob> done(Context ctx, KeptJob job, Map<String, String> typed) {
        Answer<Integer> line = count("line", typed.getOrDefault("line", ""));
        Answer<Integer> count = typed.containsKey("count") ? count("count", typed.get("count")) : Answer.of(0);
        Answer<Mark> tap = Mark.read(typed.getOrDefault("tap", ""));
        Answer<String> by = Signing.of(ctx, typed);
        List<Finding> findings = new ArrayList<>(line.findings());
        findings.addAll(count.findings());
        findings.addAll(tap.findings());
        findings.addAll(by.findings());
        if (!findings.isEmpty()) {
            return Answer.refused(findings);
        }
        return door.jobs()
                .done(new Done(
                        place(job, line.orThrow()),
                        tap.orThrow(),
                        count.orThrow() == 0 ? null : count.orThrow(),
                        new Saying.Who(by.orThrow(), door.now().toInstant()),
                        typed.get("ticket")));
    }

    /** Takes the last done mark of a line back: {@code {"line","because","by"}}. */
    public void takeBack(Context ctx) {
        with(ctx, job -> Flat.read(ctx.body(), ANY).then(typed -> takeBack(ctx, job, typed)));
    }

    private Answer<KeptJob> takeBack(Context ctx, KeptJob job, Map<String, String> typed) {
        Answer<Integer> line = count("line", typed.getOrDefault("line", ""));
        Answer<String> by = Signing.of(ctx, typed);
        List<Finding> findings = new ArrayList<>(line.findings());
        findings.addAll(by.findings());
        return findings.isEmpty()
                ? door.jobs()
                        .takeBack(
                                place(job, line.orThrow()),
                                typed.getOrDefault("because", ""),
                                new Saying.Who(by.orThrow(), door.now().toInstant()))
                : Answer.refused(findings);
    }

    private static Done.Place place(KeptJob job, int line) {
        return new Done.Place(new JobNumber(job.state().number()), line);
    }

    private static Answer<Integer> count(String field, String text) {
        return text.matches("[1-9]\\d{0,6}")
                ? Answer.of(Integer.valueOf(text))
                : Answer.refused(new Finding(field, text, "is not a whole number from 1 on", "write one, such as 4"));
    }

    private void with(Context ctx, Function<KeptJob, Answer<KeptJob>> work) {
        Answer<JobNumber> number = JobNumber.read(ctx.pathParam("number"));
        if (!(number instanceof Answer.Of<JobNumber> of)) {
            refuse(ctx, number.findings());
            return;
        }
        Optional<KeptJob> job = door.jobs().find(of.value());
        if (job.isEmpty()) {
            json(ctx, HttpStatus.NOT_FOUND, JsonAnswer.refusal(List.of(Jobs.unknown(of.value()))));
            return;
        }
        Answer<String> written = work.apply(job.get())
                .then(then -> door.plan(then.state().card()).map(route -> written(then.state(), route)));
        if (written instanceof Answer.Of<String> text) {
            json(ctx, HttpStatus.OK, text.value());
        } else {
            refuse(ctx, written.findings());
        }
    }

    private static void amiss(Context ctx, List<Amiss> amiss) {
        json(ctx, HttpStatus.BAD_REQUEST, JobJson.refusal(amiss));
    }

    private static void refuse(Context ctx, List<Finding> findings) {
        json(ctx, HttpStatus.BAD_REQUEST, JsonAnswer.refusal(findings));
    }

    private static void json(Context ctx, HttpStatus status, String text) {
        ctx.status(status).contentType("application/json; charset=utf-8").result(text);
    }
}
