// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cards.job.JobCard;
import landfall.cards.job.JobForms;
import landfall.cards.job.JobGiven;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.JobNumber;
import landfall.history.Mark;
import landfall.store.crib.TicketRows;
import landfall.store.job.JobRows;
import landfall.store.job.KeptJob;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Rows that tell jobs: one for the job, one for each line of its holes, one for each done mark, in this order. */
final class JobTaker implements TableIn.RowTaker {
    private final Handle handle;
    private @Nullable Open open;

    /** A job whose lines are still coming. */
    private static final class Open {
        final JobNumber number;
        final KeptJob.Made made;
        final Map<String, String> fields;
        final List<Map<String, String>> holes = new ArrayList<>();

        Open(JobNumber number, KeptJob.Made made, Map<String, String> fields) {
            this.number = number;
            this.made = made;
            this.fields = fields;
        }
    }

    JobTaker(Handle handle) {
        this.handle = handle;
    }

    @Override
    public List<Finding> take(Line line, Report report) {
        Answer<JobNumber> number = JobNumber.read(line.cell("job"));
        if (!(number instanceof Answer.Of<JobNumber> of)) {
            return number.findings();
        }
        return switch (line.cell("row")) {
            case "job" -> job(of.value(), line, report);
            case "hole" -> hole(of.value(), line, report);
            case "done" -> done(of.value(), line, report);
            default ->
                List.of(new Finding("row", line.cell("row"), "must be job, hole or done", "say what the row tells"));
        };
    }

    @Override
    public void end(Report report) {
        close(report);
    }

    private List<Finding> job(JobNumber number, Line line, Report report) {
        close(report);
        Instant at;
        try {
            at = Instant.parse(line.cell("at"));
        } catch (DateTimeParseException e) {
            return List.of(new Finding("at", line.cell("at"), "is not a moment", "write 2026-11-20T08:30:00Z"));
        }
        open = new Open(number, new KeptJob.Made(at, line.cell("by")), of(line, JobForms.JOB.paths()));
        return List.of();
    }

    private List<Finding> hole(JobNumber number, Line line, Report report) {
        Open job = open;
        if (job == null || !job.number.equals(number)) {
            return List.of(new Finding(
                    "job", number.text(), "has no row of the job before its holes", "put the row of the job first"));
        }
        Map<String, String> cells = of(line, JobForms.HOLE.paths());
        JobCard.Read read = JobCard.of(new JobGiven(Map.of(), JobGiven.filled(List.of(cells))));
        if (read instanceof JobCard.Bad bad) {
            return bad.amiss().stream().map(one -> one.finding()).toList();
        }
        job.holes.add(cells);
        return List.of();
    }

    private List<Finding> done(JobNumber number, Line line, Report report) {
        close(report);
        String at = line.cell("line");
        Optional<JobRows.RawJob> job = JobRows.find(handle, number.text());
        boolean there = job.isPresent()
                && at.matches("\\d{1,6}")
                && Integer.parseInt(at) >= 1
                && Integer.parseInt(at) <= job.get().card().holes().size();
        if (!there) {
            return List.of(new Finding("line", at, "is not a line of " + number, "put its holes before its marks"));
        }
        Answer<Mark> mark = Mark.read(line.cell("mark"));
        if (!(mark instanceof Answer.Of<Mark> of)) {
            return mark.findings();
        }
        if (TicketRows.event(handle, of.value(), line.cell("ticket")).isEmpty()) {
            return List.of(new Finding(
                    "ticket",
                    line.cell("ticket"),
                    "names no event of " + of.value(),
                    "read the table of events first"));
        }
        JobRows.RawDone done = new JobRows.RawDone(
                number.text(), Integer.parseInt(at), of.value().text(), line.cell("ticket"));
        if (JobRows.addDone(handle, done)) {
            report.added();
        } else {
            report.unchanged();
        }
        return List.of();
    }

    /** A job that is there already stays as it is. */
    private void close(Report report) {
        Open job = open;
        open = null;
        if (job == null || job.holes.isEmpty()) {
            return;
        }
        boolean free = JobRows.addIfFree(
                handle, new JobRows.RawJob(job.number.text(), job.made, new JobCard(job.fields, job.holes)));
        for (int row = 0; row <= job.holes.size(); row++) {
            if (free) {
                report.added();
            } else {
                report.unchanged();
            }
        }
    }

    private static Map<String, String> of(Line line, List<String> paths) {
        Map<String, String> fields = new LinkedHashMap<>();
        paths.forEach(path -> {
            if (!line.cell(path).isEmpty()) {
                fields.put(path, line.cell(path));
            }
        });
        return fields;
    }
}
