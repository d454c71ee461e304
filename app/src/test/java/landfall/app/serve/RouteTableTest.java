// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import landfall.app.crib.CribDoor;
import landfall.app.people.Entrance;
import landfall.app.people.OwnPage;
import landfall.app.people.SignInPage;
import landfall.app.shell.Shell;
import landfall.app.spread.Runs;
import landfall.store.people.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every address, asked by everybody, by every method. */
class RouteTableTest {
    private static final List<String> METHODS =
            List.of("GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS", "PROPFIND");
    /** They end the sign-in that the walk goes by; each has a test of its own in {@code SignInTest}. */
    private static final Set<String> WAYS_OUT = Set.of("/sign-out", "/sign-out/everywhere");

    private static List<Route> table;
    private static Crew crew;

    @BeforeAll
    static void start() {
        crew = Crew.onTheNetwork();
        Shell shell = new Shell();
        CribDoor door = new CribDoor(crew.address, Clock.systemUTC());
        Entrance entrance = new Entrance(door, false);
        SignInPage signIn = new SignInPage(shell, entrance, ctx -> "");
        table = Routes.of(
                        shell,
                        door,
                        new Runs(Path.of("target", "what-if")),
                        signIn,
                        new OwnPage(shell, entrance, signIn))
                .routes();
    }

    @AfterAll
    static void stop() {
        crew.close();
    }

    @Test
    void theServerKnowsNoAddressThatIsNotInTheTable() {
        Set<String> served = crew.server.endpoints().stream()
                .map(endpoint -> endpoint.method + " " + endpoint.path)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(served)
                .hasSizeGreaterThan(40)
                .containsExactlyInAnyOrderElementsOf(table.stream()
                        .map(route -> route.method() + " " + route.path())
                        .toList());
    }

    @Test
    void everyAddressOpensByEveryMethodToThoseWhoHaveItsRoleAndToNobodyElse() throws Exception {
        Map<String, Crew.Browser> people = new LinkedHashMap<>();
        people.put("nobody", crew.nobody());
        for (Role role : Role.values()) {
            people.put(role.word(), crew.as(role));
        }
        List<String> wrong = new ArrayList<>();
        int asked = 0;
        for (Map.Entry<String, Crew.Browser> person : people.entrySet()) {
            for (String path : paths()) {
                for (String method : METHODS) {
                    asked++;
                    int status = ask(person.getValue(), method, path);
                    if (!isRight(person.getKey(), method, path, status)) {
                        wrong.add(person.getKey() + " " + method + " " + path + " " + status);
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(asked).isEqualTo(people.size() * paths().size() * METHODS.size());
    }

    /** The address itself, or the one with a name in it that takes it where it has no such method of its own. */
    private static Optional<Route> route(String method, String path) {
        String real = path.replaceAll("\\{[^}]*}", "T-1");
        List<Route> all = table.stream()
                .filter(route -> route.method().name().equals(method))
                .toList();
        return all.stream()
                .filter(route -> route.path().equals(path))
                .findFirst()
                .or(() -> all.stream()
                        .filter(route -> real.matches(route.path().replaceAll("\\{[^}]*}", "[^/]+")))
                        .findFirst());
    }

    /** 401 asks for a sign-in, 403 says that the role does not do; whatever else is the handler's own answer. */
    private static boolean isRight(String who, String method, String path, int status) {
        return route(method, path)
                .map(route -> {
                    Role role = route.role();
                    if (role == null) {
                        return status < 500 && status != 403;
                    }
                    if (who.equals("nobody")) {
                        return status == 401;
                    }
                    boolean may = Role.read("role", who).orThrow().includes(role);
                    return may ? status < 500 && status != 401 && status != 403 : status == 403;
                })
                .orElse(status == 404 || status == 405);
    }

    private static Set<String> paths() {
        return table.stream()
                .map(Route::path)
                .filter(path -> !WAYS_OUT.contains(path))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static int ask(Crew.Browser browser, String method, String path) throws Exception {
        String real = path.replaceAll("\\{[^}]*}", "T-1");
        String token = method.equals("POST") ? "token=" + browser.token() : "";
        return browser.send(browser.to(real)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .method(method, HttpRequest.BodyPublishers.ofString(token, StandardCharsets.UTF_8)))
                .statusCode();
    }
}
