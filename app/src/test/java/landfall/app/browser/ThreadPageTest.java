// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** From the box on Today to the limits of a thread. */
class ThreadPageTest {
    private static Chromium chromium;

    @BeforeAll
    static void open() {
        chromium = new Chromium();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    private static Locator figure(Page page, String path) {
        return page.locator("[data-figure='" + path + "']");
    }

    /** ISO 965-2:1998, M8 6H: pitch diameter 7.188 to 7.348, minor diameter 6.647 to 6.912 mm. */
    @Test
    void aCallOutTypedOnTodayShowsItsLimits() {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);
        page.navigate(chromium.address("/"));
        page.keyboard().type("m8-6H");
        page.keyboard().press("Enter");
        assertThat(figure(page, "internal.pitch.min")).hasText("7.188mm");
        assertThat(figure(page, "internal.pitch.max")).hasText("7.348mm");
        assertThat(figure(page, "internal.minor.min")).hasText("6.647mm");
        assertThat(figure(page, "internal.minor.max")).hasText("6.912mm");
        assertThat(chromium.complaints()).isEmpty();
    }

    @Test
    void aWrongCallOutIsRefusedWhereItIsTyped() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address("/thread?thread=M8x1.25-6H"));
        page.locator("[name=thread]").fill("M8x1.25-6Q");
        assertThat(page.locator("[name=thread]")).hasAttribute("aria-invalid", "true");
        assertThat(page.locator(".refused")).containsText("To mend");
        page.locator("[name=thread]").fill("M10x1.5-6H");
        assertThat(page.locator("article.sheet")).containsText("M10x1.5-6H");
    }

    @Test
    void unitsChangeWhatIsShownButNotWhatIsMeant() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address("/thread?thread=M8x1.25-6H&units=inch"));
        assertThat(figure(page, "internal.pitch.min")).hasText("0.2830in");
        assertThat(page.locator("#how-internal-pitch-min .other")).containsText("7.188 mm");
    }
}
