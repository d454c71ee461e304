// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.app.example.Examples;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What is left in a tap, what to do with it, and whether it came out right: the pages as a person uses them. */
class SharpeningPagesTest {
    private static final String TAP =
            Examples.all().get(1).address().replaceAll("&?(cam|wheel|dial|swivel|name|working|cuts)[^&]*", "");

    private static Chromium chromium;

    @BeforeAll
    static void open() {
        chromium = new Chromium();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    @AfterEach
    void thePageHadNothingToComplainOf() {
        assertThat(chromium.complaints()).isEmpty();
    }

    private static Page at(String question, int width) {
        Page page = chromium.page(width, ColorScheme.LIGHT);
        String tap = question.equals("inspect") ? TAP.replaceAll("&?wear=[^&]*", "") : TAP;
        page.navigate(chromium.address(tap.replace("/grind?", "/grind/" + question + "?")));
        return page;
    }

    /** As many strokes as the sentences beside the drawing say, on three lines; and they can be seen. */
    @Test
    void theLifeLineHasAStrokeForEachSharpening() {
        Page page = at("life", Chromium.DESKTOP);
        int said = 0;
        Matcher counts = Pattern.compile("(\\d+) sharpenings?")
                .matcher(page.locator(".said").innerText());
        while (counts.find()) {
            said += Integer.parseInt(counts.group(1));
        }
        assertThat(said).isGreaterThan(20);
        assertThat(page.locator(".pictured svg path.lf-thin")).hasCount(said);
        double high = page.locator(".pictured svg path.lf-thin").first().boundingBox().height;
        assertThat(high).isGreaterThan(3);
    }

    @Test
    void theLifeLineFollowsWhatIsTyped() {
        Page page = at("life", Chromium.PHONE);
        page.locator("details > summary").first().click();
        page.locator("[name='cap']").fill("4");
        assertThat(page.locator(".said")).containsText("By the chamfer alone: 4 sharpenings");
        assertThat(page.locator(".said")).containsText("What ends it: as many as agreed.");
    }

    @Test
    void withoutScriptsTheLifeLineIsThere() {
        Page page = chromium.page(new Browser.NewContextOptions().setJavaScriptEnabled(false));
        page.navigate(chromium.address(TAP.replace("/grind?", "/grind/life?")));
        assertThat(page.locator(".pictured svg")).hasCount(1);
        assertThat(page.locator(".said li")).hasCount(3);
    }

    @Test
    void whatIsMeasuredGetsItsVerdictByShapeAndWord() {
        Page page = at("inspect", Chromium.DESKTOP);
        assertThat(page.locator(".checks li").first()).containsText("TO MEASURE");
        page.locator("[name='chamfer-lengths']").fill("5.0; 5.02; 5.9");
        assertThat(page.locator(".checks li").first()).containsText("NOT GOOD");
        assertThat(page.locator(".checks li").first().locator("svg.not-go rect"))
                .hasCount(1);
        page.locator("[name='chamfer-lengths']").fill("5.0; 5.0; 5.0");
        assertThat(page.locator(".checks li").first().locator("svg.go circle")).hasCount(1);
    }

    @Test
    void theWayToGoStandsFirstAndTheBarredOnesSayWhy() {
        Page page = at("decide", Chromium.DESKTOP);
        assertThat(page.locator("p.verdict")).containsText("Grind the");
        page.locator("[name='torn']").fill("2 mm");
        assertThat(page.locator("p.verdict")).containsText("Cut the end off and grind a new chamfer");
        assertThat(page.locator(".checks li").first()).containsText("NOT THIS WAY");
    }
}
