// SPDX-License-Identifier: Apache-2.0
package landfall.app.job;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.app.crib.CribDoor;
import landfall.app.crib.Signing;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.visitor.Visitor;
import landfall.cards.job.Amiss;
import landfall.cards.job.JobCard;
import landfall.cards.job.JobPlan;
import landfall.cards.job.JobState;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.history.JobNumber;
import landfall.route.Route;
import landfall.store.StoreFault;
import landfall.store.job.KeptJob;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** The page of jobs: those that are kept, and the holes of a new one as rows of cells. */
public final class JobPage {
    private static final int MOST = 100;

    private final Shell shell;
    private final JobDoor door;

    public JobPage(Shell shell, CribDoor door) {
        this.shell = shell;
        this.door = new JobDoor(door);
    }

    public void list(Context ctx) {
        show(ctx, JobForm.blank(), null);
    }

    /** Plans what was typed and keeps nothing; or puts a pasted table into rows, or makes room for more. */
    public void plan(Context ctx) {
        JobForm form = JobForm.of(ctx);
        switch (Optional.ofNullable(ctx.formParam("do")).orElse("plan")) {
            case "paste" -> show(ctx, form.pasted(), null);
            case "more" -> show(ctx, form.longer(), null);
            default -> planned(ctx, form);
        }
    }

    private void planned(Context ctx, JobForm form) {
        Tried tried = tried(form);
        show(ctx, form.with(tried.amiss), tried.view());
    }

    /** Keeps what was typed as a job, then shows it. */
    public void keep(Context ctx) {
        JobForm form = JobForm.of(ctx);
        Tried tried = tried(form);
        Answer<String> by = Signing.of(ctx, Map.of());
        List<Amiss> amiss = new ArrayList<>(tried.amiss);
        by.findings().forEach(found -> amiss.add(new Amiss(0, found)));
        JobCard card = tried.card;
        if (!amiss.isEmpty() || card == null) {
            show(ctx, form.with(amiss), tried.view());
            return;
        }
        try {
            JobNumber number = door.jobs().add(card, new KeptJob.Made(door.now().toInstant(), by.orThrow()));
            ctx.redirect("/job/" + number, HttpStatus.SEE_OTHER);
        } catch (StoreFault e) {
            show(ctx, form.with(List.of(new Amiss(0, e.finding()))), null);
        }
    }

    /** What came of a form. */
    private record Tried(@Nullable JobCard card, @Nullable RouteView view, List<Amiss> amiss) {}

    private Tried tried(JobForm form) {
        JobCard.Read read = JobCard.of(form.given());
        if (!(read instanceof JobCard.Good good)) {
            return new Tried(null, null, ((JobCard.Bad) read).amiss());
        }
        try {
            Answer<Worked<Route>> route = door.plan(good.card());
            return route instanceof Answer.Of<Worked<Route>> of
                    ? new Tried(
                            good.card(),
                            door.view(JobState.planned(good.card()), of.value().value()),
                            List.of())
                    : new Tried(null, null, JobPlan.amiss(route, form.given()));
        } catch (StoreFault e) {
            return new Tried(null, null, List.of(new Amiss(0, e.finding())));
        }
    }

    private void show(Context ctx, JobForm form, @Nullable RouteView view) {
        JobForm shown = form;
        List<KeptJob> jobs = List.of();
        try {
            jobs = door.jobs().list(MOST);
        } catch (StoreFault e) {
            List<Amiss> all = new ArrayList<>(form.amiss());
            all.add(new Amiss(0, e.finding()));
            shown = form.with(all);
        }
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(Words.of("title.jobs"), Place.JOB));
        values.put("visitor", Visitor.of(ctx));
        values.put("jobs", jobs);
        values.put("holes", shown.holes());
        values.put("cells", shown.cells("name", "drive"));
        values.put("shop", shown.cells("drills", "gauges", "hour", "tap-price", "spoilt", "sharpenings"));
        values.put("paste", shown.paste());
        values.put("findings", shown.placed());
        values.put("view", Optional.ofNullable(view));
        if (!shown.amiss().isEmpty()) {
            ctx.status(HttpStatus.BAD_REQUEST);
        }
        shell.show(ctx, "job", values);
    }
}
