// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import landfall.cards.form.Form;
import landfall.cards.words.Words;

/** The JSON schema of a form, of the draft of 2020-12. Published in {@code docs/schema}. */
public final class CardSchema {
    private CardSchema() {}

    public static String of(Form form) {
        return CardJson.made(out -> {
            out.writeStartObject();
            out.writeStringField("$schema", "https://json-schema.org/draft/2020-12/schema");
            out.writeStringField("$id", "urn:landfall:" + form.name() + ":1");
            out.writeStringField("title", Words.of("card." + form.name()));
            group(out, Tree.of(form));
            out.writeEndObject();
        });
    }

    /** What a JSON object of the form's fields holds, without a title of its own. */
    public static String fields(Form form) {
        return CardJson.made(out -> {
            out.writeStartObject();
            group(out, Tree.of(form));
            out.writeEndObject();
        });
    }

    private static void group(JsonGenerator out, Tree tree) throws IOException {
        out.writeStringField("type", "object");
        out.writeObjectFieldStart("properties");
        for (Map.Entry<String, Tree> entry : tree.inside().entrySet()) {
            out.writeObjectFieldStart(entry.getKey());
            node(out, entry.getValue());
            out.writeEndObject();
        }
        out.writeEndObject();
        List<String> needed = tree.inside().entrySet().stream()
                .filter(entry -> entry.getValue().isNeeded())
                .map(Map.Entry::getKey)
                .toList();
        if (!needed.isEmpty()) {
            value(out, "required", needed);
        }
        out.writeBooleanField("additionalProperties", false);
    }

    private static void node(JsonGenerator out, Tree node) throws IOException {
        if (node.field().isEmpty()) {
            group(out, node);
        } else if (node.inside().isEmpty()) {
            leaf(out, node);
        } else {
            out.writeArrayFieldStart("anyOf");
            out.writeStartObject();
            leaf(out, node);
            out.writeEndObject();
            out.writeStartObject();
            group(out, node);
            out.writeEndObject();
            out.writeEndArray();
        }
    }

    private static void leaf(JsonGenerator out, Tree node) throws IOException {
        var field = node.field().orElseThrow();
        out.writeStringField("title", field.means());
        for (Map.Entry<String, Object> entry : field.kind().schema().entrySet()) {
            value(out, entry.getKey(), entry.getValue());
        }
        boolean whole = "integer".equals(field.kind().schema().get("type"));
        value(out, "examples", List.of(whole ? Integer.valueOf(field.example()) : field.example()));
    }

    private static void value(JsonGenerator out, String key, Object value) throws IOException {
        out.writeFieldName(key);
        value(out, value);
    }

    private static void value(JsonGenerator out, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            out.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                value(out, String.valueOf(entry.getKey()), entry.getValue());
            }
            out.writeEndObject();
        } else if (value instanceof List<?> list) {
            out.writeStartArray();
            for (Object one : list) {
                value(out, one);
            }
            out.writeEndArray();
        } else if (value instanceof Integer number) {
            out.writeNumber(number);
        } else if (value instanceof Boolean flag) {
            out.writeBoolean(flag);
        } else {
            out.writeString(String.valueOf(value));
        }
    }
}
