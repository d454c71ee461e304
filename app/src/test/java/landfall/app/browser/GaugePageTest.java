// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Readings in, pitch diameter out, and the other way round. */
class GaugePageTest {
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

    /** Worked in docs/methods/three-wires.md: 1/2-13, wires .050 in, M .53352 for E .45004 in. */
    @Test
    void overTheWiresEitherWayRound() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address("/gauge?thread=1/2-13+UNC-2A&wire=.050&over=.53352"));
        assertThat(figure(page, "wires.pitchDiameter")).hasText("0.4500in");
        assertThat(page.locator(".drawing", new Page.LocatorOptions().setHasText("Over three wires")))
                .containsText("M 0.5335");
        page.locator("[name=over]").fill("");
        page.locator("[name=pitch-diameter]").fill(".45004");
        assertThat(figure(page, "wires.over")).hasText("0.5335in");
        assertThat(chromium.complaints()).isEmpty();
    }

    @Test
    void theVAnvilIsDrawnOnAPhone() {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.DARK);
        page.navigate(chromium.address("/gauge?thread=M10x1.5&flutes=3&reading=10.2&crest=10.05"));
        Locator anvil = page.locator(".drawing", new Page.LocatorOptions().setHasText("In the V-anvil"));
        assertThat(anvil).containsText("V 60.00°");
        assertThat(figure(page, "vAnvil.pitchDiameter")).isVisible();
        assertThat(chromium.complaints()).isEmpty();
    }

    @Test
    void itWorksWithoutAScript() {
        Page page = chromium.page(new Browser.NewContextOptions().setJavaScriptEnabled(false));
        page.navigate(chromium.address("/gauge"));
        page.locator("[name=thread]").fill("1/4-20 UNC-2B");
        page.locator("button.first").click();
        assertThat(page.locator(".drawing")).hasCount(3);
    }
}
