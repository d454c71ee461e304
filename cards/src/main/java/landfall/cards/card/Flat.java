// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.StringJoiner;
import java.util.TreeMap;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * JSON cards as flat maps of path and text.
 *
 * <p>A key inside a key is joined by a dot. An array becomes one text: its entries separated by commas, the values of
 * an entry that is a record by blanks, in the alphabetical order of their keys, so that {@code [{"angle":"30
 * deg","rise":0.5}]} reads {@code 30 deg 0.5}.
 */
public final class Flat {
    private static final JsonFactory JSON = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();
    private static final Form CARDS = TapFields.FORM.and(FixtureFields.FORM);
    private static final String BEGIN = "write a JSON object: {\"thread\":\"M8x1.25-6H\", ..}";

    /** Longest list that a refusal shows whole. */
    private static final int LONGEST = 40;

    private final Form form;
    private final Map<String, String> fields = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    private Flat(Form form) {
        this.form = form;
    }

    /**
     * What a text of JSON told.
     *
     * @param whole whether it could be read to its end; else the only finding says where it breaks
     */
    record Told(Map<String, String> fields, List<Finding> findings, boolean whole) {}

    /** The fields of a tap or a fixture card; broken JSON is refused with its line and column. */
    public static Answer<Map<String, String>> read(String json) {
        return read(json, CARDS);
    }

    /** The fields of a form; a list or a group where the form has one value is refused. */
    public static Answer<Map<String, String>> read(String json, Form form) {
        Told told = told(json, form);
        return told.findings().isEmpty() ? Answer.of(told.fields()) : Answer.refused(told.findings());
    }

    static Told told(String json, Form form) {
        try (JsonParser in = JSON.createParser(json)) {
            if (in.nextToken() != JsonToken.START_OBJECT) {
                return broken(where(in.currentTokenLocation()), "is not a card: the text does not begin with {", BEGIN);
            }
            Flat flat = new Flat(form);
            flat.object(in, "");
            return in.nextToken() == null
                    ? new Told(flat.fields, flat.findings, true)
                    : broken(
                            where(in.currentTokenLocation()),
                            "is not a card: something follows the closing }",
                            "keep one card in a file");
        } catch (JsonProcessingException e) {
            String why = "is not JSON: " + firstLine(e.getOriginalMessage());
            return broken(e.getLocation() == null ? "" : where(e.getLocation()), why, "mend the text at that place");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Told broken(String where, String why, String mend) {
        return new Told(Map.of(), List.of(new Finding("card", where, why, mend)), false);
    }

    private static String where(JsonLocation place) {
        return "line %d, column %d".formatted(place.getLineNr(), place.getColumnNr());
    }

    private void object(JsonParser in, String prefix) throws IOException {
        while (in.nextToken() != JsonToken.END_OBJECT) {
            String path = prefix + in.currentName();
            JsonToken value = in.nextToken();
            if (value == JsonToken.START_OBJECT && isOneValue(path)) {
                in.skipChildren();
                found(path, "{..}", "a group", "{ }");
            } else if (value == JsonToken.START_OBJECT) {
                object(in, path + ".");
            } else if (value == JsonToken.START_ARRAY) {
                String text = array(in);
                if (form.field(path).filter(field -> !isList(field)).isPresent()) {
                    found(path, "[" + shortened(text) + "]", "a list", "[ ]");
                } else {
                    fields.put(path, text);
                }
            } else if (value != JsonToken.VALUE_NULL) {
                fields.put(path, in.getText());
            }
        }
    }

    private void found(String path, String given, String what, String marks) {
        Field<?> field = form.field(path).orElseThrow();
        findings.add(new Finding(
                path,
                given,
                "must be %s, not %s".formatted(field.kind().words(), what),
                "write the value alone, without %s, such as %s".formatted(marks, field.example())));
    }

    /** Whether the form has a value at this path and nothing inside it. */
    private boolean isOneValue(String path) {
        return form.field(path).isPresent() && form.paths().stream().noneMatch(other -> other.startsWith(path + "."));
    }

    private static boolean isList(Field<?> field) {
        return "array".equals(field.kind().schema().get("type"));
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + " ..";
    }

    private static String array(JsonParser in) throws IOException {
        StringJoiner entries = new StringJoiner(", ");
        while (in.nextToken() != JsonToken.END_ARRAY) {
            entries.add(entry(in));
        }
        return entries.toString();
    }

    private static String entry(JsonParser in) throws IOException {
        JsonToken token = in.currentToken();
        if (token == JsonToken.START_ARRAY) {
            return array(in);
        }
        if (token != JsonToken.START_OBJECT) {
            return in.getText();
        }
        SortedMap<String, String> values = new TreeMap<>();
        while (in.nextToken() != JsonToken.END_OBJECT) {
            String key = in.currentName();
            in.nextToken();
            values.put(key, entry(in));
        }
        return String.join(" ", values.values());
    }

    private static String firstLine(String message) {
        int end = message.indexOf('\n');
        return (end < 0 ? message : message.substring(0, end)).strip();
    }
}
