// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Which tap, and which tap is this. */
class TapPageTest {
    private static Chromium chromium;

    @BeforeAll
    static void open() {
        chromium = new Chromium();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    /** A tap over 1/4 in by .0045 in with 20 threads an inch: USCTI 302 gives its shank .255 in. */
    @Test
    void whatIsMeasuredOnTodayGoesToTheTapThatItMayBe() {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);
        page.navigate(chromium.address("/"));
        page.keyboard().type(".2545 20 tpi");
        page.keyboard().press("Enter");
        assertThat(page.locator("[name=major]")).hasValue(".2545");
        assertThat(page.locator("[name=tpi]")).hasValue("20");
        assertThat(page.locator(".candidates > li").first()).containsText("1/4-20 UNC");
        assertThat(page.locator(".next-look")).containsText("1/4-20 BSW");
        assertThat(page.locator(".drawing svg")).isVisible();
        page.locator(".candidates a", new Page.LocatorOptions().setHasText("Choose a tap"))
                .first()
                .click();
        assertThat(page.locator("article.sheet")).containsText("1/4-20 UNC");
        assertThat(page.locator(".drawing")).containsText("Blank, USCTI 302");
        page.locator("a", new Page.LocatorOptions().setHasText("An unmarked tap"))
                .click();
        assertThat(page.locator("h1")).hasText("Which tap is this?");
        assertThat(chromium.complaints()).isEmpty();
    }

    @Test
    void theKeyboardAloneIsEnough() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.DARK);
        page.navigate(chromium.address("/tap"));
        page.locator("[name=thread]").focus();
        page.keyboard().type("1/2-13 UNC-2B");
        page.keyboard().press("Tab");
        assertThat(page.locator(".drawing")).containsText("The shank follows into the hole");
        assertThat(page.locator(".ranked > li").first()).isVisible();
        assertThat(page.locator(".mark")).containsText("H");
        assertThat(chromium.complaints()).isEmpty();
    }

    @Test
    void bothPagesWorkWithoutAScript() {
        Page page = chromium.page(new Browser.NewContextOptions().setJavaScriptEnabled(false));
        page.navigate(chromium.address("/identify"));
        page.locator("[name=major]").fill("8.05 mm");
        page.locator("[name=pitch]").fill("1.25 mm");
        page.locator("button.first").click();
        assertThat(page.locator(".candidates > li").first()).containsText("M8x1.25");
        page.navigate(chromium.address("/tap?thread=M8x1.25-6H"));
        assertThat(page.locator(".drawing")).hasCount(1);
    }

    @Test
    void aDiameterWithoutAPitchIsRefusedWithTheMend() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address("/identify?major=.2545"));
        assertThat(page.locator(".refused")).containsText("give pitch, the distance from crest to crest");
        assertThat(page.locator(".drawing")).hasCount(0);
    }

    @Test
    void aMarkingTypedOnTodayIsExplainedPartByPart() {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.DARK);
        page.navigate(chromium.address("/"));
        page.keyboard().type("1/4-20 UNC GH3 HSS");
        page.keyboard().press("Enter");
        assertThat(page.locator(".drawing")).containsText("high-speed steel");
        assertThat(page.locator(".mark")).hasText("H3");
        assertThat(page.locator("[data-figure='tap.pitch.min']")).hasText("0.2185in");
        assertThat(chromium.complaints()).isEmpty();
    }
}
