// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.regex.Pattern;
import landfall.app.people.Entrance;
import landfall.store.people.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The page where a day begins, on a server with records. */
class TodayTest {
    private static Crew crew;
    private static String empty;
    private static Crew.Browser keeper;

    @BeforeAll
    static void start() throws Exception {
        crew = Crew.onTheNetwork();
        keeper = crew.as(Role.KEEP);
        empty = keeper.get("/").body();
        String card = Files.readString(Path.of("..", "examples", "tap-m8.json"));
        post("/api/crib", "{\"mark\":\"A-1\",\"card\":" + card + "}");
        post(
                "/api/crib",
                "{\"kind\":\"gauge\",\"mark\":\"G-1\",\"card\":{\"gauge\":\"GO plug\",\"thread\":\"M8x1.25-6H\"}}");
        post(
                "/api/crib/G-1",
                "{\"event\":\"calibrated\",\"passed\":\"yes\",\"due\":\"%s\"}"
                        .formatted(LocalDate.now().minusDays(3)));
        post(
                "/api/jobs",
                "{\"name\":\"cover plate\",\"holes\":[{\"callout\":\"M8x1.25-6H\",\"material\":\"C45\","
                        + "\"depth\":\"16 mm\",\"kind\":\"through\",\"count\":\"4\"}]}");
    }

    @AfterAll
    static void stop() {
        crew.close();
    }

    private static void post(String path, String body) throws Exception {
        HttpResponse<String> reply = keeper.send(keeper.to(path)
                .header("Content-Type", "application/json")
                .header(Entrance.TOKEN, keeper.token())
                .POST(HttpRequest.BodyPublishers.ofString(body)));
        assertThat(reply.statusCode()).as(reply.body()).isEqualTo(201);
    }

    private static String goes(Crew.Browser browser, String typed) throws Exception {
        HttpResponse<String> reply = browser.get("/go?typed=" + typed);
        assertThat(reply.statusCode()).isEqualTo(303);
        return reply.headers().firstValue("Location").orElse("");
    }

    @Test
    void anEmptyCribSaysWhatToDo() {
        assertThat(empty).contains("Nothing on record yet", "Once round, with an invented shop");
    }

    @Test
    void whatIsDueAndWhichJobsHaveHolesLeftStandsOnThePage() throws Exception {
        String page = keeper.get("/").body();
        assertThat(page)
                .contains("href=\"/crib/G-1\"", "cover plate", "0 of 4 holes done")
                .doesNotContain("Nothing on record yet");
        assertThat(crew.nobody().get("/").body())
                .contains("Once round, with an invented shop")
                .doesNotContain("G-1", "cover plate", "Nothing on record yet");
    }

    @Test
    void theBoxKnowsMarksNumbersAndLabels() throws Exception {
        assertThat(goes(keeper, "a-1")).endsWith("/crib/A-1");
        String number = keeper.get("/").body();
        var job = Pattern.compile("href=\"(/job/([^\"]+))\"").matcher(number);
        assertThat(job.find()).isTrue();
        assertThat(goes(keeper, job.group(2))).endsWith(job.group(1));
        assertThat(goes(keeper, "http%3A%2F%2F192.0.2.1%3A7317%2Fcrib%2FA-1")).endsWith("/crib/A-1");
        assertThat(goes(keeper, "M8x1.25-6H")).endsWith("/thread?thread=M8x1.25-6H");
        assertThat(goes(keeper, "Z-99")).contains("/thread?thread=Z-99");
    }

    /** Whoever has not signed in does not learn which marks there are. */
    @Test
    void nobodyLearnsOfMarks() throws Exception {
        assertThat(goes(crew.nobody(), "a-1")).contains("/thread?thread=");
    }

    @Test
    void eachStepOfTheTourAnswers() throws Exception {
        String page = crew.nobody().get("/").body();
        String tour = page.substring(page.indexOf("class=\"waits tour\""));
        var step = Pattern.compile("href=\"([^\"]+)\"").matcher(tour.substring(0, tour.indexOf("</ol>")));
        int steps = 0;
        while (step.find()) {
            steps++;
            HttpResponse<String> reply = crew.nobody().get(step.group(1).replace("&amp;", "&"));
            assertThat(reply.statusCode()).isEqualTo(200);
            assertThat(reply.body()).contains("1/2-13 UNC").doesNotContain("class=\"refused\"");
        }
        assertThat(steps).isEqualTo(3);
    }
}
