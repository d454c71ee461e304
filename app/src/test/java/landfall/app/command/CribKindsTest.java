// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hand sets, gauges, and each kind of thing that a crib keeps. */
class CribKindsTest {
    @TempDir
    private Path folder;

    private String store = "";

    @BeforeEach
    void aStoreOfItsOwn() {
        store = folder.resolve("crib.db").toString();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            wheel   | {"name":"cup","wheel":{"diameter":"150 mm","marking":"A80J6V","markedSpeed":"4000 rev/min"}} | cup | measured --wear-land 0.1mm
            drill   | {"name":"for M8","diameter":"6.8 mm"} | 6.8 mm | sharpened --way face
            gauge   | {"gauge":"GO plug","thread":"M8x1.25-6H"} | GO plug M8x1.25 | calibrated --passed yes --due 2031-03-01
            """)
    void eachKindIsAddedListedShownLoggedAndCarriedOver(String kind, String card, String words, String event)
            throws IOException {
        Path file = folder.resolve("card.json");
        Files.writeString(file, card);
        carriedOver(kind, file, words, event);
    }

    @Test
    void aFixtureIsAddedListedShownLoggedAndCarriedOver() throws IOException {
        Path root = Path.of(System.getProperty("landfall.house", ".."));
        carriedOver("fixture", root.resolve("examples/fixture-three-lobes.json"), "", "inspected --passed yes");
    }

    private void carriedOver(String kind, Path card, String words, String event) throws IOException {
        assertThat(crib("add", card.toString(), "--kind", kind, "--mark", "X-1", "--place", "drawer 9")
                        .exit())
                .isEqualTo(Exit.DONE);
        List<String> log = new ArrayList<>(List.of("log", "X-1"));
        log.addAll(List.of(event.split(" ")));
        Run logged = crib(log.toArray(String[]::new));
        assertThat(logged.err()).isEmpty();
        assertThat(crib("log", "X-1", "tapped", "--holes", "3").err()).contains("does not happen to a " + kind);
        assertThat(json("list", "--kind", kind).path("taps")).hasSize(1);
        assertThat(crib("show", "X-1").out())
                .contains("X-1  " + kind + "  " + words)
                .contains("drawer 9");
        assertThat(json("show", "X-1").path("events")).hasSize(2);
        assertThat(crib(
                                "label",
                                "X-1",
                                "--sheet",
                                folder.resolve("label.pdf").toString(),
                                "--address",
                                "http://toolroom.local:7317")
                        .exit())
                .isEqualTo(Exit.DONE);
        crib("export", folder.resolve("out.csv").toString());
        String shown = json("show", "X-1").toString();
        store = folder.resolve("other.db").toString();
        assertThat(crib("import", folder.resolve("out.csv").toString()).err()).isEmpty();
        assertThat(crib("import", folder.resolve("out.events.csv").toString()).err())
                .isEmpty();
        assertThat(json("show", "X-1").toString()).isEqualTo(shown);
    }

    @Test
    void aHandSetIsShownTogetherAndWhatIsMissingIsTold() throws IOException {
        for (String mark : List.of("S-1", "S-2", "S-3")) {
            crib("add", "M8x1.25-6H", "--mark", mark, "--set", "SET-A");
        }
        JsonNode whole = json("list").path("sets").get(0);
        assertThat(whole.path("whole").asBoolean()).isTrue();
        assertThat(whole.path("taps")).hasSize(3);
        crib("log", "S-2", "lent", "--to", "Hollow Lane");
        crib("log", "S-3", "broken");
        JsonNode set = json("list").path("sets").get(0);
        assertThat(set.path("whole").asBoolean()).isFalse();
        assertThat(set.path("missing")).hasSize(2);
        assertThat(crib("list").out())
                .contains("Set SET-A: S-1, S-2, S-3. S-2 is missing: lent, Hollow Lane. S-3 is missing: broken");
    }

    @Test
    void aSetIsDueWhenOneOfItsTapsIs() throws IOException {
        for (String mark : List.of("S-1", "S-2", "S-3", "T-4")) {
            crib("add", "M8x1.25-6H", "--mark", mark, "--set", mark.equals("T-4") ? "" : "SET-A");
            crib("log", mark, "bought");
        }
        crib("log", "S-3", "lent", "--to", "Hollow Lane");
        assertThat(crib("list", "--due").out()).startsWith("Nothing is due.");
        crib("log", "S-1", "tapped", "--holes", "5000", "--material", "4140 annealed");
        JsonNode due = json("list", "--due").path("taps");
        assertThat(due).extracting(row -> row.path("mark").asText()).containsExactly("S-1", "S-2", "S-3");
        assertThat(due.get(0).path("due").path("when").asText()).isEqualTo("now");
        assertThat(due.get(1).path("due").path("when").asText()).isEqualTo("with its set");
        assertThat(json("list", "--due", "--thread", "M6").path("taps")).isEmpty();
        JsonNode set = json("due").path("sets").get(0);
        assertThat(set.path("when").asText()).isEqualTo("now");
        assertThat(set.path("sharpen").asText()).isEqualTo("S-1, S-2");
        assertThat(set.path("missing").asText()).isEqualTo("S-3");
    }

    @Test
    void gaugesPastTheirCalibrationOrNearItsEndAreDueWithTheirDays() throws IOException {
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        Path card = folder.resolve("card.json");
        Files.writeString(card, "{\"gauge\":\"GO plug\",\"thread\":\"M8x1.25-6H\"}");
        for (int days : new int[] {-3, 20, 400}) {
            String mark = "G-" + (days + 10);
            crib("add", card.toString(), "--kind", "gauge", "--mark", mark);
            crib(
                    "log",
                    mark,
                    "calibrated",
                    "--passed",
                    "yes",
                    "--due",
                    today.plusDays(days).toString());
        }
        crib("add", card.toString(), "--kind", "gauge", "--mark", "G-NEVER");
        JsonNode due = json("list", "--due").path("taps");
        assertThat(due).extracting(row -> row.path("mark").asText()).containsExactly("G-7", "G-30");
        assertThat(due.get(0).path("due").path("days").asInt()).isEqualTo(-3);
        assertThat(due.get(1).path("due").path("when").asText()).isEqualTo("near");
        JsonNode all = json("due");
        assertThat(all.path("gauges")).hasSize(2);
        assertThat(all.path("gauges").get(0).path("gauge").asText()).isEqualTo("GO plug M8x1.25");
        assertThat(all.path("cautions"))
                .anySatisfy(caution -> assertThat(caution.path("code").asText()).isEqualTo("calibrationNotTold"));
        assertThat(crib("due").out()).contains("G-7").contains("-3");
    }

    @Test
    void aLongStoryIsShownInParts() throws IOException {
        crib("add", "M8x1.25-6H", "--mark", "T-1");
        StringBuilder table = new StringBuilder("mark,event,at,holes,ticket\n");
        for (int i = 0; i < 450; i++) {
            table.append("T-1,tapped,2026-05-01,1,r").append(i).append('\n');
        }
        Path file = folder.resolve("events.csv");
        Files.writeString(file, table);
        assertThat(json("import", file.toString()).path("added").asInt()).isEqualTo(450);
        JsonNode newest = json("show", "T-1");
        assertThat(newest.path("uses").path("holes").asInt()).isEqualTo(450);
        assertThat(newest.path("events")).hasSize(200);
        assertThat(newest.path("earlier").asInt()).isEqualTo(250);
        assertThat(crib("show", "T-1").out()).contains("... 250 earlier events: landfall crib show T-1 --before 251");
        assertThat(json("show", "T-1", "--before", "51").path("events")).hasSize(50);
        assertThat(crib("show", "T-1", "--before", "last").exit()).isEqualTo(Exit.REFUSED);
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
