// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String EXAMPLE = "../examples/job-bearing-block.csv";

    @TempDir
    private Path folder;

    private Run run(String... args) {
        String[] all = new String[args.length + 2];
        System.arraycopy(args, 0, all, 0, args.length);
        all[args.length] = "--store";
        all[args.length + 1] = folder.resolve("crib.db").toString();
        return Run.of(all);
    }

    private static JsonNode json(Run run) throws IOException {
        return JSON.readTree(run.out());
    }

    @BeforeEach
    void fill() {
        for (String[] tap : new String[][] {{"M8x1.25-6H", "T-8"}, {"M6x1", "T-6"}, {"1/4-20 UNC-2B", "T-25"}}) {
            assertThat(run("crib", "add", tap[0], "--mark", tap[1]).exit()).isEqualTo(Exit.DONE);
        }
    }

    private String added() throws IOException {
        Run run = run("job", "add", EXAMPLE, "--name", "Bearing block", "--by", "Ida", "--json");
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);
        return json(run).path("number").asText();
    }

    @Test
    void aJobIsPlannedKeptMarkedShownAndPrinted() throws IOException {
        String number = added();
        assertThat(number).matches("J0001-[A-Z0-9]");
        Run done = run("job", "done", number, "1", "--tap", "T-8", "--count", "5", "--by", "Ida", "--json");
        assertThat(json(done).path("holes").get(0).path("done").asInt()).isEqualTo(5);
        assertThat(json(done).path("done").get(0).path("tap").asText()).isEqualTo("T-8");
        JsonNode tap = json(run("crib", "show", "T-8", "--json"));
        assertThat(tap.path("uses").path("holes").asInt()).isEqualTo(5);
        assertThat(tap.path("events").get(0).path("fields").path("note").asText())
                .isEqualTo(number + " line 1");
        assertThat(json(run("job", "list", "--json"))
                        .path("jobs")
                        .get(0)
                        .path("done")
                        .asInt())
                .isEqualTo(5);
        JsonNode undone = json(run("job", "undo", number, "1", "--because", "wrong tap", "--json"));
        assertThat(undone.path("holes").get(0).path("done").asInt()).isZero();
        assertThat(run("job", "show", number).out()).contains("Bearing block", "drill 6.8 mm", "tap T-8");
        Path sheet = folder.resolve("card.pdf");
        assertThat(run("job", "card", number, "--sheet", sheet.toString(), "--paper", "letter")
                        .exit())
                .isEqualTo(Exit.DONE);
        assertThat(Files.readAllBytes(sheet)).startsWith("%PDF".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }

    @Test
    void aPlanKeepsNothingAndItsFiguresCarryTheirSteps() throws IOException {
        JsonNode plan = json(run("job", "plan", EXAMPLE, "--hour", "60 USD", "--tap-price", "18 USD", "--json"));
        assertThat(plan.path("number").isMissingNode()).isTrue();
        assertThat(plan.path("operations").get(0).path("kind").asText()).isEqualTo("gauges");
        assertThat(plan.path("time").path("steps").path("expected").asText()).isEqualTo("T");
        assertThat(plan.path("cost").path("all").path("expected").asDouble())
                .isGreaterThan(plan.path("cost").path("work").path("expected").asDouble());
        assertThat(plan.path("working").findValuesAsText("symbol")).contains("T", "K_w", "K_t", "K", "t_d1", "p_b8");
        assertThat(plan.path("cautions").findValuesAsText("code")).contains("estimatedTimes", "spoiltUntold");
        JsonNode onRecord = plan.path("holes").get(0).path("tap").path("onRecord");
        assertThat(onRecord.get(0).path("mark").asText()).isEqualTo("T-8");
        assertThat(onRecord.get(0).path("fit").asBoolean()).isTrue();
        assertThat(json(run("job", "list", "--json")).path("jobs")).isEmpty();
    }

    @Test
    void everyBadCellOfEveryLineIsToldAtOnce() throws IOException {
        Path table = folder.resolve("holes.csv");
        Files.writeString(table, """
                callout,material,depth,kind,count
                M8 by hand,C45,16,blind,4

                # a remark
                M8x1.25-6H,kryptonite,-3,sideways,0
                M8x1.25-6H,C45,16,blind,4,5
                """);
        Run run = run("job", "add", table.toString(), "--drive", "donkey", "--hour", "dear", "--json");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(json(run).path("refused"))
                .extracting(one ->
                        one.path("line").asInt() + " " + one.path("field").asText())
                .containsExactlyInAnyOrder(
                        "0 drive", "0 hour", "2 callout", "5 material", "5 depth", "5 kind", "5 count", "6 line");
        Run people = run("job", "plan", table.toString());
        assertThat(people.out()).isEmpty();
        assertThat(people.err()).contains("line 5, kind: \"sideways\" must be one of blind, through");
    }

    @Test
    void whatHasNoRouteIsToldWithItsLineToo() throws IOException {
        Path table = folder.resolve("holes.csv");
        Files.writeString(table, "callout;material;depth;kind;count\n\n1/4-18 NPT;C45;12;blind;1\nM8;C45;12;blind;1\n");
        Run run = run("job", "plan", table.toString(), "--json");
        assertThat(run.exit()).isEqualTo(Exit.REFUSED);
        assertThat(json(run).path("refused"))
                .extracting(one ->
                        one.path("line").asInt() + " " + one.path("field").asText())
                .containsExactly("3 callout");
    }

    @Test
    void unknownJobsAndTapsEndWithThreeAndMisreadNumbersWithTwo() throws IOException {
        String number = added();
        assertThat(run("job", "show", "J0009-" + "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ".charAt(0))
                        .exit())
                .isIn(Exit.REFUSED, Exit.NO_RECORD);
        assertThat(run("job", "show", landfall.history.JobNumber.numbered(9).text())
                        .exit())
                .isEqualTo(Exit.NO_RECORD);
        assertThat(run("job", "done", number, "1", "--tap", "NOBODY").exit()).isEqualTo(Exit.NO_RECORD);
        assertThat(run("job", "show", "seven").exit()).isEqualTo(Exit.REFUSED);
        assertThat(run("job", "done", number, "99", "--tap", "T-8").exit()).isEqualTo(Exit.REFUSED);
        assertThat(run("job", "done", number, "1").err()).contains("tap: \"\" is needed");
        assertThat(run("job", "card", number, "--paper", "a5").err())
                .contains("sheet: \"\" is needed", "must be a4 or letter");
    }

    @Test
    void jsonAndAShopsCardAreTakenToo() throws IOException {
        Path job = folder.resolve("job.json");
        Files.writeString(job, """
                {"name":"Lid","drive":"hand","holes":[
                 {"callout":"M6x1-6H","material":"304","depth":"9 mm","kind":"through","count":4,"note":"oil"}]}
                """);
        JsonNode plan = json(run("job", "plan", job.toString(), "--shop", "../examples/shop.json", "--json"));
        assertThat(plan.path("name").asText()).isEqualTo("Lid");
        assertThat(plan.path("holes").get(0).path("count").asInt()).isEqualTo(4);
        assertThat(plan.path("cautions").findValuesAsText("code"))
                .doesNotContain("driveAssumed", "drawersAssumed")
                .contains("startSquare");
        Files.writeString(job, "{\"holes\":[{\"callout\":\"M6\",\"colour\":\"red\"}]");
        assertThat(json(run("job", "plan", job.toString(), "--json"))
                        .path("refused")
                        .get(0)
                        .path("why")
                        .asText())
                .startsWith("is not JSON");
    }

    @Test
    void allOfAnExportReadsBackToTheSameCrib() throws IOException {
        String number = added();
        run("job", "done", number, "1", "--tap", "T-8", "--count", "5", "--by", "Ida");
        Path table = folder.resolve("out.csv");
        Path json = folder.resolve("out.json");
        JsonNode tables = json(run("crib", "export", table.toString(), "--json"));
        assertThat(tables.path("files")).hasSize(3);
        assertThat(run("crib", "export", json.toString()).out()).startsWith("3 things and 1 jobs are in");
        String shown = run("job", "show", number, "--json").out();
        for (List<String> files : List.of(
                List.of(json.toString()),
                List.of(
                        table.toString(),
                        folder.resolve("out.events.csv").toString(),
                        folder.resolve("out.jobs.csv").toString()))) {
            String other = folder.resolve("other-" + files.size() + ".db").toString();
            for (String file : files) {
                assertThat(Run.of("crib", "import", file, "--store", other).exit())
                        .isEqualTo(Exit.DONE);
            }
            assertThat(Run.of("job", "show", number, "--json", "--store", other).out())
                    .isEqualTo(shown);
        }
        assertThat(run("crib", "import", json.toString(), "--map", "a=mark").err())
                .contains("JSON has none");
    }
}
