// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import landfall.cards.spread.SpreadFile;
import landfall.cards.spread.SpreadSetup;
import landfall.cards.spread.SpreadText;
import landfall.spread.Run;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Many set-ups on the page: from a set-up over its run, stopped and gone on with, to what it found. */
class WhatIfPageTest {
    private static Chromium chromium;

    @BeforeAll
    static void open() {
        chromium = new Chromium();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    /** Over Today's example to Grind, and from there by the line above the page. */
    private static void form(Page page) {
        page.navigate(chromium.address("/"));
        page.click("ul.examples a:has-text('M8, 3 flutes')");
        page.click("#places a:has-text('What if')");
        assertThat(page.inputValue("[name=question]")).isEqualTo("grind");
        assertThat(page.inputValue("[name='vary.1.field']")).isEqualTo("swivel");
        assertThat(page.inputValue("[name='watch.1.result']")).isEqualTo("asSet.working");
    }

    private static String says(Page page) {
        page.waitForSelector("pre.says", new Page.WaitForSelectorOptions().setTimeout(120_000));
        return page.textContent("pre.says");
    }

    /** The same wish run by itself, on one thread. */
    private static String byItself(Page page) throws Exception {
        APIResponse file = page.request().get(page.url() + "/file");
        SpreadSetup setup = SpreadFile.read(file.text()).then(SpreadSetup::of).orThrow();
        return SpreadText.write(setup, setup.run(1).go(Run.Watch.NONE));
    }

    @Test
    void aSetUpIsVariedRunAndKept() throws Exception {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);
        form(page);
        Chromium.picture(page, "what-if-390");
        page.click("button.first");
        String says = says(page);
        assertThat(page.textContent(".far")).contains("Done: 10000 of 10000 set-ups.");
        assertThat(says).isEqualTo(byItself(page)).contains("swivel");
        Chromium.picture(page, "what-if-done-390");
        String run = page.url();
        page.navigate(chromium.address("/what-if"));
        assertThat(page.locator("#runs ~ ul a").first().getAttribute("href"))
                .isEqualTo(run.replaceFirst(".*(/what-if/)", "$1"));
        page.context().close();
    }

    @Test
    void aLongRunTellsHowFarItIsIsStoppedOutlivesTheServerAndGoesOnToTheSameFigures() throws Exception {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        form(page);
        page.fill("[name=samples]", "3000000");
        page.fill("[name=seed]", "11");
        page.click("button.first");
        page.locator(".far:text-matches('At work: [1-9]')").waitFor();
        page.click("form[action$='/stop'] button");
        String stopped = says(page);
        assertThat(page.textContent(".far")).contains("Stopped after");
        assertThat(stopped).contains("Stopped after");
        chromium.stopServer();
        chromium.startServer();
        page.reload();
        assertThat(says(page)).as("kept over a restart").isEqualTo(stopped);
        page.click("form[action$='/go-on'] button");
        page.locator(".far:has-text('Done: 3000000')").waitFor(new Locator.WaitForOptions().setTimeout(240_000));
        assertThat(says(page)).isEqualTo(byItself(page));
        page.click("form[action$='/throw-away'] button");
        assertThat(page.url()).endsWith("/what-if");
        page.context().close();
    }

    @Test
    void whatCannotVaryIsRefusedWithTheMendAndStaysTyped() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        form(page);
        page.fill("[name='vary.1.law']", "norml 0.25 deg");
        page.fill("[name='watch.1.limits']", "7 deg to 4 deg");
        page.click("button.first");
        assertThat(page.textContent(".refused")).contains("norml 0.25 deg", "begin with normal", "7 deg to 4 deg");
        assertThat(page.inputValue("[name='vary.1.law']")).isEqualTo("norml 0.25 deg");
        assertThat(page.inputValue("[name='watch.1.limits']")).isEqualTo("7 deg to 4 deg");
        page.context().close();
    }
}
