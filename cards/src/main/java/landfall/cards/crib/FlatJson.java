// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** Fields as they lie in a store: one JSON object of texts by path. */
public final class FlatJson {
    private static final JsonFactory JSON = new JsonFactory();

    private FlatJson() {}

    public static String write(Map<String, String> fields) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = JSON.createGenerator(text)) {
            out.writeStartObject();
            for (Map.Entry<String, String> field : fields.entrySet()) {
                out.writeStringField(field.getKey(), field.getValue());
            }
            out.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** @throws IllegalArgumentException when the text is not such an object */
    public static Map<String, String> read(String json) {
        Map<String, String> fields = new LinkedHashMap<>();
        try (JsonParser in = JSON.createParser(json)) {
            expect(in.nextToken() == JsonToken.START_OBJECT, json);
            while (in.nextToken() == JsonToken.FIELD_NAME) {
                String name = in.currentName();
                expect(in.nextToken() == JsonToken.VALUE_STRING, json);
                fields.put(name, in.getText());
            }
            expect(in.currentToken() == JsonToken.END_OBJECT, json);
        } catch (IOException e) {
            throw new IllegalArgumentException("not fields: " + json, e);
        }
        return fields;
    }

    private static void expect(boolean good, String json) {
        if (!good) {
            throw new IllegalArgumentException("not fields: " + json);
        }
    }
}
