// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandsTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String TAP = "../examples/tap-m8.json";
    private static final String FIXTURE = "../examples/fixture-three-lobes.json";

    @Test
    void withoutANounItSaysWhatItCanDo() {
        Run run = Run.of();
        assertThat(run.exit()).isEqualTo(Exit.DONE);
        assertThat(run.out()).contains("thread").contains("grind").contains("serve");
        assertThat(run).isEqualTo(Run.of("help"));
    }

    @Test
    void everyCommandHasHelpInEightyColumns() {
        for (String noun : List.of("thread", "grind", "serve", "demo", "check")) {
            Run run = Run.of("help", noun);
            assertThat(run.exit()).isEqualTo(Exit.DONE);
            assertThat(run.out()).startsWith("landfall " + noun + " - ");
            assertThat(run.out().lines()).filteredOn(line -> line.length() > 80).isEmpty();
            assertThat(Run.of(noun, "--help")).isEqualTo(run);
        }
    }

    @Test
    void anUnknownNounIsRefusedWithTheNearest() {
        Run run = Run.of("grnd");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("command: \"grnd\" is not a command of landfall. To mend: did you mean grind?");
    }

    @Test
    void withJsonARefusalIsOneDocumentOnStandardOutput() throws Exception {
        Run run = Run.of("grnd", "--json");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err()).isEmpty();
        JsonNode finding = JSON.readTree(run.out()).get("refused").get(0);
        assertThat(finding.get("given").asText()).isEqualTo("grnd");
        assertThat(finding.get("mend").asText()).startsWith("did you mean grind?");
    }

    @Test
    void everyUnknownOptionIsRefusedWithTheNearest() {
        Run run = Run.of("grind", TAP, "--fixtur", FIXTURE, "--working-releif", "5 deg");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err())
                .contains("\"--fixtur\" is not an option of grind. To mend: did you mean --fixture?")
                .contains("\"--working-releif\" is not an option of grind. To mend: did you mean --working-relief?");
    }

    @Test
    void anOptionWithoutItsValueOrGivenTwiceIsRefused() {
        assertThat(Run.of("grind", TAP, "--fixture").err()).contains("--fixture: \"\" needs a value after it");
        Run twice = Run.of("grind", TAP, "--fixture", FIXTURE, "--fixture", FIXTURE);
        assertThat(twice.exit()).isEqualTo(Exit.REFUSED);
        assertThat(twice.err()).contains("--fixture: \"twice\" can be given once");
    }

    @Test
    void wordsTooManyAndTooFewAreRefused() {
        assertThat(Run.of("thread", "M8", "6H").err())
                .contains("\"6H\" is one word too many. To mend: leave it out, or put quotation marks round");
        Run none = Run.of("thread");
        assertThat(none.exit()).isEqualTo(Exit.REFUSED);
        assertThat(none.err()).contains("CALLOUT: \"\" is needed");
    }

    /** ISO 965-2:1998, M8 6H: pitch diameter 7.188 to 7.348, minor diameter 6.647 to 6.912 mm. */
    @Test
    void threadAnswersInJson() throws Exception {
        Run run = Run.of("thread", "M8x1.25-6H", "--json");
        assertThat(run.exit()).isEqualTo(Exit.DONE);
        JsonNode answer = JSON.readTree(run.out());
        assertThat(answer.at("/internal/pitch/min").asDouble()).isEqualTo(7.188);
        assertThat(answer.at("/internal/minor/max").asDouble()).isEqualTo(6.912);
        assertThat(answer.at("/internal/major/max").isNull()).isTrue();
        assertThat(answer.get("working")).isNotEmpty();
    }

    @Test
    void theProgramTellsOfItselfInJson() throws Exception {
        assertThat(JSON.readTree(Run.of("--version", "--json").out())
                        .get("version")
                        .asText())
                .isEqualTo(landfall.app.build.Build.running().version());
        JsonNode help = JSON.readTree(Run.of("help", "--json").out());
        assertThat(help.get("commands").findValuesAsText("noun")).contains("thread", "grind", "serve", "check");
        assertThat(help.get("commands").findValuesAsText("means")).doesNotContain("");
        assertThat(Run.of("--json")).isEqualTo(Run.of("help", "--json"));
        assertThat(JSON.readTree(Run.of("help", "grind", "--json").out())
                        .get("noun")
                        .asText())
                .isEqualTo("grind");
        assertThat(Run.of("grind", "--help", "--json")).isEqualTo(Run.of("help", "grind", "--json"));
    }

    @Test
    void aCallOutInABatchMayBeginWithItsNumberSign() throws Exception {
        Run run = Run.with("# screws\n#\n#screws\n#10-32 UNF-2B\n", "thread", "-");
        assertThat(run.exit()).as(run.out()).isEqualTo(Exit.DONE);
        assertThat(run.out().lines()).hasSize(1);
        assertThat(JSON.readTree(run.out()).get("callout").asText()).contains("10-32");
    }

    @Test
    void jsonMayStandBeforeTheNoun() {
        assertThat(Run.of("--json", "thread", "M8x1.25-6H").out())
                .isEqualTo(Run.of("thread", "M8x1.25-6H", "--json").out());
    }

    @Test
    void aBatchAnswersLineByLineInOrderAndGoesOnAfterARefusal() throws Exception {
        Run run = Run.with("# drawing 4711\nM8x1.25-6H\n\nM8x1.25-6Q\r\n1/4-20 UNC-2B\n", "thread", "-");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSize(3);
        assertThat(JSON.readTree(lines.get(0)).get("callout").asText()).isEqualTo("M8x1.25-6H");
        assertThat(JSON.readTree(lines.get(0)).has("working")).isFalse();
        assertThat(JSON.readTree(lines.get(1)).has("refused")).isTrue();
        assertThat(JSON.readTree(lines.get(2)).get("callout").asText()).isEqualTo("1/4-20 UNC-2B");
        assertThat(Run.with("M8x1.25-6H\n", "thread", "-").exit()).isEqualTo(Exit.DONE);
        assertThat(JSON.readTree(Run.with("M8x1.25-6H", "thread", "-", "--working")
                                .out())
                        .has("working"))
                .isTrue();
    }

    @Test
    void anEndlessLineIsRefusedAndTheNextOneAnswered() throws Exception {
        Run run = Run.with("M".repeat(1_000_000) + "\nM8x1.25-6H\n", "thread", "-");
        List<String> lines = run.out().lines().toList();
        assertThat(JSON.readTree(lines.get(0)).get("refused").get(0).get("why").asText())
                .isEqualTo("is over 64 kB long");
        assertThat(JSON.readTree(lines.get(1)).get("callout").asText()).isEqualTo("M8x1.25-6H");
    }

    @Test
    void grindAnswersInTextOfEightyColumns() {
        Run run = Run.of("grind", TAP, "--fixture", FIXTURE);
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isEqualTo(Exit.DONE);
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(run.out()).contains("M8");
    }

    @Test
    void anOptionOverridesWhatACardSays() throws Exception {
        JsonNode answer = JSON.readTree(Run.of(
                        "grind",
                        TAP,
                        "--fixture",
                        FIXTURE,
                        "--working-relief",
                        "4 deg",
                        "--chamfer.angle",
                        "8.5 deg",
                        "--json")
                .out());
        assertThat(answer.at("/relief/working/value").asDouble()).isEqualTo(4);
        assertThat(answer.at("/setting/swivel/value").asDouble()).isEqualTo(8.5);
    }

    @Test
    void theMaterialOnTheCommandLineIsTheOneToBeCut() throws Exception {
        String[] grind = {"grind", TAP, "--fixture", FIXTURE, "--json", "--material"};
        Run cast = Run.of(append(grind, "4140 annealed"));
        Run none = Run.of(append(grind, "nonsuch"));
        assertThat(cast.exit()).as(cast.out()).isEqualTo(Exit.DONE);
        assertThat(JSON.readTree(none.out()).at("/refused/0/field").asText()).isEqualTo("material");
        assertThat(Run.of(append(grind, "4140 annealed", "--tap-material", "carbide"))
                        .exit())
                .isEqualTo(Exit.REFUSED);
    }

    private static String[] append(String[] words, String... more) {
        return java.util.stream.Stream.concat(java.util.Arrays.stream(words), java.util.Arrays.stream(more))
                .toArray(String[]::new);
    }

    @Test
    void aFileThatIsMissingAFolderOrBrokenIsRefused(@TempDir Path folder) throws Exception {
        Path broken = Files.writeString(folder.resolve("broken.json"), "{\"thread\": ");
        Path latin = Files.write(folder.resolve("latin.json"), new byte[] {'{', '"', (byte) 0xE9});
        assertThat(Run.of("grind", "nowhere.json", "--fixture", FIXTURE).err())
                .startsWith("card: \"nowhere.json\" is not there. To mend:");
        assertThat(Run.of("grind", folder.toString(), "--fixture", FIXTURE).err())
                .contains("is a folder");
        assertThat(Run.of("grind", latin.toString(), "--fixture", FIXTURE).err())
                .contains("is not text in UTF-8");
        Run run = Run.of("grind", broken.toString(), "--fixture", FIXTURE);
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err()).startsWith("card: \"" + broken + ", line 1").contains("is not JSON");
        assertThat(Run.of("grind", TAP, "--fixture", broken.toString()).err())
                .startsWith("fixture: \"" + broken + ", line 1")
                .hasLineCount(1);
    }

    @Test
    void aCardThatIsNotGivenIsWhatIsMissing() throws Exception {
        assertThat(Run.of("grind", TAP).err())
                .isEqualToIgnoringNewLines("fixture: \"\" is needed: the fixture card. "
                        + "To mend: write --fixture FIXTURE, see landfall help grind.");
        assertThat(Run.of("dial", "../examples/readings-m10.csv").err())
                .isEqualToIgnoringNewLines(
                        "card: \"\" is needed: the tap card. To mend: write --card CARD, see landfall help dial.");
        JsonNode both =
                JSON.readTree(Run.of("grind", "--wear", "furlong", "--json").out());
        assertThat(both.get("refused").findValuesAsText("field")).containsExactly("card", "fixture", "wear");
        assertThat(JSON.readTree(Run.with(json(TAP), "grind", "-").out())
                        .at("/refused/0/field")
                        .asText())
                .isEqualTo("fixture");
        assertThat(Run.with(json(TAP), "grind", "-", "--fixture", FIXTURE).exit())
                .isEqualTo(Exit.DONE);
    }

    /** A card on one line. */
    private static String json(String file) throws Exception {
        return JSON.readTree(Path.of(file).toFile()).toString();
    }

    @Test
    void swappedCardsAndFieldsOfTheOtherCardAreRefused(@TempDir Path folder) throws Exception {
        JsonNode swapped = JSON.readTree(
                Run.of("grind", FIXTURE, "--fixture", TAP, "--json").out());
        assertThat(swapped.get("refused").findValuesAsText("field")).containsExactly("card", "fixture");
        Path fixture = Files.writeString(
                folder.resolve("fixture.json"), json(FIXTURE).replaceFirst("\\{", "{\"thread\":\"M6x1-6H\","));
        Run mixed = Run.of("grind", TAP, "--fixture", fixture.toString());
        assertThat(mixed.exit()).isEqualTo(Exit.REFUSED);
        assertThat(mixed.err())
                .isEqualToIgnoringNewLines("thread: \"M6x1-6H\" is not a field of the fixture card but of a tap card. "
                        + "To mend: move it to the tap card, or leave it out.");
        assertThat(Run.of("grind", TAP, "--fixture", FIXTURE, "--thread", "M8x1.25-6H", "--cam.lobes", "3")
                        .exit())
                .isEqualTo(Exit.DONE);
    }

    @Test
    void serveRefusesAPortAndAnAddressThatCannotBe() {
        Run run = Run.of("serve", "--port", "70000", "--listen", "203.0.113.7");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err())
                .contains("--port: \"70000\" must be a whole number from 0 to 65535")
                .contains("--listen: \"203.0.113.7\" is not an address of this machine");
    }

    @Test
    void checkLooksAtThisMachine() throws Exception {
        Run run = Run.of("check", "--json");
        JsonNode checks = JSON.readTree(run.out()).get("checks");
        assertThat(checks.findValuesAsText("what")).contains("java", "data folder", "clock", "fonts");
        assertThat(run.exit()).isEqualTo(Exit.DONE);
    }

    @Test
    void aClockBeforeTheProgramWasMadeIsFound() {
        assertThat(CheckCommand.clock(java.time.Instant.parse("1999-12-31T00:00:00Z"))
                        .good())
                .isFalse();
        assertThat(CheckCommand.clock(java.time.Instant.parse("2026-11-26T00:00:00Z"))
                        .good())
                .isTrue();
    }
}
