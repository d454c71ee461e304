// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.regex.Pattern;
import landfall.app.cut.CutExample;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The pages Hole, Cut and Why as a person goes round them. */
class HoleToCutTest {
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

    /** 8 - 2*.75*.866*1.25*q = 6.8 gives 73.9 %. */
    @Test
    void aCallOutGetsItsDrillAndItsSectionAndCarriesOnToTheCut() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address("/hole"));
        page.locator("[name=thread]").fill("M8x1.25-6H");
        page.locator("[name=depth]").fill("16 mm");
        page.locator("[name=end]").selectOption("blind");
        assertThat(figure(page, "drill.name")).hasText("Drill 6.8 mm");
        assertThat(figure(page, "drill.share")).hasText("73.9%");
        assertThat(page.locator("#sketch-hole-title")).hasCount(1);
        page.locator(".examples a", new Page.LocatorOptions().setHasText("Will this tap cut this hole?"))
                .click();
        assertThat(page.locator("[name=hole]")).hasValue("6.8 mm");
        assertThat(page.locator("[name=thread]")).hasValue("M8x1.25-6H");
        assertThat(page.locator("[name=end]")).hasValue("blind");
    }

    @Test
    void aCutShowsItsSketchesVerdictAndSheetAndFollowsTheKeyboard() {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.DARK);
        page.navigate(chromium.address(CutExample.all().get(0).address()));
        assertThat(page.locator(".verdict").first()).containsText("IT HOLDS");
        assertThat(page.locator("figure.drawing svg")).hasCount(4);
        String before = figure(page, "torque").innerText();
        page.locator("[name=depth]").focus();
        page.keyboard().press("Control+A");
        page.keyboard().type("24 mm");
        assertThat(figure(page, "torque")).not().hasText(before);
        assertThat(page.locator("[data-follows]")).hasAttribute("href", Pattern.compile("^/cut\\.pdf\\?.*depth=24"));
    }

    @Test
    void withoutScriptsTheFormsStillAnswer() {
        Page page = chromium.page(new Browser.NewContextOptions().setJavaScriptEnabled(false));
        page.navigate(chromium.address(CutExample.all().get(0).address()));
        page.locator("[name=hole]").fill("6.9 mm");
        page.locator("form.given button.first").click();
        assertThat(page.locator("[name=hole]")).hasValue("6.9 mm");
        assertThat(figure(page, "margin")).hasCount(1);
        page.navigate(chromium.address("/why"));
        page.locator(".seen a").first().click();
        assertThat(page.locator(".causes > li").first()).containsText("Check");
    }
}
