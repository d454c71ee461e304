// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.StringJoiner;
import java.util.TreeMap;
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

    private Flat() {}

    /** The card's fields; broken JSON is refused with its line and column. */
    public static Answer<Map<String, String>> read(String json) {
        try (JsonParser in = JSON.createParser(json)) {
            if (in.nextToken() != JsonToken.START_OBJECT) {
                return refused(
                        "the text does not begin with {", in, "write a JSON object: {\"thread\":\"M8x1.25-6H\", ..}");
            }
            Map<String, String> flat = new LinkedHashMap<>();
            object(in, "", flat);
            if (in.nextToken() != null) {
                return refused("something follows the closing }", in, "keep one card in a file");
            }
            return Answer.of(flat);
        } catch (JsonProcessingException e) {
            String where = e.getLocation() == null
                    ? ""
                    : "line %d, column %d"
                            .formatted(
                                    e.getLocation().getLineNr(), e.getLocation().getColumnNr());
            return Answer.refused(new Finding(
                    "card", where, "is not JSON: " + firstLine(e.getOriginalMessage()), "mend the text at that place"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Answer<Map<String, String>> refused(String why, JsonParser in, String mend) {
        String where = "line %d, column %d"
                .formatted(
                        in.currentTokenLocation().getLineNr(),
                        in.currentTokenLocation().getColumnNr());
        return Answer.refused(new Finding("card", where, "is not a card: " + why, mend));
    }

    private static void object(JsonParser in, String prefix, Map<String, String> flat) throws IOException {
        while (in.nextToken() != JsonToken.END_OBJECT) {
            String path = prefix + in.currentName();
            JsonToken value = in.nextToken();
            if (value == JsonToken.START_OBJECT) {
                object(in, path + ".", flat);
            } else if (value == JsonToken.START_ARRAY) {
                flat.put(path, array(in));
            } else if (value != JsonToken.VALUE_NULL) {
                flat.put(path, in.getText());
            }
        }
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
