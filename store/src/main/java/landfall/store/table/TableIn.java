// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.Store;
import landfall.store.StoreFault;
import landfall.store.crib.SeenTickets;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Reads a table into a crib. */
public final class TableIn {
    /** What a decoder puts where the bytes are not UTF-8. */
    private static final char NO_TEXT = '\uFFFD';

    private static final char NUL = '\0';
    private static final long TOLD_EVERY = 1000;

    /** Rows of one transaction, where what is good is kept as it comes. */
    private static final long AT_ONCE = 200_000;

    private final Wish wish;
    private final Watch watch;
    private final Report report = new Report();
    private final SeenTickets seen = new SeenTickets();

    /** Who looks on while a table is read. */
    public interface Watch {
        /** Looks on and never stops it. */
        Watch NOBODY = rows -> false;

        /** Told the number of rows read, now and then; true stops the reading, and what was taken stays. */
        boolean stopsAfter(long rows);
    }

    private TableIn(Wish wish, Watch watch) {
        this.wish = wish;
        this.watch = watch;
    }

    /**
     * Reads to the end and keeps what the wish says: all or none in one transaction, what is good in one for some
     * hundred thousand rows each.
     *
     * @param in decoded so that bytes which are not UTF-8 become the replacement sign
     * @throws StoreFault when the store fails; what was kept before stays and is told
     */
    public static Answer<Report> read(Store store, Reader in, Wish wish, Watch watch) {
        CsvRows rows = new CsvRows(in);
        Answer<Columns> head = head(rows, wish);
        return head instanceof Answer.Of<Columns> of
                ? new TableIn(wish, watch)
                        .read(store, List.of(new Part(of.value(), () -> read(of.value(), rows, wish))))
                : Answer.refused(head.findings());
    }

    /**
     * The same for a whole crib that was written out as JSON: things, then events, then jobs. Lines are those of the
     * file.
     *
     * @throws IOException when the file cannot be read
     */
    public static Answer<Report> json(Store store, Path file, Wish wish, Watch watch) throws IOException {
        Optional<Finding> amiss = JsonRows.amiss(file);
        if (amiss.isPresent()) {
            return Answer.refused(amiss.get());
        }
        try (JsonRows things = new JsonRows(file, JsonRows.Part.THINGS, wish.now());
                JsonRows events = new JsonRows(file, JsonRows.Part.EVENTS, wish.now());
                JsonRows jobs = new JsonRows(file, JsonRows.Part.JOBS, wish.now())) {
            return new TableIn(wish, watch)
                    .read(
                            store,
                            List.of(
                                    part(JsonRows.Part.THINGS, things),
                                    part(JsonRows.Part.EVENTS, events),
                                    part(JsonRows.Part.JOBS, jobs)));
        }
    }

    private static Part part(JsonRows.Part part, JsonRows rows) {
        return new Part(part.columns(), () -> {
            Line line = rows.next();
            return line == null ? null : new Read(line.number(), List.of(), line);
        });
    }

    private Answer<Report> read(Store store, List<Part> parts) {
        try {
            if (wish.how().dry() || wish.how().allOrNone()) {
                whole(store, parts);
            } else {
                parts.forEach(part -> some(store, part));
            }
            report.keep(true);
        } catch (KeepNothing e) {
            report.keep(false);
        }
        watch.stopsAfter(report.rows());
        return Answer.of(report);
    }

    /** All parts in one transaction. */
    private void whole(Store store, List<Part> parts) {
        told(store, 0, handle -> {
            parts.forEach(part -> {
                try (RowFeed<Read> feed = new RowFeed<>(part.rows)) {
                    some(feed, part.columns, handle, Long.MAX_VALUE);
                }
            });
            if (wish.how().dry() || report.badRows() > 0 || report.isStopped()) {
                throw new KeepNothing();
            }
            return true;
        });
    }

    /** One part, some rows in each transaction; a job stands in several rows, so that all of them are in one. */
    private void some(Store store, Part part) {
        long most = part.columns.tellJobs() ? Long.MAX_VALUE : AT_ONCE;
        try (RowFeed<Read> feed = new RowFeed<>(part.rows)) {
            boolean more = !report.isStopped();
            while (more) {
                more = told(store, report.rows(), handle -> some(feed, part.columns, handle, most));
            }
        }
    }

    /** A row with its cells by name, or with what keeps it from being read. */
    private record Read(long number, List<Finding> findings, Line line) {}

    /** Rows of one shape. */
    private record Part(Columns columns, Supplier<@Nullable Read> rows) {}

    private static @Nullable Read read(Columns columns, CsvRows rows, Wish wish) {
        CsvRows.Row row = rows.next();
        if (row == null) {
            return null;
        }
        List<Finding> findings = unreadable(columns, row);
        Line line = columns.line(row.line(), findings.isEmpty() ? row.cells() : List.of(), wish.now());
        return new Read(row.line(), findings, line);
    }

    /** One transaction; when the store fails, how many rows were kept before is told. */
    private boolean told(Store store, long before, Function<Handle, Boolean> work) {
        try {
            return store.write(work);
        } catch (StoreFault e) {
            String kept = wish.how().allOrNone() || wish.how().dry()
                    ? "nothing of the table"
                    : "the first " + before + " rows";
            throw new StoreFault(
                    store.address().words(),
                    e.finding().why() + " (" + kept + " was kept)",
                    e.finding().mend(),
                    e);
        }
    }

    /** Whether there is more to read. */
    private boolean some(RowFeed<Read> feed, Columns columns, Handle handle, long most) {
        RowTaker taker = taker(columns, handle);
        boolean more = some(feed, taker, most);
        taker.end(report);
        return more;
    }

    private RowTaker taker(Columns columns, Handle handle) {
        if (columns.tellJobs()) {
            return new JobTaker(handle);
        }
        return columns.tellEvents() ? new EventTaker(handle, wish, seen) : new ThingTaker(handle, wish, seen);
    }

    private boolean some(RowFeed<Read> feed, RowTaker taker, long most) {
        for (long i = 0; i < most; i++) {
            Read row = feed.next();
            if (row == null) {
                return false;
            }
            report.row();
            List<Finding> findings = row.findings.isEmpty() ? taker.take(row.line, report) : row.findings;
            if (!findings.isEmpty()) {
                report.bad(row.number, findings);
                findings.forEach(finding -> wish.bad().accept(row.number, finding));
            }
            if (report.rows() % TOLD_EVERY == 0 && watch.stopsAfter(report.rows())) {
                report.stop(row.number);
                return false;
            }
        }
        return true;
    }

    private static Answer<Columns> head(CsvRows rows, Wish wish) {
        CsvRows.Row head = rows.next();
        if (head == null) {
            return Answer.refused(
                    new Finding("columns", "", "are missing: the file is empty", "begin with mark,thread,place"));
        }
        List<String> names =
                head.cells().stream().map(name -> name.replace("\uFEFF", "")).toList();
        String all = String.join(",", names);
        if (all.indexOf(NUL) >= 0 || all.indexOf(NO_TEXT) >= 0) {
            return Answer.refused(new Finding(
                    "columns",
                    "",
                    "are not text in UTF-8",
                    "save the table as CSV in UTF-8; this one may be in UTF-16"));
        }
        if (head.fault() != null) {
            return Answer.refused(new Finding("columns", all, head.fault(), "begin with mark,thread,place"));
        }
        if (names.size() == 1 && (all.contains(";") || all.contains("\t"))) {
            return Answer.refused(new Finding(
                    "columns", all, "are not parted by commas", "save the table with commas between the columns"));
        }
        return Columns.read(names, wish.columns());
    }

    private static List<Finding> unreadable(Columns columns, CsvRows.Row row) {
        if (row.fault() != null) {
            return List.of(new Finding(
                    "line",
                    row.cells().get(0),
                    row.fault(),
                    "put quotation marks round the whole cell, and write those inside it twice"));
        }
        for (int i = 0; i < row.cells().size(); i++) {
            String cell = row.cells().get(i);
            if (cell.indexOf(NO_TEXT) >= 0) {
                return List.of(new Finding(columns.name(i), cell, "is not text in UTF-8", "save the table as UTF-8"));
            }
            if (cell.indexOf(NUL) >= 0) {
                return List.of(new Finding(
                        columns.name(i), cell.replace(NUL, '?'), "holds a character of number 0", "take it out"));
            }
            if (i >= columns.names().size() && !cell.isBlank()) {
                return List.of(new Finding(
                        "line",
                        cell,
                        "stands beyond the last column",
                        "look for a comma too many, or put quotation marks round the cell that holds it"));
            }
        }
        return List.of();
    }

    /** Takes rows of one shape. */
    interface RowTaker {
        /** What is wrong with the row; empty when it was taken. */
        List<Finding> take(Line line, Report report);

        /** After the last row. */
        void end(Report report);
    }

    /** Ends the transaction so that nothing of it stays. */
    private static final class KeepNothing extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }
}
