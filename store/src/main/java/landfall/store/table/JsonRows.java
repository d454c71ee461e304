// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cards.crib.Moments;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.Mark;
import org.jspecify.annotations.Nullable;

/**
 * The rows that a crib written out as JSON stands for, as if they came from tables; one thing or one job is in memory
 * at a time.
 */
final class JsonRows implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** What a row of a table tells, in the order that they are read in. */
    enum Part {
        THINGS("things", List.of("mark")),
        EVENTS("things", List.of("mark", Columns.EVENT)),
        JOBS("jobs", List.of("mark", Columns.JOB));

        private final String array;
        private final Columns columns;

        Part(String array, List<String> names) {
            this.array = array;
            this.columns = new Columns(names);
        }

        Columns columns() {
            return columns;
        }
    }

    private final Part part;
    private final ZonedDateTime now;
    private final JsonParser json;
    private boolean more;
    private final Deque<Line> ready = new ArrayDeque<>();

    JsonRows(Path file, Part part, ZonedDateTime now) throws IOException {
        this.part = part;
        this.now = now;
        this.json = JSON.createParser(file.toFile());
        this.more = find();
    }

    /** What keeps the file from being read as a crib; empty when nothing does. It is read to its end. */
    static Optional<Finding> amiss(Path file) throws IOException {
        boolean things = false;
        try (JsonParser json = JSON.createParser(file.toFile())) {
            boolean object = json.nextToken() == JsonToken.START_OBJECT;
            while (object && json.nextToken() == JsonToken.FIELD_NAME) {
                boolean named = json.currentName().equals(Part.THINGS.array);
                things |= json.nextToken() == JsonToken.START_ARRAY && named;
                json.skipChildren();
            }
            return things
                    ? Optional.empty()
                    : Optional.of(new Finding(
                            "file", file.toString(), "holds no things of a crib", "take one of landfall crib export"));
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            return Optional.of(new Finding(
                    "file",
                    file.toString(),
                    "is not JSON in line " + line,
                    "export again; this one was cut or changed"));
        }
    }

    /** Goes to where the part begins; false where there is none. */
    private boolean find() throws IOException {
        json.nextToken();
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            boolean named = json.currentName().equals(part.array);
            if (json.nextToken() == JsonToken.START_ARRAY && named) {
                return true;
            }
            json.skipChildren();
        }
        return false;
    }

    /** Null after the last. */
    @Nullable
    Line next() {
        try {
            while (ready.isEmpty()) {
                if (!more || json.nextToken() != JsonToken.START_OBJECT) {
                    more = false;
                    return null;
                }
                long line = json.currentTokenLocation().getLineNr();
                JsonNode node = JSON.readTree(json);
                rows(node).forEach(cells -> ready.add(line(line, cells)));
            }
            return ready.poll();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Line line(long number, Map<String, String> cells) {
        cells.values().removeIf(String::isBlank);
        String at = cells.getOrDefault("at", "");
        Answer<Instant> moment = at.isEmpty() ? Answer.of(now.toInstant()) : Moments.read("at", at, now);
        return new Line(number, cells, Mark.read(cells.getOrDefault("mark", "")), moment);
    }

    private List<Map<String, String>> rows(JsonNode node) {
        return switch (part) {
            case THINGS -> List.of(thing(node));
            case EVENTS -> events(node);
            case JOBS -> job(node);
        };
    }

    private static Map<String, String> thing(JsonNode node) {
        Map<String, String> cells = flat(node.path("card"));
        copy(node, cells, "mark", "kind", "set");
        return cells;
    }

    private static List<Map<String, String>> events(JsonNode node) {
        List<Map<String, String>> rows = new ArrayList<>();
        node.path("events").forEach(event -> {
            Map<String, String> cells = flat(event.path("fields"));
            cells.put("mark", node.path("mark").asText());
            cells.put(Columns.EVENT, event.path("kind").asText());
            copy(event, cells, "at", "by", "ticket");
            rows.add(cells);
        });
        return rows;
    }

    private static List<Map<String, String>> job(JsonNode node) {
        List<Map<String, String>> rows = new ArrayList<>();
        Map<String, String> job = flat(node.path("fields"));
        job.put("row", "job");
        copy(node, job, "at", "by");
        rows.add(job);
        node.path("holes").forEach(hole -> {
            Map<String, String> cells = flat(hole);
            cells.put("row", "hole");
            rows.add(cells);
        });
        node.path("done").forEach(done -> {
            Map<String, String> cells = new LinkedHashMap<>(Map.of("row", "done"));
            copy(done, cells, "line", "mark", "ticket");
            rows.add(cells);
        });
        rows.forEach(cells -> cells.put(Columns.JOB, node.path("number").asText()));
        return rows;
    }

    private static void copy(JsonNode node, Map<String, String> cells, String... names) {
        for (String name : names) {
            cells.put(name, node.path(name).asText());
        }
    }

    /** Objects in objects become paths with dots. */
    private static Map<String, String> flat(JsonNode node) {
        Map<String, String> fields = new LinkedHashMap<>();
        flat("", node, fields);
        return fields;
    }

    private static void flat(String before, JsonNode node, Map<String, String> fields) {
        node.fields().forEachRemaining(field -> {
            String path = before + field.getKey();
            if (field.getValue().isObject()) {
                flat(path + ".", field.getValue(), fields);
            } else {
                JsonNode value = field.getValue();
                fields.put(path, value.isValueNode() ? value.asText() : value.toString());
            }
        });
    }

    @Override
    public void close() {
        try {
            json.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
