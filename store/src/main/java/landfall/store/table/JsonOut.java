// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import landfall.store.Store;
import landfall.store.crib.CribScan;
import landfall.store.crib.ThingJson;
import landfall.store.job.JobRows;
import org.jdbi.v3.core.Handle;

/**
 * Writes a whole crib as one JSON document of one moment: each thing as {@code crib show} tells it, with the tickets of
 * its events, then jobs; one on each line. {@link TableIn#json} reads it back to the same crib.
 */
public final class JsonOut {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Writer out;

    private JsonOut(Writer out) {
        this.out = out;
    }

    /** How many of each were written. */
    public record Counts(long things, long jobs) {}

    /** @throws IOException when it cannot be written */
    public static Counts write(Store store, Writer out) throws IOException {
        try {
            return store.read(handle -> new JsonOut(out).write(handle));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private Counts write(Handle handle) {
        long[] things = new long[1];
        long[] jobs = new long[1];
        Map<String, List<JobRows.RawDone>> done = new HashMap<>();
        JobRows.done(
                handle,
                one -> done.computeIfAbsent(one.job(), job -> new ArrayList<>()).add(one));
        put("{\"landfall\":1,\"things\":[");
        CribScan.things(handle, row -> {
            CribScan.Whole whole = CribScan.whole(handle, row);
            line(things[0]++, ThingJson.whole(whole.thing(), whole.tickets()));
        });
        put("],\"jobs\":[");
        JobRows.jobs(handle, job -> line(jobs[0]++, job(job, done.getOrDefault(job.number(), List.of()))));
        put("]}\n");
        return new Counts(things[0], jobs[0]);
    }

    private static ObjectNode job(JobRows.RawJob job, List<JobRows.RawDone> done) {
        ObjectNode node = JSON.createObjectNode();
        node.put("number", job.number());
        node.put("at", job.made().at().toString());
        node.put("by", job.made().by());
        node.set("fields", ThingJson.nested(job.card().fields()));
        ArrayNode holes = node.putArray("holes");
        job.card().holes().forEach(hole -> holes.add(ThingJson.nested(hole)));
        ArrayNode marks = node.putArray("done");
        done.forEach(one -> marks.addObject()
                .put("line", one.line())
                .put("mark", one.mark())
                .put("ticket", one.ticket()));
        return node;
    }

    private void line(long before, ObjectNode node) {
        put((before == 0 ? "\n" : ",\n") + node);
    }

    private void put(String text) {
        try {
            out.write(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
