// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    @ParameterizedTest
    @ValueSource(
            strings = {
                "M8x1.25-6H",
                "1/4-20 UNC",
                "1/4-28 UNJF",
                "1/2-14 NPT",
                "G 1/2",
                "1/4-20 BSW",
                "2 BA",
                "1/2-10 ACME",
                "Tr20x8(P4)-LH",
                "STI M8"
            })
    void everyFamilyIsDrawnLargeEnoughToReadOnAPhone(String callOut) {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.DARK);
        page.navigate(chromium.address("/thread"));
        page.locator("[name=thread]").fill(callOut);
        assertThat(page.locator(".drawing svg").first()).isVisible();
        assertThat(page.locator("article.sheet > h2").first()).containsText(callOut);
        Object least = page.evaluate("() => Math.min(...[...document.querySelectorAll('.drawing text')]"
                + ".map(t => parseFloat(t.getAttribute('font-size')) * t.ownerSVGElement.getBoundingClientRect().width"
                + " / t.ownerSVGElement.viewBox.baseVal.width))");
        Assertions.assertThat(((Number) least).doubleValue()).isGreaterThan(13.9);
        Assertions.assertThat(chromium.complaints()).isEmpty();
        page.context().close();
    }

    /** 7.188 - 7.160 and 7.348 - 7.042 mm, from the limits of ISO 965-2:1998; the screw's class is the usual one. */
    @Test
    void theClearanceStandsInTheDrawingAndBesideIt() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address("/thread?thread=M8x1.25-6H"));
        assertThat(figure(page, "fit.least")).hasText("0.028mm");
        assertThat(figure(page, "fit.greatest")).hasText("0.306mm");
        assertThat(page.locator(".drawing").first()).containsText("least 0.028, greatest 0.306");
        page.locator("a", new Page.LocatorOptions().setHasText("Which tap suits"))
                .click();
        assertThat(page.locator("[name=thread]")).hasValue("M8x1.25-6H");
    }

    @Test
    void itWorksWithoutAScript() {
        Page page = chromium.page(new Browser.NewContextOptions().setJavaScriptEnabled(false));
        page.navigate(chromium.address("/thread"));
        page.locator("[name=thread]").fill("1/2-14 NPT");
        page.locator("button.first").click();
        assertThat(page.locator(".drawing")).hasCount(2);
    }
}
