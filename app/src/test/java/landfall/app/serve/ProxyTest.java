// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A proxy that speaks TLS with browsers, and one that nobody told the server of. */
class ProxyTest {
    private static final String OPENED = "https://toolroom.example";
    private static Crew proxied;
    private static Crew alone;

    @BeforeAll
    static void start() {
        proxied = Crew.start(new Listen(Listen.LOOPBACK, 0, URI.create(OPENED)));
        alone = Crew.start(Listen.anywhereOnThisMachine());
    }

    @AfterAll
    static void stop() {
        proxied.close();
        alone.close();
    }

    @Test
    void behindAProxyTheCookieGoesOverTlsOnlyAndEverybodySignsIn() throws Exception {
        Crew.Browser browser = proxied.nobody();
        assertThat(browser.send(browser.to("/crib").header("X-Forwarded-Proto", "https"))
                        .statusCode())
                .isEqualTo(401);
        HttpResponse<String> reply =
                browser.send(browser.form("/sign-in", Map.of("name", "use", "password", Crew.PASSWORD))
                        .header("X-Forwarded-Proto", "https")
                        .header("Origin", OPENED));
        assertThat(reply.statusCode()).isEqualTo(303);
        assertThat(reply.headers().firstValue("Set-Cookie").orElse(""))
                .startsWith("__Host-landfall=")
                .contains("Secure", "HttpOnly", "SameSite=Strict", "Path=/");
        assertThat(browser.send(browser.to("/sign-in").header("X-Forwarded-Proto", "https"))
                        .body())
                .doesNotContain("in the clear");
    }

    @Test
    void whatDidNotComeOverTlsOrFromAnotherOriginIsRefused() throws Exception {
        Crew.Browser browser = proxied.nobody();
        assertThat(browser.get("/crib").statusCode()).isEqualTo(403);
        assertThat(browser.send(browser.to("/thread").header("X-Forwarded-Proto", "http"))
                        .statusCode())
                .isEqualTo(403);
        for (String origin : new String[] {"http://toolroom.example", "https://toolroom.example.evil.example"}) {
            assertThat(browser.send(browser.form("/sign-in", Map.of("name", "use", "password", Crew.PASSWORD))
                                    .header("X-Forwarded-Proto", "https")
                                    .header("Origin", origin))
                            .statusCode())
                    .as(origin)
                    .isEqualTo(403);
        }
    }

    @Test
    void triesAreCountedByTheAddressThatTheProxyTells() throws Exception {
        for (int i = 0; i < 30; i++) {
            assertThat(tryFrom("198.51.100.7, 192.0.2.1", "ghost" + i)).isEqualTo(401);
        }
        assertThat(tryFrom("203.0.113.9, 192.0.2.1", "ghost")).isEqualTo(429);
        assertThat(tryFrom("192.0.2.1, 192.0.2.2", "ghost")).isEqualTo(401);
    }

    private static int tryFrom(String forwarded, String name) throws Exception {
        Crew.Browser browser = proxied.nobody();
        return browser.send(browser.form("/sign-in", Map.of("name", name, "password", "wrong words of nobody"))
                        .header("X-Forwarded-Proto", "https")
                        .header("X-Forwarded-For", forwarded))
                .statusCode();
    }

    /** Else a proxy that somebody put before it would open the crib to all without a password. */
    @Test
    void aServerForThisMachineAloneRefusesWhatAProxyPassedOn() throws Exception {
        Crew.Browser browser = alone.nobody();
        assertThat(browser.get("/crib").statusCode()).isEqualTo(200);
        for (String header : new String[] {"X-Forwarded-For", "Forwarded", "Via", "X-Real-IP", "X-Forwarded-Proto"}) {
            HttpResponse<String> reply = browser.send(browser.to("/crib").header(header, "192.0.2.1"));
            assertThat(reply.statusCode()).as(header).isEqualTo(403);
            assertThat(reply.body()).contains("--tls-proxy");
        }
    }
}
