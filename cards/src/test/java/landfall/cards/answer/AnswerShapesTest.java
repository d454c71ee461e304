// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import landfall.cards.Cards;
import landfall.cards.ask.Samples;
import org.junit.jupiter.api.Test;

class AnswerShapesTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<Document> DOCUMENTS = Samples.documents();

    /** Run with -Dlandfall.approve=true to write the file anew, then read the difference. */
    @Test
    void theShapesAreThoseOfTheSamples() throws IOException {
        Path file = Cards.house().resolve("cards/src/main/resources/landfall/cards/answer/answers.json");
        String made = JSON.writerWithDefaultPrettyPrinter().writeValueAsString(ShapeOf.all(DOCUMENTS)) + "\n";
        if (Boolean.getBoolean("landfall.approve")) {
            Files.writeString(file, made);
        }
        assertThat(Files.readString(file)).isEqualTo(made);
    }

    /** By a validator of others: the JSON that is printed, not the items it was taken from. */
    @Test
    void everySampleAsPrintedHoldsToItsShape() throws IOException {
        assertThat(AnswerShapes.all().keySet())
                .containsAll(Samples.questions().stream()
                        .map(question -> question.noun())
                        .toList());
        for (Document document : DOCUMENTS) {
            JsonSchema schema = schema(document.noun());
            assertThat(schema.validate(JSON.readTree(JsonAnswer.write(document))))
                    .as(document.noun() + " " + document.subject())
                    .isEmpty();
        }
    }

    @Test
    void anotherQuestionsAnswerDoesNotHoldToAShape() throws IOException {
        Document thread = DOCUMENTS.get(0);
        assertThat(schema("grind").validate(JSON.readTree(JsonAnswer.write(thread))))
                .isNotEmpty();
    }

    private static JsonSchema schema(String noun) {
        ObjectNode whole = JSON.valueToTree(AnswerShapes.all().get(noun));
        whole.set("components", JSON.valueToTree(Map.of("schemas", AnswerShapes.shared())));
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(whole);
    }
}
