// SPDX-License-Identifier: Apache-2.0
package landfall.app.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import landfall.app.build.Build;
import landfall.app.people.Entrance;
import landfall.app.question.Questions;
import landfall.cards.answer.AnswerShapes;
import landfall.cards.ask.Question;
import landfall.cards.card.CardSchema;
import landfall.cards.form.Field;
import landfall.cards.words.Words;

/**
 * The HTTP JSON interface as an OpenAPI 3.1 document. What a question takes comes from its form and what it answers
 * from {@link AnswerShapes}; the addresses of the records stand in {@code records.json}.
 */
public final class OpenApi {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final ObjectNode root = JSON.createObjectNode();
    private final ObjectNode paths;
    private final ObjectNode schemas;

    private OpenApi() {
        root.put("openapi", "3.1.0");
        ObjectNode info = root.putObject("info");
        info.put("title", "Landfall");
        info.put("version", Build.running().version());
        info.put("description", Words.of("api.about"));
        info.putObject("license").put("name", "Apache-2.0").put("identifier", "Apache-2.0");
        root.putArray("servers").addObject().put("url", "/");
        paths = root.putObject("paths");
        ObjectNode components = root.putObject("components");
        schemas = components.putObject("schemas");
        ObjectNode schemes = components.putObject("securitySchemes");
        schemes.putObject("signIn").put("type", "apiKey").put("in", "cookie").put("name", "landfall");
        schemes.putObject("token").put("type", "apiKey").put("in", "header").put("name", Entrance.TOKEN);
    }

    /** The whole document, indented. */
    public static String document() {
        OpenApi api = new OpenApi();
        AnswerShapes.shared().forEach((name, shape) -> api.schemas.set(name, JSON.valueToTree(shape)));
        AnswerShapes.all().forEach((noun, shape) -> api.schemas.set(noun, JSON.valueToTree(shape)));
        Questions.all().forEach(api::question);
        api.records();
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(api.root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void question(Question question) {
        ObjectNode path = paths.putObject("/api/" + question.noun());
        ObjectNode get = path.putObject("get");
        about(get, question.noun(), "noun." + question.noun());
        ArrayNode parameters = get.putArray("parameters");
        question.form().fields().forEach(field -> parameter(parameters.addObject(), field));
        answers(get, "200", ref(question.noun()), false);
        ObjectNode post = path.putObject("post");
        about(post, question.noun() + "Body", "noun." + question.noun());
        body(post, fields(question));
        answers(post, "200", ref(question.noun()), false);
    }

    private static void parameter(ObjectNode parameter, Field<?> field) {
        parameter.put("name", field.path());
        parameter.put("in", "query");
        parameter.put("description", field.means());
        parameter.put("required", field.required());
        // in an address every field is a text, whatever a card may hold
        parameter.putObject("schema").put("type", "string").putArray("examples").add(field.example());
    }

    /**
     * The fields as groups in groups, as a card has them; none is required, since they may stand in the address too.
     */
    private static JsonNode fields(Question question) {
        try {
            ObjectNode schema = (ObjectNode) JSON.readTree(CardSchema.fields(question.form()));
            schema.remove("required");
            return schema;
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void records() {
        JsonNode told = resource();
        told.get("schemas").fields().forEachRemaining(entry -> schemas.set(entry.getKey(), entry.getValue()));
        told.get("paths").fields().forEachRemaining(entry -> {
            ObjectNode path = paths.putObject(entry.getKey());
            entry.getValue()
                    .fields()
                    .forEachRemaining(method -> operation(path.putObject(method.getKey()), method.getValue()));
        });
    }

    private static void operation(ObjectNode operation, JsonNode told) {
        String id = told.get("operationId").asText();
        about(operation, id, "api." + id);
        operation.set("parameters", told.get("parameters"));
        boolean writes = told.has("requestBody");
        if (writes) {
            operation.set("requestBody", told.get("requestBody"));
        }
        ObjectNode security = operation.putArray("security").addObject();
        security.putArray("signIn");
        if (writes) {
            security.putArray("token");
        }
        answers(operation, told.get("answers").asText(), told.get("schema"), true);
        if (told.get("missing").asBoolean()) {
            response(operation, "404", "api.answer.404", ref("refusal"));
        }
        operation.put("x-role", told.get("role").asText());
    }

    private static void about(ObjectNode operation, String id, String words) {
        operation.put("operationId", id);
        operation.put("summary", Words.of(words));
    }

    private static void answers(ObjectNode operation, String done, JsonNode schema, boolean records) {
        response(operation, done, "api.answer.done", schema);
        response(operation, "400", "api.answer.400", ref("refusal"));
        if (records) {
            response(operation, "401", "api.answer.401", ref("refusal"));
            response(operation, "403", "api.answer.403", ref("refusal"));
        }
    }

    private static void response(ObjectNode operation, String status, String words, JsonNode schema) {
        ObjectNode response = operation.withObject("/responses").putObject(status);
        response.put("description", Words.of(words));
        json(response, schema);
    }

    private static void body(ObjectNode operation, JsonNode schema) {
        json(operation.putObject("requestBody"), schema);
    }

    private static void json(ObjectNode node, JsonNode schema) {
        node.putObject("content").putObject("application/json").set("schema", schema);
    }

    private static JsonNode ref(String name) {
        return JSON.valueToTree(AnswerShapes.ref(name));
    }

    private static JsonNode resource() {
        try (InputStream in = Objects.requireNonNull(OpenApi.class.getResourceAsStream("records.json"))) {
            return JSON.readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
