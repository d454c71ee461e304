// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import landfall.history.Happening;
import landfall.history.Standing;
import landfall.quantity.Length;
import landfall.quantity.Torque;
import landfall.wear.Brief;
import landfall.wear.Run;
import landfall.wear.Tally;
import org.jspecify.annotations.Nullable;

/**
 * What is folded from events, as it lies in a store. Lengths in mm, torques in N·m, moments in milliseconds since 1970;
 * what nobody told is left out. It is never the only record of anything: the events tell it again.
 */
public final class FoldedJson {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final ObjectMapper JSON = new ObjectMapper();

    private FoldedJson() {}

    private interface Filling {
        void fill(JsonGenerator out) throws IOException;
    }

    private static String object(Filling filling) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(text)) {
            out.writeStartObject();
            filling.fill(out);
            out.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static JsonNode tree(String text) {
        try {
            return JSON.readTree(text);
        } catch (IOException e) {
            throw new IllegalArgumentException("not folded: " + text, e);
        }
    }

    /** What the columns of a thing do not tell of how it stands. */
    public static String standing(Standing standing) {
        Standing.Condition condition = standing.condition();
        return object(out -> {
            flag(out, "about", standing.uses().about());
            mm(out, "wear", condition.sizes().wearLand());
            mm(out, "pitch", condition.sizes().pitchDiameter());
            mm(out, "length", condition.sizes().threadLength());
            mm(out, "land", condition.sizes().landWidth());
            if (condition.passed() != null) {
                out.writeBooleanField("passed", condition.passed());
            }
            flag(out, "coatingLost", condition.coatingLost());
        });
    }

    /** Whether a guess is among the counts since it was sharp. */
    public static boolean about(String standing) {
        return tree(standing).path("about").asBoolean();
    }

    public static Standing.Condition condition(String standing, @Nullable LocalDate calibrationDue) {
        JsonNode node = tree(standing);
        return new Standing.Condition(
                new Happening.Sizes(mm(node, "wear"), mm(node, "pitch"), mm(node, "length"), mm(node, "land")),
                node.has("passed") ? node.path("passed").asBoolean() : null,
                node.path("coatingLost").asBoolean(),
                calibrationDue);
    }

    /** A run, without its mark and its end. */
    public static String run(Brief run) {
        Instant from = run.span().from();
        Brief.Course course = run.course();
        return object(out -> {
            out.writeStringField("start", run.span().start().name());
            if (from != null) {
                out.writeNumberField("from", from.toEpochMilli());
            }
            flag(out, "about", course.about());
            tally(out, "cut", course.whole());
            signs(out, course.signs());
        });
    }

    private static void signs(JsonGenerator out, Brief.Signs signs) throws IOException {
        if (signs.land() != null) {
            mm(out, "wear", signs.land().width());
            tally(out, "wearAfter", signs.land().after());
        }
        Brief.TorqueSign torque = signs.torque();
        if (torque != null) {
            out.writeNumberField("torque", torque.first().nm());
            if (torque.work().material() != null) {
                out.writeStringField("material", torque.work().material());
            }
            mm(out, "depth", torque.work().depth());
            tally(out, "torqueOf", torque.firstHoles());
            if (torque.last() != null) {
                out.writeNumberField("later", torque.last().torque().nm());
                tally(out, "laterAfter", torque.last().after());
            }
        }
        if (signs.feel() != null) {
            out.writeStringField("feel", signs.feel().feel().name());
            tally(out, "feelAfter", signs.feel().after());
        }
    }

    /** When a run began, read no further than that; empty where nobody knows. */
    public static Optional<Instant> from(String run) {
        try (JsonParser json = FACTORY.createParser(run)) {
            json.nextToken();
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                boolean from = json.currentName().equals("from");
                json.nextToken();
                if (from) {
                    return Optional.of(Instant.ofEpochMilli(json.getLongValue()));
                }
                json.skipChildren();
            }
            return Optional.empty();
        } catch (IOException e) {
            throw new IllegalArgumentException("not folded: " + run, e);
        }
    }

    public static Brief run(String mark, Run.End end, String text) {
        JsonNode node = tree(text);
        Instant from = node.has("from") ? Instant.ofEpochMilli(node.path("from").asLong()) : null;
        Run.Start start = Run.Start.valueOf(node.path("start").asText());
        return new Brief(
                mark,
                new Run.Span(start, end, from),
                new Brief.Course(
                        tally(node.path("cut")),
                        node.path("about").asBoolean(),
                        new Brief.Signs(land(node), torque(node), feel(node))));
    }

    private static Brief.@Nullable LandSign land(JsonNode node) {
        Length width = mm(node, "wear");
        return width == null ? null : new Brief.LandSign(width, tally(node.path("wearAfter")));
    }

    private static Brief.@Nullable TorqueSign torque(JsonNode node) {
        if (!node.has("torque")) {
            return null;
        }
        String material = node.has("material") ? node.path("material").asText() : null;
        Brief.LastTorque last = node.has("later")
                ? new Brief.LastTorque(Torque.ofNm(node.path("later").asDouble()), tally(node.path("laterAfter")))
                : null;
        return new Brief.TorqueSign(
                Torque.ofNm(node.path("torque").asDouble()),
                new Happening.Work(material, mm(node, "depth")),
                tally(node.path("torqueOf")),
                last);
    }

    private static Brief.@Nullable FeelSign feel(JsonNode node) {
        return node.has("feel")
                ? new Brief.FeelSign(Happening.Feel.valueOf(node.path("feel").asText()), tally(node.path("feelAfter")))
                : null;
    }

    private static void flag(JsonGenerator out, String name, boolean value) throws IOException {
        if (value) {
            out.writeBooleanField(name, true);
        }
    }

    private static void mm(JsonGenerator out, String name, @Nullable Length length) throws IOException {
        if (length != null) {
            out.writeNumberField(name, length.mm());
        }
    }

    private static @Nullable Length mm(JsonNode node, String name) {
        return node.has(name) ? Length.ofMm(node.path(name).asDouble()) : null;
    }

    /** Each material with its holes, those of told depth, and the sum of their depths. */
    private static void tally(JsonGenerator out, String name, Tally tally) throws IOException {
        if (tally.isEmpty()) {
            return;
        }
        out.writeObjectFieldStart(name);
        for (Map.Entry<String, Tally.Share> share : tally.byMaterial().entrySet()) {
            out.writeArrayFieldStart(share.getKey());
            out.writeNumber(share.getValue().holes());
            out.writeNumber(share.getValue().told());
            out.writeNumber(share.getValue().depthNm());
            out.writeEndArray();
        }
        out.writeEndObject();
    }

    private static Tally tally(JsonNode node) {
        Map<String, Tally.Share> shares = new LinkedHashMap<>();
        node.fields()
                .forEachRemaining(field -> shares.put(
                        field.getKey(),
                        new Tally.Share(
                                field.getValue().path(0).asLong(),
                                field.getValue().path(1).asLong(),
                                field.getValue().path(2).asLong())));
        return new Tally(shares);
    }
}
