// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import landfall.cards.Cards;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.quantity.UnitSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The published JSON schemas are those of the forms")
class CardSchemaTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    static Form form(String name) {
        return switch (name) {
            case "tap-card" -> TapCard.FORM;
            case "fixture-card" -> FixtureCard.FORM;
            default -> ShopCard.FORM;
        };
    }

    /** Run with -Dlandfall.approve=true to write the files anew, then read the difference. */
    @ParameterizedTest
    @ValueSource(strings = {"tap-card", "fixture-card", "shop-card"})
    void theFileIsWhatTheFormMakes(String name) throws IOException {
        Path file = Cards.house().resolve("docs/schema/" + name + ".schema.json");
        String made = CardSchema.of(form(name));
        if (Boolean.getBoolean("landfall.approve")) {
            Files.writeString(file, made);
        }
        assertThat(Files.readString(file)).isEqualTo(made);
    }

    @ParameterizedTest
    @CsvSource({
        "tap-card,tap-m8.json",
        "tap-card,tap-half-13-worn.json",
        "tap-card,tap-m10-left-hand.json",
        "fixture-card,fixture-three-lobes.json",
        "fixture-card,fixture-four-lobes.json",
        "shop-card,shop.json"
    })
    void theExamplesHoldToTheirSchemas(String schema, String example) throws IOException {
        assertThat(check(schema, JSON.readTree(Cards.text(example)))).isEmpty();
    }

    @Test
    void aCardWithAWrongKeyOrWithoutANeededOneDoesNot() throws IOException {
        assertThat(check("tap-card", JSON.readTree("{\"thread\":\"M8\",\"flutes\":{\"count\":3},\"pint\":1}")))
                .hasSize(1);
        assertThat(check("tap-card", JSON.readTree("{\"thread\":\"M8\"}"))).hasSize(1);
        assertThat(check("tap-card", JSON.readTree("{\"thread\":\"M8\",\"flutes\":{\"count\":99}}")))
                .hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"H3", "class 2"})
    void aLimitIsATextOrAGroup(String limit) throws IOException {
        String card = "{\"thread\":\"M8\",\"flutes\":{\"count\":3},\"limit\":\"" + limit + "\"}";
        assertThat(check("tap-card", JSON.readTree(card))).isEmpty();
    }

    @Test
    void everyFieldsExampleIsAccepted() {
        for (Form form : new Form[] {TapCard.FORM, FixtureCard.FORM, ShopCard.FORM}) {
            for (Field<?> field : form.fields()) {
                assertThat(field.kind()
                                .reading()
                                .read(field.example(), UnitSystem.METRIC)
                                .findings())
                        .as(field.path())
                        .isEmpty();
                assertThat(field.means()).as(field.path()).isNotBlank();
            }
        }
    }

    private static Set<ValidationMessage> check(String name, JsonNode card) throws IOException {
        String text = Files.readString(Cards.house().resolve("docs/schema/" + name + ".schema.json"));
        JsonSchema schema =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(text);
        return schema.validate(card);
    }
}
