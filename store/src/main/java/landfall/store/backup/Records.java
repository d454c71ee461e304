// SPDX-License-Identifier: Apache-2.0
package landfall.store.backup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.TreeMap;
import landfall.store.crib.CribScan;
import landfall.store.crib.Row;
import landfall.store.job.JobRows;
import landfall.store.people.PeopleScan;
import landfall.store.people.Person;

/** What lies in a store as lines of a backup. */
final class Records {
    static final String THING = "thing";
    static final String EVENT = "event";
    static final String JOB = "job";
    static final String DONE = "done";
    static final String PERSON = "person";
    static final int FORM = 2;
    private static final ObjectMapper JSON = new ObjectMapper();

    private Records() {}

    static String thing(Row row) {
        ObjectNode line = JSON.createObjectNode();
        line.put("record", THING);
        line.put("mark", row.item().mark().text());
        line.put("kind", row.item().kind().word());
        line.put("set", row.item().handSet());
        ObjectNode card = line.putObject("card");
        new TreeMap<>(row.item().card()).forEach(card::put);
        return line.toString();
    }

    static String event(CribScan.RawEvent event) {
        ObjectNode line = JSON.createObjectNode();
        line.put("record", EVENT);
        line.put("mark", event.mark());
        line.put("seq", event.seq());
        line.put("at", event.at().toString());
        line.put("kind", event.words().kind());
        line.put("by", event.words().by());
        line.set("fields", node(event.words().fields()));
        line.put("ticket", event.words().ticket());
        return line.toString();
    }

    static String job(JobRows.RawJob job) {
        ObjectNode line = JSON.createObjectNode();
        line.put("record", JOB);
        line.put("number", job.number());
        line.put("at", job.made().at().toString());
        line.put("by", job.made().by());
        ObjectNode fields = line.putObject("fields");
        new TreeMap<>(job.card().fields()).forEach(fields::put);
        ArrayNode holes = line.putArray("holes");
        job.card().holes().forEach(hole -> {
            ObjectNode cells = holes.addObject();
            new TreeMap<>(hole).forEach(cells::put);
        });
        return line.toString();
    }

    static String done(JobRows.RawDone done) {
        return JSON.createObjectNode()
                .put("record", DONE)
                .put("mark", done.mark())
                .put("ticket", done.ticket())
                .put("job", done.job())
                .put("line", done.line())
                .toString();
    }

    static String person(PeopleScan.Held held) {
        Person person = held.person();
        return JSON.createObjectNode()
                .put("record", PERSON)
                .put("name", person.name().text())
                .put("shown", person.shown())
                .put("role", person.role().word())
                .put("password", held.hash())
                .put("active", person.active())
                .put("since", person.since().toString())
                .toString();
    }

    /** The person of a line; empty where there can be no such one. */
    static Optional<PeopleScan.Held> person(JsonNode node) {
        try {
            return PeopleScan.read(
                    new PeopleScan.Words(
                            node.path("name").asText(),
                            node.path("shown").asText(),
                            node.path("role").asText()),
                    node.path("active").asBoolean(),
                    Instant.parse(node.path("since").asText()),
                    node.path("password").asText());
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    static String head(Instant at) {
        return JSON.createObjectNode()
                .put("record", "head")
                .put("landfall", "crib")
                .put("form", FORM)
                .put("at", at.toString())
                .toString();
    }

    static String tail(Content content) {
        return JSON.createObjectNode()
                .put("record", "tail")
                .put("things", content.things())
                .put("events", content.events())
                .put("jobs", content.jobs())
                .put("people", content.people())
                .put("sha256", content.sha256())
                .toString();
    }

    static JsonNode node(String json) {
        try {
            return JSON.readTree(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
