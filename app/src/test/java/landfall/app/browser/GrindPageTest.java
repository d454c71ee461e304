// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import landfall.app.example.Examples;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The page Grind as a person uses it. */
class GrindPageTest {
    private static final Examples.Example EXAMPLE = Examples.all().get(1);
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

    private static Page desk() {
        return chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
    }

    private static Locator figure(Page page, String path) {
        return page.locator("[data-figure='" + path + "']");
    }

    @Test
    void aTapTypedInByHandGetsItsSetting() {
        Page page = desk();
        page.navigate(chromium.address("/grind"));
        for (String path : List.of(
                "thread",
                "flutes.count",
                "land.width",
                "chamfer.angle",
                "chamfer.pointDiameter",
                "cam.lobes",
                "cam.riseAngle",
                "cam.returnAngle",
                "cam.axial.from",
                "cam.axial.to",
                "cam.radial.from",
                "cam.radial.to",
                "wheel.diameter")) {
            page.locator("[name='" + path + "']").fill(EXAMPLE.typed().get(path));
        }
        assertThat(figure(page, "setting.swivel")).hasText(Pattern.compile("9\\.00°"));
        assertThat(page.locator(".verdict")).containsText(Pattern.compile("CLEAR"));
        assertThat(page.url()).contains("thread=M8x1.25");
    }

    @Test
    void theAnswerFollowsWhatIsTypedAndMarksWhatChanged() {
        Page page = desk();
        page.navigate(chromium.address(EXAMPLE.address()));
        String before = figure(page, "setting.radial").innerText();
        page.locator("[name='working-relief']").fill("4 deg");
        assertThat(figure(page, "relief.working")).hasText("4.00°");
        assertThat(figure(page, "setting.radial")).hasClass(Pattern.compile("changed"));
        assertThat(figure(page, "setting.radial").innerText()).isNotEqualTo(before);
        assertThat(page.url()).contains("working-relief=4+deg");
        assertThat(page.locator("[data-follows]").getAttribute("href")).contains("working-relief=4+deg");
    }

    @Test
    void theAddressHoldsTheWholeState() {
        Page first = desk();
        first.navigate(chromium.address(EXAMPLE.address()));
        first.locator("[name='working-relief']").fill("5 deg");
        assertThat(figure(first, "relief.working")).hasText("5.00°");
        Page second = desk();
        second.navigate(first.url());
        assertThat(second.locator("[name='working-relief']").inputValue()).isEqualTo("5 deg");
        assertThat(figure(second, "setting.radial").innerText())
                .isEqualTo(figure(first, "setting.radial").innerText());
    }

    @Test
    void aWrongFieldSaysWhyAndHowToMendItBesideItself() {
        Page page = desk();
        page.navigate(chromium.address(EXAMPLE.address()));
        page.locator("[name='flutes.count']").fill("three");
        assertThat(page.locator("[name='flutes.count']")).hasAttribute("aria-invalid", "true");
        assertThat(page.locator("#give-flutes-count-finding")).containsText("To mend");
        assertThat(page.locator(".refused")).isVisible();
        page.locator("[name='flutes.count']").fill("3");
        assertThat(page.locator("[name='flutes.count']")).hasAttribute("aria-invalid", "false");
        assertThat(figure(page, "setting.swivel")).isVisible();
    }

    @Test
    void theWorkingOpensUnderAFigureAndStaysOpenWhileTyping() {
        Page page = desk();
        page.navigate(chromium.address(EXAMPLE.address()));
        Locator working = page.locator("#how-relief-static .working");
        assertThat(working).isHidden();
        page.locator("#how-relief-static summary").click();
        assertThat(working).isVisible();
        assertThat(working.locator("code").first()).containsText("=");
        page.locator("[name='working-relief']").fill("4.5 deg");
        assertThat(figure(page, "relief.working")).hasText("4.50°");
        assertThat(page.locator("#how-relief-static .working")).isVisible();
    }

    @Test
    void theKeyboardAloneReachesFieldsWorkingAndTicks() {
        Page page = desk();
        page.navigate(chromium.address(EXAMPLE.address()));
        page.keyboard().press("Tab");
        assertThat(page.locator(".skip")).isFocused();
        page.keyboard().press("Enter");
        page.locator("[name='chamfer.angle']").focus();
        page.keyboard().press("Control+A");
        page.keyboard().type("8.5 deg");
        assertThat(figure(page, "setting.swivel")).hasText("8.50°");
        tabTo(page, "#how-setting-swivel summary");
        page.keyboard().press("Enter");
        assertThat(page.locator("#how-setting-swivel .working")).isVisible();
        tabTo(page, "#done-0");
        page.keyboard().press("Space");
        assertThat(page.locator("#done-0")).isChecked();
    }

    private static void tabTo(Page page, String selector) {
        for (int i = 0; i < 200; i++) {
            page.keyboard().press("Tab");
            if ((Boolean) page.evaluate("s => document.activeElement.matches(s)", selector)) {
                return;
            }
        }
        throw new AssertionError("the keyboard does not reach " + selector);
    }

    @Test
    void cardFilesOpenIntoTheForm() {
        Page page = desk();
        page.navigate(chromium.address("/grind"));
        page.locator("[name='tap-card']").setInputFiles(Path.of("../examples", EXAMPLE.tapFile()));
        page.waitForURL(Pattern.compile("thread="));
        page.locator("[name='fixture-card']").setInputFiles(Path.of("../examples", EXAMPLE.fixtureFile()));
        page.waitForURL(Pattern.compile("cam\\.lobes="));
        assertThat(figure(page, "setting.swivel")).isVisible();
        assertThat(page.locator("[name='thread']")).hasValue(EXAMPLE.typed().get("thread"));
        page.locator("[name='tap-card']").setInputFiles(Path.of("../examples/tap-m10-left-hand.json"));
        page.waitForURL(Pattern.compile("thread=M10"));
        assertThat(page.locator("[name='chamfer.angle']")).hasValue("");
        assertThat(page.locator("[name='cam.lobes']")).hasValue("3");
    }

    @Test
    void withoutScriptsTheFormStillAnswers() {
        Page page = chromium.page(new Browser.NewContextOptions().setJavaScriptEnabled(false));
        page.navigate(chromium.address(EXAMPLE.address()));
        page.locator("[name='working-relief']").fill("4 deg");
        page.locator("#given button.first").click();
        assertThat(figure(page, "relief.working")).hasText("4.00°");
    }

    @Test
    void backGoesToWhatWasAskedBefore() {
        Page page = desk();
        page.navigate(chromium.address(EXAMPLE.address()));
        page.locator("[name='working-relief']").fill("4 deg");
        page.keyboard().press("Enter");
        assertThat(figure(page, "relief.working")).hasText("4.00°");
        page.goBack();
        assertThat(page.locator("[name='working-relief']"))
                .hasValue(EXAMPLE.typed().getOrDefault("working-relief", ""));
    }
}
