// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("hole, tap, why and the sheet of dial on the command line")
class WorkCommandsTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static JsonNode json(String... words) throws Exception {
        Run run = Run.of(words);
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        return JSON.readTree(run.out());
    }

    @Test
    void aHoleWithItsDepthAndTheShopsDrawers() throws Exception {
        JsonNode hole = json(
                "hole",
                "1/4-20 UNC-2B",
                "--depth",
                "0.25",
                "--blind",
                "--drills",
                "inch,metric",
                "--share",
                "70%",
                "--json");
        assertThat(hole.at("/minor/min").asDouble()).isEqualTo(0.202);
        assertThat(hole.at("/drill/inside").asBoolean()).isTrue();
        assertThat(hole.at("/depth/tapPoint/value").asDouble()).isEqualTo(0.35);
        assertThat(hole.at("/strength/engagementToBreakScrew/unit").asText()).isEqualTo("in");
    }

    @Test
    void aFormedHole() throws Exception {
        assertThat(json("hole", "M8", "--forming", "--json").at("/drill/name").asText())
                .isEqualTo("7.4 mm");
    }

    @Test
    void tapsBestFirst() throws Exception {
        JsonNode tap = json("tap", "M8x1.25-6H", "--material", "1018", "--through", "--machine", "--json");
        assertThat(tap.at("/choices/0/flutes").asText()).isEqualTo("spiral-point");
        assertThat(tap.at("/choices/0/reach/unit").asText()).isEqualTo("mm");
        assertThat(tap.at("/choices/0/reasons").size()).isPositive();
    }

    @Test
    void whyAloneListsTheSymptoms() throws Exception {
        assertThat(json("why", "--json").at("/symptoms").size()).isEqualTo(14);
    }

    @Test
    void whyWithACardKnowsItsChip() throws Exception {
        JsonNode why = json("why", "squeal", "--card", "../examples/tap-m8.json", "--material", "304", "--json");
        assertThat(why.at("/causes/0/likelihood").asText()).isEqualTo("likely");
        assertThat(why.at("/tap/chip/value").asDouble()).isPositive();
    }

    @Test
    void dialWritesItsSheet(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("dial.pdf");
        Run run = Run.of(
                "dial",
                "../examples/readings-m10.csv",
                "--card",
                "../examples/tap-m10-left-hand.json",
                "--sheet",
                file.toString());
        assertThat(run.err()).isEqualTo("The sheet is in " + file + "\n");
        assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
    }
}
