// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cards.ask.Question;
import landfall.cards.card.Flat;
import landfall.cards.form.Nearest;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * Many set-ups as a file of JSON: {@code question}, {@code given} (the question's fields, as in its cards),
 * {@code vary}, {@code watch}, and the numbers of the run.
 */
public final class SpreadFile {
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();
    private static final List<String> KEYS = keys();
    private static final String BEGIN =
            "write an object: {\"question\":\"grind\",\"given\":{..},\"vary\":{..},\"watch\":{..}}";

    private final List<Finding> findings = new ArrayList<>();

    private SpreadFile() {}

    private static List<String> keys() {
        List<String> keys = new ArrayList<>(List.of("landfall", "question", "given", "vary", "watch"));
        keys.addAll(SpreadFields.FORM.paths());
        return List.copyOf(keys);
    }

    /** The wish that a text of JSON holds; whether its fields are right is judged with the set-up. */
    public static Answer<SpreadWish> read(String json) {
        JsonNode root;
        try {
            root = JSON.readTree(json);
        } catch (JsonProcessingException e) {
            String where = e.getLocation() == null
                    ? ""
                    : "line %d, column %d"
                            .formatted(
                                    e.getLocation().getLineNr(), e.getLocation().getColumnNr());
            return Answer.refused(new Finding("file", where, "is not JSON: " + e.getOriginalMessage(), BEGIN));
        }
        if (root == null || !root.isObject()) {
            return Answer.refused(new Finding("file", "", "does not hold an object", BEGIN));
        }
        return new SpreadFile().wish(root);
    }

    private Answer<SpreadWish> wish(JsonNode root) {
        root.fieldNames().forEachRemaining(key -> {
            if (!KEYS.contains(key)) {
                findings.add(new Finding(
                        key,
                        root.get(key).asText(),
                        "is not a key of a spread file",
                        "write " + Nearest.of(key, KEYS) + ", the nearest, or leave it out"));
            }
        });
        Optional<Question> question =
                SpreadFields.question(root.path("question").asText());
        if (question.isEmpty()) {
            findings.add(new Finding(
                    "question",
                    root.path("question").asText(),
                    "is not a question that can be asked of many set-ups",
                    "write one of " + String.join(", ", SpreadFields.nouns())));
        }
        Map<String, String> given =
                question.map(asked -> given(root.path("given"), asked)).orElse(Map.of());
        Map<String, String> vary = texts(root, "vary");
        Map<String, String> watch = texts(root, "watch");
        Map<String, String> numbers = new LinkedHashMap<>();
        for (String path : SpreadFields.FORM.paths()) {
            if (root.has(path)) {
                numbers.put(path, root.get(path).asText());
            }
        }
        return findings.isEmpty()
                ? Answer.of(new SpreadWish(root.path("question").asText(), given, vary, watch, numbers))
                : Answer.refused(findings);
    }

    private Map<String, String> given(JsonNode given, Question question) {
        if (given.isMissingNode()) {
            return Map.of();
        }
        Answer<Map<String, String>> flat = Flat.read(given.toString(), question.form());
        flat.findings().forEach(found -> findings.add(found.under("given")));
        return flat instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
    }

    private Map<String, String> texts(JsonNode root, String key) {
        Map<String, String> texts = new LinkedHashMap<>();
        JsonNode node = root.path(key);
        if (!node.isMissingNode() && !node.isObject()) {
            findings.add(new Finding(key, node.toString(), "is not an object", "write {\"name\":\"text\"}"));
        }
        node.fields().forEachRemaining(entry -> {
            if (entry.getValue().isValueNode()) {
                texts.put(entry.getKey(), entry.getValue().asText());
            } else {
                findings.add(new Finding(
                        key + "." + entry.getKey(), entry.getValue().toString(), "is not a text", "write one text"));
            }
        });
        return texts;
    }

    /** The file of a wish; reading it gives the same wish. */
    public static String write(SpreadWish wish) {
        ObjectNode root = JSON.createObjectNode();
        root.put("landfall", 1);
        root.put("question", wish.question());
        wish.given().forEach(root.putObject("given")::put);
        wish.vary().forEach(root.putObject("vary")::put);
        wish.watch().forEach(root.putObject("watch")::put);
        wish.numbers().forEach(root::put);
        return root.toPrettyString() + "\n";
    }
}
