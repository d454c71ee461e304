// SPDX-License-Identifier: Apache-2.0
package landfall.app.job;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import landfall.app.crib.CribDoor;
import landfall.app.crib.FormTyped;
import landfall.app.crib.Signing;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.visitor.Visitor;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.JobNumber;
import landfall.history.Mark;
import landfall.route.Route;
import landfall.sheets.paper.PaperSize;
import landfall.store.StoreFault;
import landfall.store.crib.Saying;
import landfall.store.job.Done;
import landfall.store.job.KeptJob;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** The page of one job: what is short, the route, done marks; and its card on paper. */
public final class KeptJobPage {
    private final Shell shell;
    private final JobDoor door;

    public KeptJobPage(Shell shell, CribDoor door) {
        this.shell = shell;
        this.door = new JobDoor(door);
    }

    public void show(Context ctx) {
        show(ctx, find(ctx), Map.of(), List.of());
    }

    private KeptJob find(Context ctx) {
        Answer<JobNumber> number = JobNumber.read(ctx.pathParam("number"));
        Optional<KeptJob> job =
                number instanceof Answer.Of<JobNumber> of ? door.jobs().find(of.value()) : Optional.empty();
        return job.orElseThrow(() -> new NotFoundResponse("no such job"));
    }

    /** @param typed what a refused mark was, by the name of its field */
    private void show(Context ctx, KeptJob job, Map<String, String> typed, List<Finding> findings) {
        Answer<Worked<Route>> route = door.plan(job.state().card());
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(route.findings());
        Map<String, Object> values = new HashMap<>();
        values.put(
                "frame",
                new Frame(job.state().number() + " " + job.state().card().name(), Place.JOB));
        values.put("visitor", Visitor.of(ctx));
        values.put("job", job);
        values.put("view", Optional.ofNullable(view(job, route)));
        values.put("typed", typed);
        values.put("by", typed.getOrDefault("by", Signing.usual(ctx)));
        values.put("ticket", typed.getOrDefault("ticket", UUID.randomUUID().toString()));
        values.put(
                "when",
                DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm")
                        .withZone(door.now().getZone()));
        values.put("findings", all);
        if (!all.isEmpty()) {
            ctx.status(HttpStatus.BAD_REQUEST);
        }
        shell.show(ctx, "job-kept", values);
    }

    private @Nullable RouteView view(KeptJob job, Answer<Worked<Route>> route) {
        return route instanceof Answer.Of<Worked<Route>> of
                ? door.view(job.state(), of.value().value())
                : null;
    }

    /** Holes of a line are done; what is refused stands in the line's cells again. */
    public void done(Context ctx) {
        Map<String, String> typed = FormTyped.of(ctx);
        KeptJob job = find(ctx);
        List<Finding> findings = new ArrayList<>();
        Answer<Integer> line = count("line", typed);
        Answer<Mark> tap = Mark.read(typed.getOrDefault("tap", ""));
        Answer<Integer> count = typed.containsKey("count") ? count("count", typed) : Answer.of(0);
        Answer<String> by = Signing.of(ctx, typed);
        findings.addAll(line.findings());
        findings.addAll(tap.findings());
        findings.addAll(count.findings());
        findings.addAll(by.findings());
        if (findings.isEmpty()) {
            findings.addAll(write(new Done(
                            new Done.Place(new JobNumber(job.state().number()), line.orThrow()),
                            tap.orThrow(),
                            count.orThrow() == 0 ? null : count.orThrow(),
                            new Saying.Who(by.orThrow(), door.now().toInstant()),
                            typed.get("ticket")))
                    .findings());
        }
        finish(ctx, job, typed, findings);
    }

    private Answer<KeptJob> write(Done done) {
        try {
            return door.jobs().done(done);
        } catch (StoreFault e) {
            return Answer.refused(e.finding());
        }
    }

    private static Answer<Integer> count(String field, Map<String, String> typed) {
        String text = typed.getOrDefault(field, "");
        return text.matches("[1-9]\\d{0,6}")
                ? Answer.of(Integer.valueOf(text))
                : Answer.refused(new Finding(field, text, "is not a whole number", "write it in figures, such as 4"));
    }

    /** Takes the last mark of a line back. */
    public void takeBack(Context ctx) {
        Map<String, String> typed = FormTyped.of(ctx);
        KeptJob job = find(ctx);
        Answer<Integer> line = count("line", typed);
        Answer<String> by = Signing.of(ctx, typed);
        List<Finding> findings = new ArrayList<>(line.findings());
        findings.addAll(by.findings());
        if (findings.isEmpty()) {
            Answer<KeptJob> taken = door.jobs()
                    .takeBack(
                            new Done.Place(new JobNumber(job.state().number()), line.orThrow()),
                            typed.getOrDefault("because", ""),
                            new Saying.Who(by.orThrow(), door.now().toInstant()));
            findings.addAll(taken.findings());
        }
        finish(ctx, job, typed, findings);
    }

    private void finish(Context ctx, KeptJob job, Map<String, String> typed, List<Finding> findings) {
        if (findings.isEmpty()) {
            Signing.remember(ctx, typed.getOrDefault("by", ""));
            ctx.redirect("/job/" + job.state().number(), HttpStatus.SEE_OTHER);
        } else {
            show(ctx, find(ctx), typed, findings);
        }
    }

    /** The route card; its square code opens this page under the address that it was asked for by. */
    public void card(Context ctx) {
        KeptJob job = find(ctx);
        Answer<PaperSize> paper =
                JobSheet.paper(Optional.ofNullable(ctx.queryParam("paper")).orElse("a4"));
        Answer<Worked<Route>> route = door.plan(job.state().card());
        List<Finding> findings = new ArrayList<>(paper.findings());
        findings.addAll(route.findings());
        if (!findings.isEmpty()) {
            show(ctx, job, Map.of(), findings);
            return;
        }
        String address =
                ctx.scheme() + "://" + ctx.host() + "/job/" + job.state().number();
        ctx.contentType("application/pdf")
                .header(
                        "Content-Disposition",
                        "inline; filename=\"" + job.state().number() + ".pdf\"")
                .result(JobSheet.pdf(job.state(), route.orThrow().value(), address, paper.orThrow()));
    }
}
