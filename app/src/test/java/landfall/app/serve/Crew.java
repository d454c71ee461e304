// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.CookiePolicy;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.people.Password;
import landfall.store.people.People;
import landfall.store.people.PersonName;
import landfall.store.people.Role;

/** A server on the shop's network with one person of each role, each of whom has a browser with cookies. */
final class Crew implements AutoCloseable {
    static final String PASSWORD = "four words of a toolroom";
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([0-9a-f]+)\"");

    final StoreAddress address;
    final WebServer server;

    private Crew(StoreAddress address, WebServer server) {
        this.address = address;
        this.server = server;
    }

    static Crew start(Listen listen) {
        try {
            StoreAddress address =
                    new StoreAddress.InFile(Files.createTempDirectory("crib").resolve("crib.db"));
            return start(listen, address);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Crew start(Listen listen, StoreAddress address) {
        try (Store store = Store.open(address, Clock.systemUTC())) {
            People people = new People(store, Clock.systemUTC());
            for (Role role : Role.values()) {
                people.add(new PersonName(role.word()), "Who " + role.word() + "s", role, Password.typed(PASSWORD))
                        .orThrow();
            }
        }
        return new Crew(address, WebServer.start(listen, address));
    }

    /** Another server on the same store. */
    static Crew again(Crew before) {
        return new Crew(before.address, WebServer.start(new Listen("0.0.0.0", 0), before.address));
    }

    static Crew onTheNetwork() {
        return start(new Listen("0.0.0.0", 0));
    }

    Browser nobody() {
        return new Browser();
    }

    Browser as(Role role) throws IOException, InterruptedException {
        Browser browser = new Browser();
        HttpResponse<String> reply = browser.signIn(role.word(), PASSWORD);
        if (reply.statusCode() != 303) {
            throw new IllegalStateException("not signed in: " + reply.statusCode());
        }
        return browser;
    }

    /** What changes people, past the server. */
    void people(Consumer<People> change) {
        try (Store store = Store.open(address, Clock.systemUTC())) {
            change.accept(new People(store, Clock.systemUTC()));
        }
    }

    @Override
    public void close() {
        server.stop();
    }

    /** Sends requests and keeps cookies; it does not follow redirects. */
    final class Browser {
        final CookieManager cookies = new CookieManager(null, CookiePolicy.ACCEPT_ALL);
        private final HttpClient client =
                HttpClient.newBuilder().cookieHandler(cookies).build();

        HttpRequest.Builder to(String path) {
            return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
        }

        HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
            return client.send(request.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        }

        HttpResponse<String> get(String path) throws IOException, InterruptedException {
            return send(to(path));
        }

        HttpResponse<String> post(String path, Map<String, String> fields) throws IOException, InterruptedException {
            return send(form(path, fields));
        }

        HttpRequest.Builder form(String path, Map<String, String> fields) {
            String body = fields.entrySet().stream()
                    .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                    .collect(Collectors.joining("&"));
            return to(path).header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(HttpRequest.BodyPublishers.ofString(body));
        }

        HttpResponse<String> signIn(String name, String password) throws IOException, InterruptedException {
            return post("/sign-in", Map.of("name", name, "password", password, "to", "/crib"));
        }

        /** The token of this person's forms. */
        String token() throws IOException, InterruptedException {
            Matcher token = TOKEN.matcher(get("/me").body());
            return token.find() ? token.group(1) : "";
        }

        Optional<String> cookie() {
            return cookies.getCookieStore().getCookies().stream()
                    .filter(cookie -> cookie.getName().equals("landfall"))
                    .map(cookie -> cookie.getValue())
                    .findFirst();
        }
    }
}
