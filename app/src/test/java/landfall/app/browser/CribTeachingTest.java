// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What the crib's records teach, in the browser")
class CribTeachingTest {
    private static final Map<String, String> CARD = Map.of(
            "flutes.count", "3",
            "flutes.core", "4.1 mm",
            "flutes.rake", "10 deg",
            "land.width", "2.6 mm",
            "chamfer.angle", "9 deg",
            "chamfer.pointDiameter", "6.4 mm",
            "threadLength", "22 mm");
    private static Chromium chromium;

    @BeforeAll
    static void open() {
        chromium = new Chromium();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    @Test
    void anEmptyCribSaysWhatToWriteDownFirst() {
        Chromium fresh = new Chromium();
        Page page = fresh.page(Chromium.PHONE, ColorScheme.LIGHT);
        page.navigate(fresh.address("/crib/due"));
        assertThat(page.locator(".lead").innerText()).contains("write down the holes that taps cut");
        assertThat(page.locator(".wanting").innerText())
                .contains("Nothing is on record", "What one sharpening costs", "none is on record this year");
        assertThat(fresh.complaints()).isEmpty();
        fresh.close();
    }

    /** A tap bought, run, sharpened and run again teaches. */
    @Test
    void holesAndSharpeningsGiveTheWearCurveAndTheNextJob() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
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
                .containsIgnoringCase("the next job")
                .contains("Chance to come through", "Chance to break in it");
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

    /** With a whole card and three prices the chart of cost stands beside its table, the best limit marked. */
    @Test
    void aWholeCardAndThreePricesGiveTheCostOfAHole() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address("/crib"));
        page.fill("form[method=post] input[name=thread]", "M8x1.25-6H");
        page.fill("form[method=post] input[name=mark]", "W-2");
        page.evaluate(
                "card => { const form = document.querySelector('form[method=post]');"
                        + " for (const [name, value] of Object.entries(card)) {"
                        + " const cell = document.createElement('input'); cell.type = 'hidden';"
                        + " cell.name = name; cell.value = value; form.append(cell); } }",
                CARD);
        page.click("form[method=post] button");
        tapped(page, "60");
        page.fill("#teaching input[name=price]", "20 EUR");
        page.fill("#teaching input[name=sharpening]", "6 EUR");
        page.fill("#teaching input[name=spoilt]", "many");
        page.click("#teaching button.first");
        assertThat(page.locator("#teaching .refused").innerText()).contains("many");
        assertThat(page.inputValue("#teaching input[name=price]")).isEqualTo("20 EUR");
        page.fill("#teaching input[name=spoilt]", "40 EUR");
        page.click("#teaching button.first");
        assertThat(page.locator("#teaching .drawing svg").count()).isEqualTo(2);
        assertThat(page.locator("#teaching .drawing").nth(1).innerHTML()).contains("best at", "hatched");
        assertThat(page.locator("#teaching").innerText())
                .contains("Cost of a hole against the wear limit", "sharpen it:", "is what broken taps spoil");
        page.fill("#teaching input[name=spoilt]", "4000 EUR");
        page.click("#teaching button.first");
        assertThat(page.locator("#teaching").innerText()).contains("the part decides here");
        Chromium.picture(page, "crib-teaching-cost");
        page.setViewportSize(Chromium.PHONE, 844);
        Chromium.picture(page, "crib-teaching-cost-390");
        page.navigate(chromium.address("/crib/due"));
        Chromium.picture(page, "crib-due-390");
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
        page.locator(".done").waitFor();
    }
}
