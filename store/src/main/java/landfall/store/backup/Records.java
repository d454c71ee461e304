// SPDX-License-Identifier: Apache-2.0
package landfall.store.backup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.TreeMap;
import landfall.store.crib.CribScan;
import landfall.store.crib.Row;

/** Things and events as lines of a backup. */
final class Records {
    static final String THING = "thing";
    static final String EVENT = "event";
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

    static String head(Instant at) {
        return JSON.createObjectNode()
                .put("record", "head")
                .put("landfall", "crib")
                .put("form", 1)
                .put("at", at.toString())
                .toString();
    }

    static String tail(Content content) {
        return JSON.createObjectNode()
                .put("record", "tail")
                .put("things", content.things())
                .put("events", content.events())
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
