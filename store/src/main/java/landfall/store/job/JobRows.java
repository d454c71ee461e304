// SPDX-License-Identifier: Apache-2.0
package landfall.store.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import landfall.cards.crib.FlatJson;
import landfall.cards.job.JobCard;
import landfall.history.JobNumber;
import org.jdbi.v3.core.Handle;

/** Jobs as rows. */
public final class JobRows {
    private static final int FETCH = 500;

    private JobRows() {}

    /** A job as it lies in the store. */
    public record RawJob(String number, KeptJob.Made made, JobCard card) {}

    /** Which event of which tap belongs to which line. */
    public record RawDone(String job, int line, String mark, String ticket) {}

    /** False when the number is taken. */
    public static boolean addIfFree(Handle handle, RawJob job) {
        boolean free = handle.createUpdate("insert into job (number, made_at, made_by, fields)"
                                + " values (:number, :at, :by, :fields) on conflict (number) do nothing")
                        .bind("number", job.number)
                        .bind("at", job.made.at().toEpochMilli())
                        .bind("by", job.made.by())
                        .bind("fields", FlatJson.write(job.card.fields()))
                        .execute()
                == 1;
        for (int i = 0; free && i < job.card.holes().size(); i++) {
            addHole(handle, job.number, i + 1, job.card.holes().get(i));
        }
        return free;
    }

    private static void addHole(Handle handle, String number, int line, Map<String, String> fields) {
        handle.createUpdate("insert into job_hole (job, line, fields) values (:job, :line, :fields)")
                .bind("job", number)
                .bind("line", line)
                .bind("fields", FlatJson.write(fields))
                .execute();
    }

    /** False when that event belongs to a line already. */
    public static boolean addDone(Handle handle, RawDone done) {
        return handle.createUpdate("insert into job_done (mark, ticket, job, line)"
                                + " values (:mark, :ticket, :job, :line) on conflict (mark, ticket) do nothing")
                        .bind("mark", done.mark)
                        .bind("ticket", done.ticket)
                        .bind("job", done.job)
                        .bind("line", done.line)
                        .execute()
                == 1;
    }

    /** Holds a line for the rest of the transaction, so that two who mark it done count each other. */
    static boolean hold(Handle handle, JobNumber job, int line) {
        return handle.createUpdate("update job_hole set line = line where job = :job and line = :line")
                        .bind("job", job.text())
                        .bind("line", line)
                        .execute()
                == 1;
    }

    public static Optional<RawJob> find(Handle handle, String number) {
        List<Map<String, String>> holes = holes(handle, number);
        return handle.createQuery("select number, made_at, made_by, fields from job where number = :number")
                .bind("number", number)
                .map((rows, context) -> new RawJob(
                        rows.getString("number"),
                        new KeptJob.Made(Instant.ofEpochMilli(rows.getLong("made_at")), rows.getString("made_by")),
                        new JobCard(FlatJson.read(rows.getString("fields")), holes)))
                .findOne();
    }

    private static List<Map<String, String>> holes(Handle handle, String number) {
        return handle.createQuery("select fields from job_hole where job = :number order by line")
                .bind("number", number)
                .map((rows, context) -> FlatJson.read(rows.getString("fields")))
                .list();
    }

    /** Numbers, the newest job first. */
    static List<String> newest(Handle handle, int most) {
        return handle.createQuery("select number from job order by made_at desc, number desc limit :most")
                .bind("most", most)
                .mapTo(String.class)
                .list();
    }

    public static long count(Handle handle) {
        return handle.createQuery("select count(*) from job").mapTo(Long.class).one();
    }

    static List<RawDone> done(Handle handle, String number) {
        return handle.createQuery("select mark, ticket, job, line from job_done where job = :job order by mark, ticket")
                .bind("job", number)
                .map((rows, context) -> new RawDone(
                        rows.getString("job"), rows.getInt("line"), rows.getString("mark"), rows.getString("ticket")))
                .list();
    }

    /** Every job in the order of their numbers. */
    public static void jobs(Handle handle, Consumer<RawJob> each) {
        List<String> numbers = new ArrayList<>(handle.createQuery("select number from job order by number")
                .setFetchSize(FETCH)
                .mapTo(String.class)
                .list());
        numbers.forEach(number -> find(handle, number).ifPresent(each));
    }

    /** Every done mark, tap by tap. */
    public static void done(Handle handle, Consumer<RawDone> each) {
        handle.createQuery("select mark, ticket, job, line from job_done order by mark, ticket")
                .setFetchSize(FETCH)
                .map((rows, context) -> new RawDone(
                        rows.getString("job"), rows.getInt("line"), rows.getString("mark"), rows.getString("ticket")))
                .useStream(all -> all.forEach(each));
    }
}
