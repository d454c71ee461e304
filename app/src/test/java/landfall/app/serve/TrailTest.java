// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLDecoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.app.shell.Place;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is in hand goes round all places by their links and comes back whole. */
class TrailTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final Pattern LINK =
            Pattern.compile("<li><a href=\"([^\"]*)\"(?: aria-current=\"page\")?>(\\w[\\w ]*)</a>");
    private static final String HOLE =
            "/hole?thread=M8x1.25-6H&material=C45&depth=16+mm&blind=yes&share=65%25&screw-strength=8.8";
    private static WebServer server;

    @BeforeAll
    static void start() {
        server = WebServer.start(Listen.anywhereOnThisMachine());
    }

    @AfterAll
    static void stop() {
        server.stop();
    }

    private static String get(String path) throws IOException, InterruptedException {
        HttpResponse<String> reply = CLIENT.send(
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                        .build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        assertThat(reply.statusCode()).as(path).isIn(200, 400);
        return reply.body();
    }

    /** The links of the line of places by their words. */
    private static Map<String, String> links(String page) {
        Map<String, String> links = new LinkedHashMap<>();
        Matcher link = LINK.matcher(page.substring(page.indexOf("id=\"places\""), page.indexOf("id=\"subject\"")));
        while (link.find()) {
            links.put(link.group(2), link.group(1).replace("&amp;", "&"));
        }
        assertThat(links).hasSize(Place.values().length);
        return links;
    }

    private static Map<String, String> fields(String address) {
        Map<String, String> fields = new TreeMap<>();
        String query = address.substring(address.indexOf('?') + 1);
        for (String pair : query.split("&")) {
            fields.put(
                    pair.substring(0, pair.indexOf('=')),
                    URLDecoder.decode(pair.substring(pair.indexOf('=') + 1), StandardCharsets.UTF_8));
        }
        return fields;
    }

    @ParameterizedTest
    @EnumSource(Place.class)
    void fromAHoleToAPlaceAndBackNothingIsLost(Place place) throws Exception {
        Map<String, String> first = links(get(HOLE));
        String there = get(first.get(place.noun()));
        assertThat(there).contains("M8x1.25-6H").doesNotContain("is not a field of");
        assertThat(fields(links(there).get("Hole")))
                .containsAllEntriesOf(fields(HOLE))
                .doesNotContainKey("with");
    }

    @Test
    void roundAllPlacesInTurn() throws Exception {
        String address = HOLE;
        for (Place place : Place.values()) {
            address = links(get(address)).get(place.noun());
        }
        assertThat(fields(links(get(address)).get("Hole"))).containsAllEntriesOf(fields(HOLE));
    }

    /** What the tap is made of and what it cuts have one name on two pages. */
    @Test
    void theWorkMaterialIsNotTakenForTheTaps() throws Exception {
        String cut = links(get(HOLE)).get("Cut");
        assertThat(fields(cut)).containsEntry("cuts", "C45").doesNotContainKey("material");
        Map<String, String> back = links(get("/cut?thread=M8x1.25-6H&material=HSS&cuts=C45"));
        assertThat(fields(back.get("Hole"))).containsEntry("material", "C45");
        assertThat(fields(back.get("Grind"))).containsEntry("material", "HSS").containsEntry("cuts", "C45");
    }

    @Test
    void theDrillThatWasFoundGoesToTheCutAndNoFurther() throws Exception {
        Map<String, String> links = links(get(HOLE));
        assertThat(fields(links.get("Cut"))).containsEntry("hole", "6.8 mm");
        assertThat(fields(links.get("Hole"))).doesNotContainKey("hole");
        assertThat(fields(links.get("Gauge")).get("with")).doesNotContain("hole:");
    }

    @Test
    void aTextWithMarksOfItsOwnComesBackAsItWas() throws Exception {
        String odd = "/hole?thread=M8x1.25-6H&material=C45;a%5Cb&depth=16+mm";
        String there = links(get(odd)).get("Gauge");
        assertThat(fields(links(get(there)).get("Hole"))).containsEntry("material", "C45;a\\b");
    }

    @Test
    void whatIsInHandStandsOnThePageAndCanBePutDown() throws Exception {
        String page = get(links(get(HOLE)).get("Gauge"));
        String inHand = page.substring(page.indexOf("id=\"subject\""), page.indexOf("<main"));
        assertThat(inHand).contains("In hand", ">M8x1.25-6H<", ">C45<", ">16 mm<", ">blind<", "href=\"/gauge\"");
        assertThat(get("/gauge")).doesNotContain("<b>In hand</b>");
    }

    @Test
    void nonsenseCarriedAlongIsPassedOver() throws Exception {
        for (String with : List.of("x", ":", ";;;", "nowhere:1;depth:9 mm", "depth:%3Cscript%3E")) {
            String page = get("/gauge?thread=M8x1.25-6H&with=" + with.replace(" ", "+"));
            assertThat(page).doesNotContain("<script>").contains("M8x1.25-6H");
        }
        Map<String, String> links = links(get("/gauge?thread=M8x1.25-6H&with=nowhere:1;depth:9+mm;thread:M6"));
        assertThat(fields(links.get("Hole")))
                .containsOnly(Map.entry("thread", "M8x1.25-6H"), Map.entry("depth", "9 mm"));
    }
}
