// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What answers look like to a program, as JSON schemas of the draft of 2020-12. The keys of each question's answer were
 * taken from sample answers that between them show every item; a test takes them again and compares.
 */
public final class AnswerShapes {
    /** Where the shapes that many answers share are looked up. */
    public static final String PLACE = "#/components/schemas/";

    private AnswerShapes() {}

    /** The shape of one question's answer by its noun; an item that some answers lack is not among the required. */
    public static Map<String, Object> all() {
        try (InputStream in =
                Objects.requireNonNull(AnswerShapes.class.getResourceAsStream("answers.json"), "answers.json")) {
            return new ObjectMapper().readValue(in, new TypeReference<LinkedHashMap<String, Object>>() {});
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A reference to a shared shape. */
    public static Map<String, Object> ref(String name) {
        return Map.of("$ref", PLACE + name);
    }

    /** Shapes that many answers share: figures, limits, bands, steps, cautions, refusals. */
    public static Map<String, Object> shared() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("figure", object(List.of("value", "unit", "step"), "value", NUMBER, "unit", TEXT, "step", TEXT));
        all.put(
                "range",
                object(
                        List.of("min", "max", "unit", "steps"),
                        "min",
                        OPEN_NUMBER,
                        "max",
                        OPEN_NUMBER,
                        "unit",
                        TEXT,
                        "steps",
                        texts("min", "max")));
        all.put(
                "band",
                object(
                        List.of("low", "expected", "high", "unit", "steps"),
                        "low",
                        NUMBER,
                        "expected",
                        NUMBER,
                        "high",
                        NUMBER,
                        "unit",
                        TEXT,
                        "steps",
                        texts("low", "expected", "high")));
        all.put("fitted", fitted());
        all.put("step", step());
        all.put("caution", texts("code", "text", "raisedBy"));
        all.put("refusal", refusal());
        return all;
    }

    private static final Map<String, Object> NUMBER = Map.of("type", "number");
    private static final Map<String, Object> TEXT = Map.of("type", "string");
    private static final Map<String, Object> OPEN_NUMBER = Map.of("type", List.of("number", "null"));

    private static Map<String, Object> fitted() {
        return object(
                List.of("value", "uncertainty", "unit", "step"),
                "value",
                NUMBER,
                "uncertainty",
                NUMBER,
                "standard",
                NUMBER,
                "unit",
                TEXT,
                "step",
                TEXT);
    }

    private static Map<String, Object> step() {
        return object(
                List.of("symbol", "formula", "value", "unit", "source", "trust", "means"),
                "symbol",
                TEXT,
                "formula",
                TEXT,
                "value",
                NUMBER,
                "unit",
                TEXT,
                "source",
                TEXT,
                "trust",
                TEXT,
                "means",
                TEXT);
    }

    private static Map<String, Object> refusal() {
        Map<String, Object> finding = object(
                List.of("field", "given", "why", "mend"),
                "line",
                Map.of("type", "integer"),
                "field",
                TEXT,
                "given",
                TEXT,
                "why",
                TEXT,
                "mend",
                TEXT);
        return object(List.of("refused"), "refused", Map.of("type", "array", "items", finding));
    }

    private static Map<String, Object> texts(String... keys) {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (String key : keys) {
            properties.put(key, TEXT);
        }
        return Map.of("type", "object", "properties", properties, "additionalProperties", false);
    }

    /** @param pairs a key and its schema, and so on */
    private static Map<String, Object> object(List<String> required, Object... pairs) {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            properties.put((String) pairs[i], pairs[i + 1]);
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", properties);
        schema.put("required", required);
        schema.put("additionalProperties", false);
        return schema;
    }
}
