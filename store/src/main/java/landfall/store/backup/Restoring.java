// SPDX-License-Identifier: Apache-2.0
package landfall.store.backup;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import landfall.cards.job.JobCard;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.store.crib.CribScan;
import landfall.store.crib.CribWriter;
import landfall.store.crib.Item;
import landfall.store.crib.SeenTickets;
import landfall.store.job.JobRows;
import landfall.store.job.KeptJob;
import landfall.store.people.PeopleScan;
import org.jdbi.v3.core.Handle;

/** Puts the records in; events come after all things, in the order of marks and numbers. */
final class Restoring implements Lines {
    private final Handle handle;
    private final CribWriter crib;
    private final List<JobRows.RawDone> done = new ArrayList<>();

    Restoring(Handle handle) {
        this.handle = handle;
        this.crib = new CribWriter(handle, new SeenTickets());
    }

    @Override
    public void thing(String line, JsonNode node) {
        crib.add(
                new Item(
                        new Mark(node.path("mark").asText()),
                        ItemKind.valueOf(node.path("kind").asText().toUpperCase(Locale.ROOT)),
                        node.path("set").asText(),
                        texts(node.path("card"))),
                List.of());
    }

    @Override
    public void event(String line, JsonNode node) {
        Mark mark = new Mark(node.path("mark").asText());
        crib.restore(new CribScan.RawEvent(
                mark.text(),
                node.path("seq").asLong(),
                Instant.parse(node.path("at").asText()),
                new CribScan.Words(
                        node.path("kind").asText(),
                        node.path("by").asText(),
                        node.path("fields").toString(),
                        node.path("ticket").asText())));
    }

    @Override
    public void job(String line, JsonNode node) {
        List<Map<String, String>> holes = new ArrayList<>();
        node.path("holes").forEach(hole -> holes.add(texts(hole)));
        KeptJob.Made made = new KeptJob.Made(
                Instant.parse(node.path("at").asText()), node.path("by").asText());
        JobRows.addIfFree(
                handle,
                new JobRows.RawJob(node.path("number").asText(), made, new JobCard(texts(node.path("fields")), holes)));
    }

    @Override
    public void done(String line, JsonNode node) {
        done.add(new JobRows.RawDone(
                node.path("job").asText(),
                node.path("line").asInt(),
                node.path("mark").asText(),
                node.path("ticket").asText()));
    }

    @Override
    public void person(String line, JsonNode node) {
        PeopleScan.put(handle, Records.person(node).orElseThrow());
    }

    @Override
    public void other(JsonNode node) {}

    /** After the last line. */
    void end() {
        crib.end();
        done.forEach(one -> JobRows.addDone(handle, one));
    }

    private static Map<String, String> texts(JsonNode node) {
        Map<String, String> texts = new LinkedHashMap<>();
        node.fields()
                .forEachRemaining(
                        field -> texts.put(field.getKey(), field.getValue().asText()));
        return texts;
    }
}
