// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CribCommandTest {
    @TempDir
    private Path folder;

    private String store = "";

    @BeforeEach
    void aStoreOfItsOwn() {
        store = folder.resolve("crib.db").toString();
    }

    @Test
    void aTapIsAddedByItsCallOutAndNumbered() throws IOException {
        assertThat(crib("add", "M8x1.25-6H").out()).startsWith("T0001-W is in the crib: M8x1.25");
        JsonNode second = json("add", "1/4-20 UNC-2B", "--place", "drawer 4", "--price", "18.50 EUR");
        assertThat(second.path("mark").asText()).startsWith("T0002-");
        JsonNode shown = json("show", second.path("mark").asText());
        assertThat(shown.path("place").asText()).isEqualTo("drawer 4");
        assertThat(shown.path("events")).hasSize(2);
        assertThat(shown.path("card").path("thread").asText()).isEqualTo("1/4-20 UNC-2B");
        assertThat(shown.path("working").isArray()).isTrue();
        assertThat(shown.path("cautions").isArray()).isTrue();
    }

    @Test
    void whatHappenedIsLoggedShownAndTakenBack() throws IOException {
        crib("add", "M8x1.25-6H", "--mark", "T-1");
        JsonNode logged =
                json("log", "T-1", "tapped", "--holes", "40", "--since", "Monday", "--material", "4140 annealed");
        assertThat(logged.path("mark").asText()).isEqualTo("T-1");
        assertThat(logged.path("seq").asInt()).isEqualTo(1);
        assertThat(logged.path("event").path("kind").asText()).isEqualTo("tapped");
        assertThat(json("show", "T-1").path("uses").path("holes").asInt()).isEqualTo(40);
        assertThat(json("show", "T-1").path("uses").path("about").asBoolean()).isTrue();
        crib("log", "T-1", "corrected", "--takes-back", "1", "--because", "another tap");
        assertThat(json("show", "T-1").path("uses").path("holes").asInt()).isZero();
        assertThat(crib("show", "T-1").out()).contains("(taken back)");
    }

    @Test
    void everyBadFieldIsRefusedAtOnce() {
        crib("add", "M8x1.25-6H", "--mark", "T-1");
        Run run = crib("log", "T-1", "tapped", "--holes", "two", "--torque", "-3", "--at", "2031-01-01");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err().lines())
                .hasSize(3)
                .anySatisfy(line -> assertThat(line)
                        .isEqualTo("at: \"2031-01-01\" is still to come."
                                + " To mend: write when it happened, or leave it out for now."));
    }

    @Test
    void anUnknownMarkEndsWithThree() {
        assertThat(crib("show", "T-9").exit()).isEqualTo(Exit.NO_RECORD);
        Run run = crib("log", "T-9", "tapped", "--holes", "1");
        assertThat(run.exit()).isEqualTo(Exit.NO_RECORD);
        assertThat(run.err()).startsWith("mark: \"T-9\" is not in the crib. To mend: look with landfall crib list");
    }

    @Test
    void anEventThatIsLeftOutIsAskedFor() {
        crib("add", "M8x1.25-6H", "--mark", "T-1");
        Run run = crib("log", "T-1");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err()).startsWith("event: \"\" is needed: what happened. To mend: give one of bought, issued");
    }

    @Test
    void anUnknownEventIsRefusedWithTheNearest() {
        crib("add", "M8x1.25-6H", "--mark", "T-1");
        Run run = crib("log", "T-1", "taped", "--holes", "1");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err()).contains("write tapped, the nearest");
        assertThat(crib("shwo", "T-1").err())
                .startsWith("crib: \"shwo\" is not something the crib does." + " To mend: did you mean show?");
    }

    @Test
    void theListIsOfTheThreadThatWasAskedFor() throws IOException {
        crib("add", "M8x1.25-6H", "--mark", "T-1");
        crib("add", "M8", "--mark", "T-2");
        crib("add", "M6", "--mark", "T-3");
        crib("log", "T-2", "scrapped");
        assertThat(json("list", "--thread", "M8x1.25").path("taps")).hasSize(1);
        assertThat(json("list", "--thread", "M8x1.25-6H", "--all").path("taps")).hasSize(2);
        assertThat(json("list").path("taps")).hasSize(2);
        assertThat(crib("list", "--thread", "M8x9").exit()).isEqualTo(Exit.REFUSED);
        assertThat(crib("list", "--kind", "gauge").out()).startsWith("The crib holds nothing of that kind.");
    }

    @Test
    void aTapIsDueByWhatTheShopsTapsHaveTaught() throws IOException {
        crib("add", "M8x1.25-6H", "--mark", "T-1");
        assertThat(json("show", "T-1").path("due").isNull()).isTrue();
        assertThat(crib("due", "T-1").err()).startsWith("mark: \"T-1\" has no due:");
        for (int run = 0; run < 6; run++) {
            crib("log", "T-1", "tapped", "--holes", "100", "--material", "4140 annealed");
            crib("log", "T-1", "sharpened", "--way", "chamfer");
        }
        crib("log", "T-1", "tapped", "--holes", "40", "--material", "4140 annealed");
        JsonNode due = json("due", "T-1", "--holes", "30");
        assertThat(due.path("left").path("low").asDouble())
                .isLessThan(due.path("left").path("expected").asDouble());
        assertThat(due.path("left").path("expected").asDouble()).isBetween(20.0, 160.0);
        assertThat(due.path("job").path("lasts").path("value").asDouble()).isBetween(0.0, 1.0);
        assertThat(due.path("working")).isNotEmpty();
        assertThat(json("show", "T-1").path("due").path("left").path("expected").asDouble())
                .isEqualTo(due.path("left").path("expected").asDouble(), within(1e-6));
        JsonNode prospect = json("due", "T-1", "--price", "20 EUR", "--depth", "16 mm", "--holes", "30");
        assertThat(prospect.path("curve")).hasSize(9);
        assertThat(prospect.path("wanting").toString()).contains("What one sharpening costs");
        assertThat(crib("due", "T-1", "--price", "dear").err()).startsWith("price: \"dear\" is not a price");
        assertThat(json("due").path("taps")).hasSize(1);
        assertThat(crib("due").out()).contains("T-1");
        assertThat(crib("due", "T-1", "--holes", "many").exit()).isEqualTo(Exit.REFUSED);
        assertThat(crib("due", "--holes", "30").exit()).isEqualTo(Exit.REFUSED);
        assertThat(crib("due", "T-9").exit()).isEqualTo(Exit.NO_RECORD);
    }

    @Test
    void aTableIsJudgedThenTakenThenWrittenOutAgain() throws IOException {
        Path table = folder.resolve("taps.csv");
        Files.writeString(table, "Tap no,thread,place\nT-1,M8x1.25,drawer 1\nT-2,M99x,drawer 2\n");
        String file = table.toString();
        JsonNode dry = json("import", file, "--map", "Tap no=mark", "--dry-run");
        assertThat(dry.path("rows").asInt()).isEqualTo(2);
        assertThat(dry.path("good").asInt()).isEqualTo(1);
        assertThat(dry.path("bad").get(0).path("line").asInt()).isEqualTo(3);
        assertThat(dry.path("bad").get(0).path("field").asText()).isEqualTo("thread");
        assertThat(json("list").path("taps")).isEmpty();
        Run run = crib("import", file, "--map", "Tap no=mark");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.out()).contains("2 rows read, 1 good: 1 added");
        String out = folder.resolve("out.csv").toString();
        assertThat(crib("export", out).out()).startsWith("1 things are in");
        assertThat(Files.readString(folder.resolve("out.csv"))).contains("T-1,tap,,M8x1.25");
        crib("export", folder.resolve("out.json").toString());
        assertThat(new ObjectMapper()
                        .readTree(folder.resolve("out.json").toFile())
                        .path("things"))
                .hasSize(1);
        assertThat(crib("export", folder.resolve("out.txt").toString()).exit()).isEqualTo(Exit.REFUSED);
    }

    @Test
    void aBackupIsProvenAndRestoresIntoANewStore() throws IOException {
        crib("add", "M8x1.25-6H", "--mark", "T-1");
        String file = folder.resolve("crib.backup").toString();
        assertThat(json("backup", file).path("verified").asBoolean()).isTrue();
        assertThat(crib("restore", file).err()).contains("holds a crib or people already");
        store = folder.resolve("new.db").toString();
        assertThat(json("restore", file).path("verified").asBoolean()).isTrue();
        assertThat(json("list").path("taps")).hasSize(1);
    }

    @Test
    void aFileThatIsNoStoreIsRefused() throws IOException {
        Files.writeString(Path.of(store), "no store\n".repeat(500));
        Run run = crib("list");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(run.err()).contains("is damaged, or is not a crib");
    }

    private Run crib(String... args) {
        List<String> all = new ArrayList<>(List.of("crib"));
        all.addAll(List.of(args));
        all.addAll(List.of("--store", store));
        return Run.of(all.toArray(String[]::new));
    }

    private JsonNode json(String... args) throws IOException {
        List<String> all = new ArrayList<>(List.of(args));
        all.add("--json");
        return new ObjectMapper().readTree(crib(all.toArray(String[]::new)).out());
    }
}
