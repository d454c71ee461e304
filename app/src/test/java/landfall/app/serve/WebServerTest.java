// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import landfall.app.asked.AskedPage;
import landfall.app.asked.AskedPages;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class WebServerTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final ObjectMapper JSON = new ObjectMapper();
    private static WebServer server;

    @BeforeAll
    static void start() {
        server = WebServer.start(Listen.anywhereOnThisMachine());
    }

    @AfterAll
    static void stop() {
        server.stop();
    }

    private static HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    private static HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(to(path));
    }

    private static HttpResponse<String> post(String path, String body) throws IOException, InterruptedException {
        return send(to(path).POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    @Test
    void everyAnswerSaysThatNothingIsLoadedFromElsewhere() throws Exception {
        for (String path : new String[] {"/", "/thread", "/grind", "/methods", "/nowhere", "/api/thread"}) {
            var headers = get(path).headers();
            assertThat(headers.firstValue("Content-Security-Policy").orElse("")).isEqualTo(Guard.POLICY);
            assertThat(headers.firstValue("X-Content-Type-Options")).contains("nosniff");
            assertThat(headers.firstValue("Server")).isEmpty();
        }
    }

    @Test
    void pagesLoadNothingFromOtherMachines() throws Exception {
        for (String path : new String[] {"/", "/thread?thread=M8x1.25-6H", "/grind", "/methods"}) {
            assertThat(get(path).body()).doesNotContainPattern("(src|href|action)=\"(https?:)?//");
        }
    }

    @Test
    void aPageThatIsNotThereSaysSoAndShowsTheWayBack() throws Exception {
        var reply = get("/nowhere");
        assertThat(reply.statusCode()).isEqualTo(404);
        assertThat(reply.body()).contains("There is no such page").contains("href=\"/\"");
        assertThat(get("/methods/nowhere").statusCode()).isEqualTo(404);
        assertThat(get("/assets/000000000000/landfall.css").statusCode()).isEqualTo(404);
    }

    @Test
    void filesThatPagesLoadMayBeKeptForEver() throws Exception {
        String page = get("/").body();
        String style = page.replaceAll("(?s).*href=\"(/assets/[^\"]*landfall.css)\".*", "$1");
        var reply = get(style);
        assertThat(reply.statusCode()).isEqualTo(200);
        assertThat(reply.headers().firstValue("Cache-Control").orElse("")).contains("immutable");
        assertThat(reply.headers().firstValue("Content-Type")).contains("text/css; charset=utf-8");
    }

    @Test
    void everyQuestionWithAPageOpensEmpty() throws Exception {
        for (AskedPage page : AskedPages.of(new Shell())) {
            assertThat(get(page.path()).statusCode()).as(page.path()).isEqualTo(200);
        }
        for (Place place : Place.values()) {
            assertThat(get(place.path()).statusCode()).as(place.path()).isEqualTo(200);
        }
    }

    @Test
    void headAnswersAsGetWithoutABody() throws Exception {
        var reply = send(to("/thread?thread=M8x1.25-6H").method("HEAD", HttpRequest.BodyPublishers.noBody()));
        assertThat(reply.statusCode()).isEqualTo(200);
        assertThat(reply.headers().firstValue("Content-Type")).contains("text/html;charset=utf-8");
        assertThat(reply.body()).isEmpty();
    }

    /** ISO 965-2:1998, M8 6H: pitch diameter 7.188 to 7.348 mm. */
    @Test
    void theQuestionsAnswerOverHttpWithTheDocumentOfTheCommandLine() throws Exception {
        var reply = get("/api/thread?thread=M8x1.25-6H");
        assertThat(reply.statusCode()).isEqualTo(200);
        assertThat(reply.headers().firstValue("Content-Type")).contains("application/json;charset=utf-8");
        JsonNode pitch = JSON.readTree(reply.body()).at("/internal/pitch");
        assertThat(pitch.get("min").asDouble()).isEqualTo(7.188);
        assertThat(pitch.get("max").asDouble()).isEqualTo(7.348);
        assertThat(post("/api/thread", "{\"thread\":\"M8x1.25-6H\"}").body()).isEqualTo(reply.body());
    }

    @Test
    void aRefusalOverHttpIs400WithEveryFinding() throws Exception {
        var reply = get("/api/thread?thread=M8x1.25-6Q&unit=inch");
        assertThat(reply.statusCode()).isEqualTo(400);
        JsonNode refused = JSON.readTree(reply.body()).get("refused");
        assertThat(refused).hasSize(2);
        assertThat(refused.findValuesAsText("field")).containsExactlyInAnyOrder("thread", "unit");
        assertThat(refused.findValuesAsText("mend")).allMatch(mend -> !mend.isBlank());
    }

    @Test
    void brokenJsonAndUnknownQuestionsAreRefusedInJson() throws Exception {
        assertThat(post("/api/thread", "{\"thread\":").statusCode()).isEqualTo(400);
        assertThat(JSON.readTree(post("/api/thread", "[1]").body()).has("refused"))
                .isTrue();
        var unknown = get("/api/thred");
        assertThat(unknown.statusCode()).isEqualTo(404);
        assertThat(unknown.body()).contains("did you mean thread?");
    }

    @Test
    void aFieldGivenTwiceWithDifferentTextsIsRefused() throws Exception {
        var reply = get("/api/thread?thread=M8x1.25-6H&thread=M10x1.5-6H");
        assertThat(reply.statusCode()).isEqualTo(400);
        assertThat(reply.body()).contains("is given more than once");
    }

    @Test
    void whatIsTypedIsShownAsTextAndNeverRun() throws Exception {
        var reply = get("/thread?thread=%3Cscript%3Ealert(1)%3C%2Fscript%3E%22%20onfocus=%22x");
        assertThat(reply.body()).doesNotContain("<script>alert").contains("&#34; onfocus=&#34;x");
    }

    @Test
    void aRequestThatIsTooLargeIsRefusedAndTheServerGoesOn() throws Exception {
        var reply = post("/api/grind", "{\"thread\":\"" + "x".repeat(300_000) + "\"}");
        assertThat(reply.statusCode()).isEqualTo(413);
        assertThat(get("/grind?thread=" + "x".repeat(40_000)).statusCode()).isBetween(400, 499);
        assertThat(get("/").statusCode()).isEqualTo(200);
    }

    @Test
    void anotherNameForThisMachineIsRefused() throws Exception {
        assertThat(raw("GET / HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 403");
        assertThat(raw("GET / HTTP/1.1\r\nHost: localhost:" + server.port() + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 200");
    }

    @Test
    void aFormOfAnotherSiteIsRefused() throws Exception {
        var reply = send(to("/grind/open")
                .header("Origin", "http://evil.example")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("thread=M8")));
        assertThat(reply.statusCode()).isEqualTo(403);
    }

    @Test
    void aCardFileThatHoldsAFieldOfTheOtherCardIsRefused() throws Exception {
        String tap = Files.readString(Path.of("../examples/tap-m8.json"));
        assertThat(open(tap).statusCode()).isEqualTo(303);
        var reply = open(tap.replaceFirst("\\{", "{\"cam\":{\"lobes\":3},"));
        assertThat(reply.statusCode()).isEqualTo(400);
        assertThat(reply.body()).contains("is not a field of the tap card but of a fixture card");
    }

    private static HttpResponse<String> open(String card) throws Exception {
        String body = "--part\r\nContent-Disposition: form-data; name=\"tap\"; filename=\"tap.json\"\r\n"
                + "Content-Type: application/json\r\n\r\n" + card + "\r\n--part--\r\n";
        return send(to("/grind/open")
                .header("Content-Type", "multipart/form-data; boundary=part")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    @Test
    void anAddressThatIsTakenIsToldApartFromAFault() {
        assertThatThrownBy(() -> WebServer.start(new Listen(Listen.LOOPBACK, server.port())))
                .isInstanceOf(WebServer.PortTaken.class);
    }

    private static String raw(String request) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", server.port())) {
            OutputStream out = socket.getOutputStream();
            out.write(request.getBytes(StandardCharsets.US_ASCII));
            out.flush();
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
