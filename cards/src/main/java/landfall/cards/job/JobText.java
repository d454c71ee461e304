// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.fault.Finding;

/** A job read from a text: a table with a line of columns, or JSON. */
public final class JobText {
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();
    private static final String HOLES = "holes";
    private static final String SHAPE = "write {\"name\":\"..\",\"holes\":[{\"callout\":\"M8x1.25-6H\", ..}]}";

    private JobText() {}

    /** Never fails: what cannot be read is among what is amiss. */
    public static JobGiven read(String text) {
        String begin = text.replaceFirst("^\\ufeff", "").stripLeading();
        return begin.startsWith("{") || begin.startsWith("[") ? json(begin) : HolesTable.read(text);
    }

    private static JobGiven json(String text) {
        try {
            JsonNode root = JSON.readTree(text);
            JsonNode holes = root.isArray() ? root : root.path(HOLES);
            if (!holes.isArray()) {
                return refused("", "has no list of holes", SHAPE);
            }
            return given(root, holes);
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            String place = at == null ? "" : "line %d, column %d".formatted(at.getLineNr(), at.getColumnNr());
            String why =
                    String.valueOf(e.getOriginalMessage()).lines().findFirst().orElse("");
            return refused(place, "is not JSON: " + why, "mend the text at that place");
        }
    }

    private static JobGiven given(JsonNode root, JsonNode holes) {
        List<Amiss> amiss = new ArrayList<>();
        Map<String, String> fields = new LinkedHashMap<>();
        if (root.isObject()) {
            root.fields().forEachRemaining(entry -> {
                if (!entry.getKey().equals(HOLES)) {
                    put(entry, 0, fields, amiss);
                }
            });
        }
        List<HoleRow> rows = new ArrayList<>();
        for (JsonNode hole : holes) {
            int at = rows.size() + 1;
            Map<String, String> cells = new LinkedHashMap<>();
            if (hole.isObject()) {
                hole.fields().forEachRemaining(entry -> put(entry, at, cells, amiss));
            } else {
                amiss.add(new Amiss(at, new Finding(HOLES, hole.toString(), "is no line of holes", SHAPE)));
            }
            rows.add(new HoleRow(at, cells));
        }
        return new JobGiven(fields, rows, amiss);
    }

    /** A list becomes a text parted by commas, as on a shop's card; a group is refused. */
    private static void put(Map.Entry<String, JsonNode> entry, int at, Map<String, String> into, List<Amiss> amiss) {
        JsonNode value = entry.getValue();
        if (value.isArray()) {
            List<String> texts = new ArrayList<>();
            value.forEach(one -> texts.add(one.asText()));
            into.put(entry.getKey(), String.join(", ", texts));
        } else if (value.isObject()) {
            amiss.add(new Amiss(
                    at,
                    new Finding(entry.getKey(), "{..}", "must be one value, not a group", "write the value alone")));
        } else if (!value.isNull()) {
            into.put(entry.getKey(), value.asText());
        }
    }

    private static JobGiven refused(String given, String why, String mend) {
        return JobGiven.unreadable(List.of(new Finding(HOLES, given, why, mend)));
    }
}
