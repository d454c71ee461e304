// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashSet;
import java.util.Set;
import javax.imageio.ImageIO;
import landfall.app.example.Examples;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The tap in space, in a real browser")
class BodyPageTest {
    private static Chromium chromium;

    @BeforeAll
    static void open() {
        chromium = Chromium.thatDrawsInSpace();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    private static String path() {
        return Examples.all().get(0).address().replace("/grind?", "/grind/body?");
    }

    @Test
    void theTapIsDrawnAndTurns() throws IOException {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address(Examples.all().get(0).address()));
        page.click("a[href^='/grind/body']");
        page.waitForSelector("#turning:not([hidden])");
        BufferedImage first = canvas(page);
        assertThat(colours(first)).as("colours of the canvas").isGreaterThan(40);
        page.click("button[data-do=right]");
        BufferedImage turned = canvas(page);
        assertThat(differing(first, turned)).as("pixels that a turn changes").isGreaterThan(2000);
        page.click("button[data-do=state]");
        assertThat(differing(turned, canvas(page)))
                .as("pixels that the grind changes")
                .isGreaterThan(200);
        page.click("button[data-do=cut]");
        Chromium.picture(page, "body-turned");
        page.focus("canvas");
        BufferedImage cut = canvas(page);
        page.keyboard().press("ArrowUp");
        assertThat(differing(cut, canvas(page))).as("pixels that a key changes").isGreaterThan(2000);
        assertThat(chromium.complaints()).isEmpty();
    }

    /** Dials run by the readings that the page holds; the body in space turns with them. */
    @Test
    void oneTurnRunsWithItsDialsAndStops() throws IOException {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address(path()));
        page.waitForSelector("#turning:not([hidden])");
        assertThat(page.textContent("#one-turn [data-say]")).isEqualTo("Spindle at 0°, land 1, 0° behind its edge");
        BufferedImage still = canvas(page);
        for (int i = 0; i < 5; i++) {
            page.click("#one-turn button[data-run=on]");
        }
        assertThat(page.textContent("#one-turn [data-say]")).isEqualTo("Spindle at 10°, land 1, 10° behind its edge");
        String[] degrees =
                page.getAttribute("#one-turn .running", "data-needle").split(" ");
        assertThat(page.getAttribute("#one-turn .running [data-part=needle]", "transform"))
                .isEqualTo("rotate(" + degrees[5] + " 22.5 24.4)");
        assertThat(Double.parseDouble(degrees[5])).isPositive();
        assertThat(differing(still, canvas(page)))
                .as("pixels that the turn changes")
                .isGreaterThan(2000);
        page.click("#one-turn button[data-run=next]");
        assertThat(page.textContent("#one-turn [data-say]")).contains("land 2, 0° behind its edge");
        page.click("#one-turn button[data-run=play]");
        page.waitForFunction("() => Number(document.getElementById('one-turn').dataset.moment) > 64");
        page.click("#one-turn button[data-run=play]");
        String stopped = page.getAttribute("#one-turn", "data-moment");
        page.waitForTimeout(400);
        assertThat(page.getAttribute("#one-turn", "data-moment")).isEqualTo(stopped);
        Chromium.picture(page, "body-one-turn");
        assertThat(chromium.complaints()).isEmpty();
    }

    @Test
    void withoutWebGlTheDialsRunAndWithLessMotionOnlyByHand() {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);
        page.addInitScript("HTMLCanvasElement.prototype.getContext = () => null");
        page.emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
        page.navigate(chromium.address(path()));
        page.waitForSelector("#one-turn:not([hidden])");
        assertThat(page.isVisible("#one-turn button[data-run=play]")).isFalse();
        page.click("#one-turn button[data-run=back]");
        assertThat(page.textContent("#one-turn [data-say]")).contains("358°").contains("over a flute");
        assertThat(page.locator("#one-turn .running").last().textContent()).contains("–");
        Chromium.picture(page, "body-dials-phone");
    }

    @Test
    void withoutWebGlTheStillPicturesStandAlone() {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.DARK);
        page.addInitScript("HTMLCanvasElement.prototype.getContext = () => null");
        page.navigate(chromium.address(path()));
        page.waitForFunction("() => [...document.images].every(image => image.complete && image.naturalWidth > 0)");
        assertThat(page.isVisible("#no-turning")).isTrue();
        assertThat(page.isVisible("#turning")).isFalse();
        Chromium.picture(page, "body-still");
    }

    @Test
    void aCardThatIsNotWholeIsToldWhatItLacks() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        page.navigate(chromium.address(path().replaceAll("&?flutes.core=[^&]*", "")));
        assertThat(page.textContent("main"))
                .contains("Core diameter")
                .contains("is needed for the body")
                .contains("measure the core across the flute floors");
        assertThat(chromium.complaints()).allMatch(said -> said.contains("400"));
    }

    private static BufferedImage canvas(Page page) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(page.locator("canvas").screenshot()));
    }

    private static int colours(BufferedImage image) {
        Set<Integer> seen = new HashSet<>();
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                seen.add(image.getRGB(x, y));
            }
        }
        return seen.size();
    }

    private static int differing(BufferedImage a, BufferedImage b) {
        int count = 0;
        for (int x = 0; x < a.getWidth(); x++) {
            for (int y = 0; y < a.getHeight(); y++) {
                if (a.getRGB(x, y) != b.getRGB(x, y)) {
                    count++;
                }
            }
        }
        return count;
    }
}
