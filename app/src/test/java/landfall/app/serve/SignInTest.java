// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.HttpCookie;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import landfall.history.Mark;
import landfall.store.Store;
import landfall.store.crib.Crib;
import landfall.store.people.PersonName;
import landfall.store.people.Role;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the sign-in must withstand; {@code docs/people.md} lists it. */
class SignInTest {
    private Crew crew = Crew.onTheNetwork();

    @BeforeEach
    void aTap() throws Exception {
        Crew.Browser keeper = crew.as(Role.KEEP);
        var added = keeper.post("/crib", Map.of("thread", "M8x1.25", "mark", "T-1", "token", keeper.token()));
        assertThat(added.statusCode()).isEqualTo(303);
    }

    @AfterEach
    void stop() {
        crew.close();
    }

    private Map<String, String> holes(String token) {
        Map<String, String> fields = new HashMap<>();
        fields.put("event", "tapped");
        fields.put("holes", "40");
        fields.put("ticket", UUID.randomUUID().toString());
        fields.put("token", token);
        return fields;
    }

    @Test
    void theCookieIsForThisServerAloneAndForNoScript() throws Exception {
        String cookie = crew.nobody()
                .signIn("use", Crew.PASSWORD)
                .headers()
                .firstValue("Set-Cookie")
                .orElse("");
        assertThat(cookie)
                .startsWith("landfall=")
                .contains("HttpOnly", "SameSite=Strict", "Path=/")
                .doesNotContain("Domain");
        assertThat(cookie)
                .as("over plain HTTP a browser would not send it back")
                .doesNotContain("Secure");
    }

    @Test
    void aTokenThatWasPutIntoTheBrowserBeforeIsWorthNothing() throws Exception {
        Crew.Browser victim = crew.nobody();
        HttpCookie planted = new HttpCookie("landfall", "planted-by-another");
        planted.setPath("/");
        planted.setVersion(0);
        planted.setDomain("127.0.0.1");
        victim.cookies.getCookieStore().add(URI.create("http://127.0.0.1:" + crew.server.port()), planted);
        assertThat(victim.get("/crib").statusCode()).isEqualTo(401);
        victim.signIn("use", Crew.PASSWORD);
        assertThat(victim.cookie()).isPresent().get().isNotEqualTo("planted-by-another");
        String first = victim.cookie().orElseThrow();
        victim.signIn("use", Crew.PASSWORD);
        assertThat(victim.cookie().orElseThrow()).isNotEqualTo(first);
        assertThat(with(first).get("/crib").statusCode()).as("the one before").isEqualTo(401);
    }

    private Crew.Browser with(String token) {
        Crew.Browser browser = crew.nobody();
        HttpCookie cookie = new HttpCookie("landfall", token);
        cookie.setPath("/");
        cookie.setVersion(0);
        cookie.setDomain("127.0.0.1");
        browser.cookies.getCookieStore().add(URI.create("http://127.0.0.1:" + crew.server.port()), cookie);
        return browser;
    }

    @Test
    void anUnknownNameAWrongPasswordAndWhoWasShutOutGetTheSameAnswer() throws Exception {
        crew.people(people -> people.close(new PersonName("look")).orThrow());
        List<String> bodies = new ArrayList<>();
        for (String name : List.of("look", "use", "ghost", "no name at all")) {
            String password = name.equals("look") ? Crew.PASSWORD : "five wrong words of nobody";
            HttpResponse<String> reply = crew.nobody().signIn(name, password);
            assertThat(reply.statusCode()).as(name).isEqualTo(401);
            assertThat(reply.headers().firstValue("Set-Cookie")).isEmpty();
            bodies.add(reply.body().replace("value=\"" + name + "\"", "value=\"NAME\""));
        }
        assertThat(bodies.stream().distinct()).hasSize(1);
    }

    @Test
    void afterTenTriesANameWaitsAndIsToldHowLongWhetherItIsThereOrNot() throws Exception {
        for (String name : List.of("use", "ghost")) {
            for (int i = 0; i < 10; i++) {
                assertThat(crew.nobody()
                                .signIn(name, "wrong words again and again")
                                .statusCode())
                        .isEqualTo(401);
            }
            HttpResponse<String> reply = crew.nobody().signIn(name, Crew.PASSWORD);
            assertThat(reply.statusCode()).isEqualTo(429);
            assertThat(reply.body()).contains("wait 15 minutes, then try again");
            assertThat(Long.parseLong(reply.headers().firstValue("Retry-After").orElse("0")))
                    .isBetween(800L, 901L);
        }
        assertThat(crew.nobody().signIn("look", Crew.PASSWORD).statusCode()).isEqualTo(303);
    }

    @Test
    void aFormWithoutItsTokenOrWithThatOfAnotherOrFromAnotherSiteIsRefused() throws Exception {
        Crew.Browser user = crew.as(Role.USE);
        String own = user.token();
        assertThat(user.post("/crib/T-1", holes("")).statusCode()).isEqualTo(403);
        assertThat(user.post("/crib/T-1", holes(crew.as(Role.KEEP).token())).statusCode())
                .isEqualTo(403);
        for (String origin :
                List.of("http://evil.example", "null", "http://127.0.0.1:1", "http://127.0.0.1.evil.example")) {
            assertThat(user.send(user.form("/crib/T-1", holes(own)).header("Origin", origin))
                            .statusCode())
                    .as(origin)
                    .isEqualTo(403);
        }
        assertThat(user.get("/crib/T-1").body()).doesNotContain("holes 40");
        String origin = "http://127.0.0.1:" + crew.server.port();
        assertThat(user.send(user.form("/crib/T-1", holes(own)).header("Origin", origin))
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void afterSigningInOnlyOwnAddressesAreGoneOnTo() throws Exception {
        Map<String, String> places = new HashMap<>();
        places.put("/crib/T-1?event=tapped", "/crib/T-1?event=tapped");
        for (String bad : List.of(
                "//evil.example",
                "https://evil.example/",
                "/\\evil.example",
                "\\\\evil.example",
                "/\t/evil.example",
                "/crib\r\nSet-Cookie: a=b",
                "javascript:alert(1)",
                "crib",
                "")) {
            places.put(bad, "/crib");
        }
        for (Map.Entry<String, String> place : places.entrySet()) {
            var reply = crew.nobody()
                    .post("/sign-in", Map.of("name", "use", "password", Crew.PASSWORD, "to", place.getKey()));
            assertThat(reply.headers().firstValue("Location"))
                    .as(place.getKey())
                    .contains(place.getValue());
            assertThat(reply.headers().allValues("Set-Cookie")).hasSize(1);
        }
    }

    @Test
    void aRoleThatWasChangedCountsWithTheNextRequest() throws Exception {
        Crew.Browser user = crew.as(Role.USE);
        String token = user.token();
        assertThat(user.post("/crib/T-1", holes(token)).statusCode()).isEqualTo(303);
        crew.people(people -> people.role(new PersonName("use"), Role.LOOK).orThrow());
        assertThat(user.post("/crib/T-1", holes(token)).statusCode()).isEqualTo(403);
        assertThat(user.get("/crib/T-1").statusCode()).isEqualTo(200);
        crew.people(people -> people.close(new PersonName("use")).orThrow());
        assertThat(user.get("/crib/T-1").statusCode()).isEqualTo(401);
    }

    @Test
    void anEventIsSignedByItsPersonAndByNobodyElse() throws Exception {
        Crew.Browser user = crew.as(Role.USE);
        Map<String, String> forged = holes(user.token());
        forged.put("by", "keep");
        HttpResponse<String> refused = user.post("/crib/T-1", forged);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("is not who has signed in here: that is use");
        assertThat(refused.body()).as("what was typed").contains("name=\"holes\" value=\"40\"");
        assertThat(user.get("/crib/T-1").body()).doesNotContain("keep: <b>tapped");
        Map<String, String> corrected = holes(user.token());
        corrected.put("event", "corrected");
        assertThat(user.post("/crib/T-1", corrected).statusCode()).isEqualTo(400);
        user.post("/crib/T-1", holes(user.token()));
        assertThat(user.get("/crib/T-1").body()).contains("use: <b>tapped</b> holes 40");
    }

    /** The clock of a phone may be wrong; what is told is how long the entry waited. */
    @Test
    void anEntryThatWaitedIsOfWhenItWasTyped() throws Exception {
        Crew.Browser user = crew.as(Role.USE);
        Map<String, String> fields = holes(user.token());
        fields.put("waited", "7200");
        Instant before = Instant.now().minusSeconds(7200).truncatedTo(ChronoUnit.MILLIS);
        assertThat(user.send(user.form("/crib/T-1", fields).header("X-Landfall-Part", "entry"))
                        .body())
                .isEqualTo("{\"mark\":\"T-1\",\"seq\":1,\"page\":\"/crib/T-1?done=tapped\"}");
        Instant after = Instant.now().minusSeconds(7200);
        try (Store store = Store.open(crew.address, Clock.systemUTC())) {
            assertThat(new Crib(store)
                            .find(new Mark("T-1"))
                            .orElseThrow()
                            .events()
                            .get(0)
                            .event()
                            .at())
                    .isBetween(before, after);
        }
        for (String bad : List.of("-5", "soon", "9999999")) {
            fields.put("waited", bad);
            fields.put("ticket", UUID.randomUUID().toString());
            var reply = user.send(user.form("/crib/T-1", fields).header("X-Landfall-Part", "entry"));
            assertThat(reply.statusCode()).as(bad).isEqualTo(400);
            assertThat(reply.body()).contains("\"field\" : \"waited\"");
        }
        var asked = crew.nobody().send(crew.nobody().form("/crib/T-1", fields).header("X-Landfall-Part", "entry"));
        assertThat(asked.statusCode()).isEqualTo(401);
        assertThat(asked.body()).contains("\"refused\" : [");
    }

    @Test
    void signingOutEndsThisBrowserAndEverywhereEndsAll() throws Exception {
        Crew.Browser phone = crew.as(Role.USE);
        Crew.Browser bench = crew.as(Role.USE);
        String stolen = phone.cookie().orElseThrow();
        assertThat(phone.post("/sign-out", Map.of("token", phone.token())).statusCode())
                .isEqualTo(303);
        assertThat(with(stolen).get("/crib").statusCode()).isEqualTo(401);
        assertThat(bench.get("/crib").statusCode()).isEqualTo(200);
        phone.signIn("use", Crew.PASSWORD);
        phone.post("/sign-out/everywhere", Map.of("token", phone.token()));
        assertThat(bench.get("/crib").statusCode()).isEqualTo(401);
    }

    @Test
    void aNewPasswordNeedsTheOldOneAndEndsTheOtherBrowsers() throws Exception {
        Crew.Browser phone = crew.as(Role.USE);
        Crew.Browser bench = crew.as(Role.USE);
        String next = "another four words then";
        assertThat(phone.post(
                                "/me/password",
                                Map.of("password-now", "not it", "password", next, "token", phone.token()))
                        .statusCode())
                .isEqualTo(400);
        assertThat(phone.post(
                                "/me/password",
                                Map.of("password-now", Crew.PASSWORD, "password", next, "token", phone.token()))
                        .statusCode())
                .isEqualTo(303);
        assertThat(phone.get("/crib").statusCode()).isEqualTo(200);
        assertThat(bench.get("/crib").statusCode()).isEqualTo(401);
        assertThat(bench.signIn("use", next).statusCode()).isEqualTo(303);
    }

    @Test
    void aServerThatStartsAgainKnowsWhoHadSignedIn() throws Exception {
        String token = crew.as(Role.USE).cookie().orElseThrow();
        crew.close();
        crew = Crew.again(crew);
        assertThat(with(token).get("/crib/T-1").statusCode()).isEqualTo(200);
    }

    @Test
    void whatWasTypedWhenTheSignInHadEndedIsCarriedAlong() throws Exception {
        Crew.Browser user = crew.nobody();
        Map<String, String> typed = holes("of an earlier sign-in");
        typed.put("note", "tooth 2 is \"high\" & dull");
        HttpResponse<String> asked = user.post("/crib/T-1", typed);
        assertThat(asked.statusCode()).isEqualTo(401);
        assertThat(asked.body())
                .contains("name=\"kept.field.holes\" value=\"40\"", "name=\"kept.path\" value=\"/crib/T-1\"")
                .doesNotContain("of an earlier sign-in");
        Map<String, String> signIn = new HashMap<>();
        typed.forEach((name, text) -> signIn.put("kept.field." + name, text));
        signIn.putAll(Map.of("kept.path", "/crib/T-1", "name", "use", "password", Crew.PASSWORD, "to", "/crib/T-1"));
        HttpResponse<String> shown = user.post("/sign-in", signIn);
        assertThat(shown.statusCode()).isEqualTo(200);
        assertThat(shown.body())
                .contains("This was not sent yet", "action=\"/crib/T-1\"")
                .contains(user.token());
        typed.put("token", user.token());
        assertThat(user.post("/crib/T-1", typed).statusCode()).isEqualTo(303);
        assertThat(user.get("/crib/T-1").body()).contains("holes 40");
    }

    @Test
    void noSecretReachesStandardErrorOrAPageWhenTheStoreFails() throws Exception {
        Crew.Browser user = crew.as(Role.USE);
        String token = user.cookie().orElseThrow();
        try (var connection = java.sql.DriverManager.getConnection("jdbc:sqlite:" + crew.address.words());
                var statement = connection.createStatement()) {
            statement.execute("alter table person rename to person_gone");
        }
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream before = System.err;
        System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
        List<HttpResponse<String>> replies = new ArrayList<>();
        try {
            replies.add(user.get("/crib"));
            replies.add(crew.nobody().signIn("use", Crew.PASSWORD));
            replies.add(crew.nobody().signIn("use", "x".repeat(300_000)));
            replies.add(
                    user.post("/me/password", Map.of("password-now", Crew.PASSWORD, "password", "new secret words")));
        } finally {
            System.setErr(before);
        }
        assertThat(replies).allMatch(reply -> reply.statusCode() >= 400);
        assertThat(said.toString(StandardCharsets.UTF_8)).contains("landfall: store");
        List<String> all = new ArrayList<>(List.of(said.toString(StandardCharsets.UTF_8)));
        replies.forEach(reply -> all.add(reply.body()));
        assertThat(all)
                .allMatch(text -> !text.contains(Crew.PASSWORD)
                        && !text.contains(token)
                        && !text.contains("$argon2")
                        && !text.contains("new secret words"));
        assertThat(crew.nobody().get("/thread?thread=M8").statusCode())
                .as("what computes goes on")
                .isEqualTo(200);
    }
}
