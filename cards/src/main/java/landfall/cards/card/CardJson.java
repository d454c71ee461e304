// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;
import landfall.cards.form.Field;
import landfall.cards.form.Form;

/** Cards back to JSON, in the order of the form. What was typed is written as it was typed. */
final class CardJson {
    private static final JsonFactory JSON = new JsonFactory();

    private final JsonGenerator out;
    private final Map<String, String> typed;

    private CardJson(JsonGenerator out, Map<String, String> typed) {
        this.out = out;
        this.typed = typed;
    }

    static String write(Form form, Map<String, String> typed) {
        return made(out -> new CardJson(out, typed).group(Tree.of(form), ""));
    }

    /** What writes a part of a JSON text. */
    interface Part {
        void to(JsonGenerator out) throws IOException;
    }

    static String made(Part part) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = JSON.createGenerator(text)) {
            DefaultIndenter twoSpaces = new DefaultIndenter("  ", "\n");
            out.setPrettyPrinter(
                    new DefaultPrettyPrinter().withObjectIndenter(twoSpaces).withArrayIndenter(twoSpaces));
            part.to(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text + "\n";
    }

    private void group(Tree tree, String prefix) throws IOException {
        out.writeStartObject();
        for (Map.Entry<String, Tree> entry : tree.inside().entrySet()) {
            String path = prefix + entry.getKey();
            Tree node = entry.getValue();
            if (typed.containsKey(path) && node.field().isPresent()) {
                out.writeFieldName(entry.getKey());
                value(node.field().get(), typed.get(path));
            } else if (typed.keySet().stream().anyMatch(each -> each.startsWith(path + "."))) {
                out.writeFieldName(entry.getKey());
                group(node, path + ".");
            }
        }
        out.writeEndObject();
    }

    private void value(Field<?> field, String text) throws IOException {
        Map<String, Object> schema = field.kind().schema();
        Object type = schema.get("type");
        if ("integer".equals(type) && text.strip().matches("\\d{1,9}")) {
            out.writeNumber(Integer.parseInt(text.strip()));
        } else if ("array".equals(type)
                && schema.get("items") instanceof Map<?, ?> item
                && "object".equals(item.get("type"))) {
            table(text);
        } else if ("array".equals(type)) {
            list(text);
        } else {
            out.writeString(text);
        }
    }

    private void list(String text) throws IOException {
        out.writeStartArray();
        for (String one : text.split(",")) {
            out.writeString(one.strip());
        }
        out.writeEndArray();
    }

    private void table(String text) throws IOException {
        out.writeStartArray();
        for (String pair : text.split(",")) {
            int blank = pair.strip().lastIndexOf(' ');
            out.writeStartObject();
            out.writeStringField(
                    "angle", pair.strip().substring(0, Math.max(0, blank)).strip());
            out.writeStringField("rise", pair.strip().substring(blank + 1));
            out.writeEndObject();
        }
        out.writeEndArray();
    }
}
