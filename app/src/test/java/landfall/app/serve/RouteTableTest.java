// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import landfall.app.crib.CribDoor;
import landfall.store.StoreAddress;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every address, asked by everybody, by every method. */
class RouteTableTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final List<String> METHODS = List.of("GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS");
    private static List<Route> table;
    private static WebServer open;

    @BeforeAll
    static void start() throws IOException {
        StoreAddress store =
                new StoreAddress.InFile(Files.createTempDirectory("crib").resolve("crib.db"));
        table = Routes.of(new CribDoor(store, Clock.systemUTC())).routes();
        open = WebServer.start(new Listen("0.0.0.0", 0), store);
    }

    @AfterAll
    static void stop() {
        open.stop();
    }

    @Test
    void theServerKnowsNoAddressThatIsNotInTheTable() {
        Set<String> served = open.endpoints().stream()
                .map(endpoint -> endpoint.method + " " + endpoint.path)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(served)
                .isNotEmpty()
                .containsExactlyInAnyOrderElementsOf(table.stream()
                        .map(route -> route.method() + " " + route.path())
                        .toList());
    }

    @Test
    void nobodyReachesWhatIsOpenAndIsAskedToSignInElsewhere() throws Exception {
        List<String> wrong = new ArrayList<>();
        Set<String> paths = table.stream().map(Route::path).collect(Collectors.toCollection(TreeSet::new));
        for (String path : paths) {
            for (String method : METHODS) {
                int status = ask(method, path);
                boolean right = table.stream()
                        .filter(route -> route.method().name().equals(method)
                                && route.path().equals(path))
                        .findFirst()
                        .map(route ->
                                route.role() == null ? status < 500 && status != 401 && status != 403 : status == 401)
                        .orElse(status == 404 || status == 405);
                if (!right) {
                    wrong.add(method + " " + path + " " + status);
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static int ask(String method, String path) throws IOException, InterruptedException {
        String real = path.replaceAll("\\{[^}]*}", "T-1");
        return CLIENT.send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + open.port() + real))
                                .method(method, HttpRequest.BodyPublishers.noBody())
                                .build(),
                        HttpResponse.BodyHandlers.discarding())
                .statusCode();
    }
}
