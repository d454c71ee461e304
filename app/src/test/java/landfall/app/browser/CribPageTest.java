// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The crib at the machine: on a phone, one tap from the drawer through its holes. */
class CribPageTest {
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
    void aTapIsAddedItsHolesWrittenDownAndAMistakeTakenBack() {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);
        page.navigate(chromium.address("/crib"));
        add(page, "M8x1.25-6H", "");
        assertThat(page.locator("h1").innerText()).startsWith("T0001-W").contains("tap M8x1.25");
        page.fill("input[name=holes]", "40");
        page.fill("input[name=by]", "Ida");
        page.click("form.given button.first");
        page.locator(".done").waitFor();
        assertThat(page.locator(".lead").innerText()).contains("Holes: 40, of them since it was sharp: 40.");
        assertThat(page.locator(".story li").first().innerText()).contains("Ida: tapped holes 40");
        assertThat(page.inputValue("input[name=by]"))
                .as("the name is remembered")
                .isEqualTo("Ida");
        page.click(".story summary");
        page.fill(".story input[name=because]", "another tap");
        page.click(".story button");
        assertThat(page.locator(".lead").innerText()).contains("Holes: 0");
        assertThat(page.locator(".story li s").count()).isEqualTo(1);
        Chromium.picture(page, "crib-story-390");
        page.context().close();
    }

    @Test
    void whatIsRefusedStandsInTheFormAgainWithTheMend() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address("/crib"));
        add(page, "1/4-20 UNC-2B", "Q-7");
        page.click("nav >> text=sharpened");
        page.selectOption("select[name=way]", "chamfer");
        page.fill("input[name=stock]", "much");
        page.fill("input[name=by]", "Jon");
        page.click("form.given button.first");
        page.locator(".refused").waitFor();
        assertThat(page.locator(".refused").innerText()).contains("much");
        assertThat(page.inputValue("input[name=stock]")).isEqualTo("much");
        assertThat(page.inputValue("select[name=way]")).isEqualTo("chamfer");
        page.fill("input[name=stock]", ".01");
        page.click("form.given button.first");
        page.locator(".done").waitFor();
        assertThat(page.locator(".story li").first().innerText()).contains("sharpened way chamfer, stock .01");
        page.context().close();
    }

    @Test
    void whoWritesOnAnOldPageIsToldWhatHappenedMeanwhile() {
        Page one = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        one.navigate(chromium.address("/crib"));
        add(one, "M6", "Z-1");
        Page two = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        two.navigate(one.url());
        log(one, "10", "Ida");
        one.locator(".done").waitFor();
        log(two, "20", "Jon");
        two.locator(".refused").waitFor();
        assertThat(two.locator(".refused").innerText()).contains("meanwhile 1 tapped by Ida");
        assertThat(two.inputValue("input[name=holes]")).isEqualTo("20");
        two.click("form.given button.first");
        two.locator(".done").waitFor();
        assertThat(two.locator(".lead").innerText()).contains("Holes: 30");
        one.context().close();
        two.context().close();
    }

    @Test
    void theListKeepsToTheThreadLookedForAndWorksWithoutScripts() {
        Page page = chromium.page(new Browser.NewContextOptions().setJavaScriptEnabled(false));
        page.navigate(chromium.address("/crib"));
        add(page, "M10", "L-1");
        page.navigate(chromium.address("/crib?thread=M10"));
        assertThat(page.locator("tbody tr").count()).isEqualTo(1);
        page.navigate(chromium.address("/crib?thread=M99x"));
        assertThat(page.locator(".refused").count()).isEqualTo(1);
        page.navigate(chromium.address("/crib/NOBODY"));
        assertThat(page.locator("h1").innerText()).isNotBlank();
        assertThat(page.locator(".story").count()).isZero();
        page.context().close();
    }

    private static void add(Page page, String thread, String mark) {
        page.fill("form[method=post] input[name=thread]", thread);
        page.fill("form[method=post] input[name=mark]", mark);
        page.click("form[method=post] button");
    }

    private static void log(Page page, String holes, String by) {
        page.fill("input[name=holes]", holes);
        page.fill("input[name=by]", by);
        page.click("form.given button.first");
    }
}
