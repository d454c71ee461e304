// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What the crib's records teach, in the browser")
class CribTeachingTest {
    private static Chromium chromium;

    @BeforeAll
    static void open() {
        chromium = new Chromium();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    /** An empty crib says what to log first; then a tap bought, run, sharpened and run again teaches. */
    @Test
    void fromTheEmptyStateToTheWearCurveAndTheCostOfAHole() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address("/crib/due"));
        assertThat(page.locator(".lead").innerText()).contains("write down the holes that taps cut");
        assertThat(page.locator(".wanting").innerText()).contains("Nothing is on record");
        page.navigate(chromium.address("/crib"));
        page.fill("form[method=post] input[name=thread]", "M8x1.25-6H");
        page.fill("form[method=post] input[name=mark]", "W-1");
        page.click("form[method=post] button");
        assertThat(page.locator("#teaching").innerText()).contains("Nothing yet: write down the holes");
        log(page, "bought", "price", "20 EUR");
        tapped(page, "120");
        sharpened(page);
        tapped(page, "140");
        sharpened(page);
        tapped(page, "60");
        measured(page);
        Locator teaching = page.locator("#teaching");
        assertThat(teaching.locator(".drawing svg").count()).isEqualTo(1);
        assertThat(teaching.locator("caption").first().innerText()).startsWith("Wear land over the holes");
        assertThat(teaching.locator(".wanting").innerText()).contains("What one sharpening costs", "A full card");
        page.fill("#teaching input[name=holes]", "40");
        page.click("#teaching button.first");
        assertThat(page.locator("#teaching").innerText())
                .contains("The next job", "Chance to come through", "Chance to break in it");
        Chromium.picture(page, "crib-teaching-wear");
        page.navigate(chromium.address("/crib/due?sharpening=6+EUR"));
        assertThat(page.locator("tbody tr th a").first().innerText()).isEqualTo("W-1");
        assertThat(page.content()).contains("What sharpening saved this year");
        assertThat(page.locator("table:has(caption:text-is('What sharpening saved this year, kind by kind')) tbody")
                        .innerText())
                .contains("M8x1.25")
                .contains("200");
        Chromium.picture(page, "crib-due");
        assertThat(chromium.complaints()).isEmpty();
        page.context().close();
    }

    /** A form that is refused keeps what was typed, and says how to mend it. */
    @Test
    void whatIsRefusedStandsInTheFormAgain() {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.DARK);
        page.navigate(chromium.address("/crib/due?delivery=soon&risk=5+%25"));
        assertThat(page.locator(".refused").innerText()).contains("soon");
        assertThat(page.inputValue("input[name=delivery]")).isEqualTo("soon");
        assertThat(page.inputValue("input[name=risk]")).isEqualTo("5 %");
        page.context().close();
    }

    private static void tapped(Page page, String holes) {
        page.click("nav >> text=tapped");
        page.fill("form[method=post] input[name=holes]", holes);
        page.fill("form[method=post] input[name=material]", "1045");
        page.fill("form[method=post] input[name=depth]", "12 mm");
        done(page);
    }

    private static void sharpened(Page page) {
        page.click("nav >> text=sharpened");
        page.selectOption("select[name=way]", "chamfer");
        done(page);
    }

    private static void measured(Page page) {
        log(page, "measured", "wear-land", "0.09 mm");
    }

    private static void log(Page page, String event, String field, String value) {
        page.click("nav >> text=" + event);
        page.fill("form[method=post] input[name=" + field + "]", value);
        done(page);
    }

    private static void done(Page page) {
        page.fill("form[method=post] input[name=by]", "Ida");
        page.click("form.given[method=post] button.first");
    }
}
