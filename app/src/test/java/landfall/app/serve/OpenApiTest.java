// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.parser.OpenAPIV3Parser;
import io.swagger.v3.parser.core.models.ParseOptions;
import io.swagger.v3.parser.core.models.SwaggerParseResult;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import landfall.app.crib.CribDoor;
import landfall.app.people.Entrance;
import landfall.app.people.OwnPage;
import landfall.app.people.SignInPage;
import landfall.app.question.Questions;
import landfall.app.shell.Shell;
import landfall.app.spread.Runs;
import landfall.cards.ask.Question;
import landfall.store.people.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the server says of its HTTP interface, held against what it does. */
class OpenApiTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static Crew crew;
    private static JsonNode document;

    @BeforeAll
    static void start() throws Exception {
        crew = Crew.onTheNetwork();
        HttpResponse<String> reply = crew.nobody().get("/api");
        assertThat(reply.statusCode()).isEqualTo(200);
        document = JSON.readTree(reply.body());
    }

    @AfterAll
    static void stop() {
        crew.close();
    }

    /** By a reader of others. */
    @Test
    void theDocumentIsOpenApi() throws Exception {
        ParseOptions options = new ParseOptions();
        options.setResolve(true);
        SwaggerParseResult read = new OpenAPIV3Parser().readContents(document.toString(), null, options);
        assertThat(read.getMessages()).isEmpty();
        OpenAPI api = read.getOpenAPI();
        assertThat(api.getOpenapi()).isEqualTo("3.1.0");
        assertThat(api.getPaths()).hasSameSizeAs(document.get("paths"));
        assertThat(api.getPaths().get("/api/grind").getGet().getParameters())
                .hasSameSizeAs(Questions.of("grind").orElseThrow().form().fields());
    }

    @Test
    void itHoldsEveryAddressOfTheServerWithItsRoleAndNoOther() {
        Shell shell = new Shell();
        CribDoor door = new CribDoor(crew.address, Clock.systemUTC());
        Entrance entrance = new Entrance(door, false);
        SignInPage signIn = new SignInPage(shell, entrance, ctx -> "");
        Set<String> served = new TreeSet<>();
        for (Route route : Routes.of(
                        shell,
                        door,
                        new Runs(Path.of("target", "what-if")),
                        signIn,
                        new OwnPage(shell, entrance, signIn))
                .routes()) {
            String role = route.role() == null ? "" : " " + route.role().word();
            if (route.path().equals("/api/{noun}") && !route.method().name().equals("HEAD")) {
                for (Question question : Questions.all()) {
                    served.add(route.method() + " /api/" + question.noun());
                }
            } else if (route.path().startsWith("/api/")
                    && !route.method().name().equals("HEAD")) {
                served.add(route.method() + " " + route.path() + role);
            }
        }
        Set<String> told = new TreeSet<>();
        document.get("paths")
                .properties()
                .forEach(path -> path.getValue().properties().forEach(method -> {
                    JsonNode role = method.getValue().path("x-role");
                    told.add(method.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey()
                            + (role.isMissingNode() ? "" : " " + role.asText()));
                }));
        assertThat(told).isEqualTo(served);
    }

    @ParameterizedTest
    @CsvSource({
        "thread,'{thread:\"1/2-13 UNC\"}'",
        "hole,'{thread:\"M8x1.25-6H\",depth:\"16 mm\",material:\"C45\"}'",
        "tap,'{thread:\"1/4-20\",material:\"304\",depth:\".5\",blind:\"yes\"}'",
        "gauge,'{thread:\"1/2-13\",wire:\".050\",over:\".53352\"}'",
        "identify,'{major:\"0.2545\",tpi:\"20\",flutes:\"4\"}'",
        "marking,'{marking:\"1/4-20 UNC GH3 HSS\"}'",
        "why,'{symptom:\"oversize\"}'",
        "broken,'{thread:\"M6x1\"}'"
    })
    void questionsAnswerInTheShapeThatIsTold(String noun, String fields) throws Exception {
        JsonNode body = JSON.readTree(
                fields.replaceAll("\\{thread:'(.*)'}", "{thread:\"$1\"}").replaceAll("([{,])(\\w+):", "$1\"$2\":"));
        HttpResponse<String> posted = post(crew.nobody(), "/api/" + noun, body.toString(), "");
        assertThat(holds("/api/" + noun, "post", posted)).as(posted.body()).isEmpty();
        StringBuilder query = new StringBuilder("/api/" + noun + "?");
        body.properties()
                .forEach(field -> query.append(field.getKey())
                        .append('=')
                        .append(URLEncoder.encode(field.getValue().asText(), StandardCharsets.UTF_8))
                        .append('&'));
        HttpResponse<String> got = crew.nobody().get(query.toString());
        assertThat(got.body()).isEqualTo(posted.body());
        assertThat(posted.statusCode()).as(posted.body()).isEqualTo(200);
    }

    @Test
    void refusalsHoldToTheirShapeToo() throws Exception {
        HttpResponse<String> refused = crew.nobody().get("/api/grind?thread=M8x1.25-6Q");
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(holds("/api/grind", "get", refused)).isEmpty();
        HttpResponse<String> out = crew.nobody().get("/api/crib");
        assertThat(out.statusCode()).isEqualTo(401);
        assertThat(holds("/api/crib", "get", out)).isEmpty();
    }

    @Test
    void anotherProgramKeepsTheCribByWhatIsTold() throws Exception {
        Crew.Browser keeper = crew.as(Role.KEEP);
        String card = Files.readString(Path.of("..", "examples", "tap-m8.json"));
        String token = token(keeper);
        HttpResponse<String> without =
                post(keeper, "/api/crib", "{\"mark\":\"A-1\",\"card\":" + card + "}", "0123456789abcdef");
        assertThat(without.statusCode()).isEqualTo(403);
        assertThat(holds("/api/crib", "post", without)).isEmpty();
        assertThat(holds("/api/crib/{mark}", "get", keeper.get("/api/crib/A-1")))
                .isEmpty();
        assertThat(keeper.get("/api/crib/A-1").statusCode()).isEqualTo(404);

        does(keeper, "/api/crib", "{\"mark\":\"A-1\",\"card\":" + card + "}", 201);
        HttpResponse<String> again = post(keeper, "/api/crib", "{\"mark\":\"A-1\",\"card\":" + card + "}", token);
        assertThat(again.statusCode()).isEqualTo(400);
        HttpResponse<String> tapped = tells(
                keeper,
                "/api/crib/A-1",
                "{\"event\":\"tapped\",\"holes\":40,\"material\":\"C45\",\"depth\":\"16 mm\"}",
                201,
                "/api/crib/{mark}");
        assertThat(JSON.readTree(tapped.body()).at("/event/by").asText()).isEqualTo("keep");
        HttpResponse<String> shown = gets(keeper, "/api/crib/A-1", "/api/crib/{mark}");
        assertThat(JSON.readTree(shown.body()).at("/uses/holes").asInt()).isEqualTo(40);
        gets(keeper, "/api/crib", "/api/crib");
        gets(keeper, "/api/crib?due=yes", "/api/crib");
        gets(keeper, "/api/due", "/api/due");
        gets(keeper, "/api/due/A-1", "/api/due/{mark}");
        gets(keeper, "/api/due/A-1?holes=20", "/api/due/{mark}");
        gets(keeper, "/api/due/A-1?holes=20&price=24.50+EUR&sharpening=6+EUR", "/api/due/{mark}");
        HttpResponse<String> bad = post(keeper, "/api/crib/A-1", "{\"event\":\"tapt\",\"holes\":-4}", token);
        assertThat(bad.statusCode()).isEqualTo(400);
        assertThat(bad.body()).contains("tapped");
    }

    @Test
    void anotherProgramRunsAJobByWhatIsTold() throws Exception {
        Crew.Browser keeper = crew.as(Role.KEEP);
        String card = Files.readString(Path.of("..", "examples", "tap-m8.json"));
        does(keeper, "/api/crib", "{\"mark\":\"J-1\",\"card\":" + card + "}", 201);
        String job = "{\"name\":\"cover plate\",\"holes\":[{\"callout\":\"M8x1.25-6H\",\"material\":\"C45\","
                + "\"depth\":\"16 mm\",\"kind\":\"through\",\"count\":\"4\"}]}";
        HttpResponse<String> planned = tells(keeper, "/api/jobs/plan", job, 200, "/api/jobs/plan");
        assertThat(JSON.readTree(planned.body()).has("number")).isFalse();
        String number = JSON.readTree(does(keeper, "/api/jobs", job, 201).body())
                .get("number")
                .asText();
        gets(keeper, "/api/jobs", "/api/jobs");
        String at = "/api/jobs/" + number;
        tells(keeper, at + "/done", "{\"line\":1,\"tap\":\"J-1\"}", 200, "/api/jobs/{number}/done");
        JsonNode done = JSON.readTree(gets(keeper, at, "/api/jobs/{number}").body());
        assertThat(done.get("done")).hasSize(1);
        String back = "{\"line\":1,\"because\":\"wrong line\"}";
        tells(keeper, at + "/take-back", back, 200, "/api/jobs/{number}/take-back");
        HttpResponse<String> bad = post(keeper, "/api/jobs/plan", "{\"holes\":[{\"callout\":\"M8\"}]}", token(keeper));
        assertThat(bad.statusCode()).isEqualTo(400);
        assertThat(holds("/api/jobs/plan", "post", bad)).isEmpty();
    }

    private static HttpResponse<String> does(Crew.Browser browser, String path, String body, int status)
            throws Exception {
        return tells(browser, path, body, status, path);
    }

    private static HttpResponse<String> tells(Crew.Browser browser, String path, String body, int status, String told)
            throws Exception {
        HttpResponse<String> reply = post(browser, path, body, token(browser));
        assertThat(reply.statusCode()).as(path + " " + reply.body()).isEqualTo(status);
        assertThat(holds(told, "post", reply)).as(path + " " + reply.body()).isEmpty();
        return reply;
    }

    private static HttpResponse<String> gets(Crew.Browser browser, String path, String told) throws Exception {
        HttpResponse<String> reply = browser.get(path);
        assertThat(reply.statusCode()).as(path + " " + reply.body()).isEqualTo(200);
        assertThat(holds(told, "get", reply)).as(path + " " + reply.body()).isEmpty();
        return reply;
    }

    private static String token(Crew.Browser browser) throws Exception {
        HttpResponse<String> me = browser.get("/api/me");
        assertThat(holds("/api/me", "get", me)).isEmpty();
        return JSON.readTree(me.body()).get("token").asText();
    }

    private static HttpResponse<String> post(Crew.Browser browser, String path, String body, String token)
            throws IOException, InterruptedException {
        return browser.send(browser.to(path)
                .header("Content-Type", "application/json")
                .header(Entrance.TOKEN, token)
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    /** What of a reply is not as the document tells for that status; nothing where it holds. */
    private static Set<ValidationMessage> holds(String path, String method, HttpResponse<String> reply)
            throws IOException {
        JsonNode schema = document.get("paths")
                .path(path)
                .path(method)
                .path("responses")
                .path(String.valueOf(reply.statusCode()))
                .at("/content/application~1json/schema");
        assertThat(schema.isMissingNode()).as(path + " " + reply.statusCode()).isFalse();
        ObjectNode whole = schema.deepCopy();
        whole.set("components", document.get("components"));
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(whole)
                .validate(JSON.readTree(reply.body()));
    }
}
