// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import landfall.cards.crib.FlatJson;
import landfall.cards.job.JobForms;
import landfall.store.Store;
import landfall.store.crib.CribScan;
import landfall.store.job.JobRows;
import org.jdbi.v3.core.Handle;

/** Writes a crib as tables, which {@link TableIn} reads back to the same crib: things first, then events, then jobs. */
public final class TableOut {
    private static final List<String> THINGS = List.of("mark", "kind", "set");
    private static final List<String> JOBS = List.of("job", "row", "line", "at", "by", "mark", "ticket");
    private static final List<String> EVENTS = List.of("mark", "event", "at", "by", "ticket");

    private TableOut() {}

    public static long things(Store store, Writer out) {
        return store.read(handle -> things(handle, out));
    }

    public static long events(Store store, Writer out) {
        return store.read(handle -> events(handle, out));
    }

    /** Jobs, their lines, then what is done of them. */
    public static long jobs(Store store, Writer out) {
        return store.read(handle -> jobs(handle, out));
    }

    private static long jobs(Handle handle, Writer out) {
        Set<String> paths = new TreeSet<>(JobForms.JOB.paths());
        paths.addAll(JobForms.HOLE.paths());
        Table table = new Table(out, JOBS, paths);
        JobRows.jobs(handle, job -> {
            table.put(
                    List.of(
                            job.number(),
                            "job",
                            "",
                            job.made().at().toString(),
                            job.made().by(),
                            "",
                            ""),
                    job.card().fields());
            int line = 0;
            for (Map<String, String> hole : job.card().holes()) {
                line++;
                table.put(List.of(job.number(), "hole", String.valueOf(line), "", "", "", ""), hole);
            }
        });
        JobRows.done(
                handle,
                done -> table.put(
                        List.of(done.job(), "done", String.valueOf(done.line()), "", "", done.mark(), done.ticket()),
                        Map.of()));
        return table.end();
    }

    private static long things(Handle handle, Writer out) {
        Set<String> paths = new TreeSet<>();
        CribScan.things(handle, row -> paths.addAll(row.item().card().keySet()));
        Table table = new Table(out, THINGS, paths);
        CribScan.things(
                handle,
                row -> table.put(
                        List.of(
                                row.item().mark().text(),
                                row.item().kind().word(),
                                row.item().handSet()),
                        row.item().card()));
        return table.end();
    }

    private static long events(Handle handle, Writer out) {
        Set<String> paths = new TreeSet<>();
        CribScan.events(
                handle,
                event -> paths.addAll(FlatJson.read(event.words().fields()).keySet()));
        Table table = new Table(out, EVENTS, paths);
        CribScan.events(
                handle,
                event -> table.put(
                        List.of(
                                event.mark(),
                                event.words().kind().toLowerCase(Locale.ROOT),
                                event.at().toString(),
                                event.words().by(),
                                event.words().ticket()),
                        FlatJson.read(event.words().fields())));
        return table.end();
    }

    /** Fixed columns, then those that the fields need. */
    private static final class Table {
        private final CsvWriter csv;
        private final Set<String> paths;
        private long rows;

        Table(Writer out, List<String> fixed, Set<String> paths) {
            this.csv = CsvWriter.builder().build(out);
            this.paths = paths;
            List<String> head = new ArrayList<>(fixed);
            head.addAll(paths);
            csv.writeRecord(head);
        }

        long end() {
            try {
                csv.flush();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return rows;
        }

        void put(List<String> fixed, Map<String, String> fields) {
            List<String> cells = new ArrayList<>();
            fixed.forEach(cell -> cells.add(Cell.write(cell)));
            paths.forEach(path -> cells.add(Cell.write(fields.getOrDefault(path, ""))));
            csv.writeRecord(cells);
            rows++;
        }
    }
}
