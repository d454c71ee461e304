// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.regex.Pattern;
import landfall.app.example.Examples;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The page of dial readings as a person uses it: readings in, needles and corrections out. */
class DialPageTest {
    private static final Examples.Example M10 = Examples.all().get(2);
    private static final Path READINGS = Path.of("../examples/readings-m10.csv");
    /** The example's readings as somebody types them at the bench, without names for the columns. */
    private static final String TYPED = """
            1 0 0
            1 20 -.17
            1 37 -.32
            2 0 -.04
            2 20 -.21
            2 37 -.35
            3 0 -.02
            3 20 -.18
            3 37 -.32
            """;

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

    private static Page onTheWayFromTheSetUp(int width) {
        Page page = chromium.page(width, ColorScheme.LIGHT);
        page.navigate(chromium.address(M10.address()));
        page.locator("#answer a.button").getByText("Type your readings").click();
        return page;
    }

    private static Locator readings(Page page) {
        return page.locator("[name='readings']");
    }

    /** Hollow needles are the only outlines on a face that are filled with the sheet's colour. */
    private static int hollow(Page page) {
        return page.locator(".dials.read svg:has(path.lf-sheet)").count();
    }

    @Test
    void readingsTypedBesideTheSetUpPutASecondNeedleOnAndSayWhatToTurn() {
        Page page = onTheWayFromTheSetUp(Chromium.DESKTOP);
        assertThat(page.locator("[name='thread']")).hasValue(M10.typed().get("thread"));
        assertThat(page.locator("[name='cam.lobes']")).hasValue("3");
        assertThat(page.locator("#answer .sheet")).hasCount(0);
        readings(page).fill(TYPED);
        assertThat(page.locator(".land-row")).hasCount(3);
        assertThat(page.locator(".dials.read svg")).hasCount(9);
        assertThat(hollow(page)).isEqualTo(9);
        assertThat(page.locator(".dials.read svg path.lf-solid")).not().hasCount(0);
        assertThat(page.locator(".turns li")).hasCount(5);
        assertThat(page.locator(".turns li").nth(2)).containsText("increase the radial rise over one lobe");
        assertThat(page.locator(".turns li").nth(2)).containsText("0.077 mm");
        assertThat(page.locator("table.readings tbody tr")).hasCount(9);
        assertThat(page.locator(".drawings svg")).hasCount(2);
        assertThat(page.url()).contains("readings=1+0+0");
    }

    @Test
    void theAddressBringsTheReadingsBackAndTheMachineKeepsThem() {
        Page page = onTheWayFromTheSetUp(Chromium.DESKTOP);
        readings(page).fill(TYPED);
        assertThat(page.locator(".land-row")).hasCount(3);
        page.reload();
        assertThat(readings(page)).hasValue(TYPED.strip());
        assertThat(page.locator(".land-row")).hasCount(3);
        page.navigate(chromium.address("/grind/dial"));
        assertThat(readings(page)).hasValue("");
        page.locator("[data-brings]").click();
        assertThat(readings(page)).hasValue(TYPED);
        assertThat(page.locator("[data-brings]")).isHidden();
    }

    @Test
    void aFileOfReadingsGoesIntoTheField() {
        Page page = onTheWayFromTheSetUp(Chromium.DESKTOP);
        page.locator("[name='readings-file']").setInputFiles(READINGS);
        assertThat(page.locator(".land-row")).hasCount(3);
        assertThat(readings(page)).hasValue(Pattern.compile("reading_mm"));
    }

    @Test
    void aReadingThatTheOthersDoNotBearOutIsMarkedByShapeAndWord() {
        Page page = onTheWayFromTheSetUp(Chromium.DESKTOP);
        StringBuilder many = new StringBuilder();
        for (int land = 1; land <= 3; land++) {
            for (int deg = 0; deg <= 36; deg += 6) {
                double slip = land == 2 && deg == 18 ? 0.08 : 0;
                many.append(land).append(' ').append(deg).append(' ');
                many.append(Math.round(100 * (-0.0095 * deg + slip)) / 100.0).append('\n');
            }
        }
        readings(page).fill(many.toString());
        assertThat(page.locator("table.readings .outlier")).hasCount(1);
        assertThat(page.locator("table.readings tr.strong")).containsText("outlier: read again");
        assertThat(page.locator("table.readings .outlier svg rect")).hasCount(1);
        assertThat(page.locator("svg path.lf-alarm")).hasCount(1);
    }

    @Test
    void onTheCrestsWithoutAFixtureThereAreOnlyHollowNeedlesAndThePageSaysWhatItLacks() {
        Page page = onTheWayFromTheSetUp(Chromium.DESKTOP);
        readings(page).fill(TYPED);
        assertThat(page.locator(".land-row")).hasCount(3);
        String bare = page.url().replaceAll("&(cam|wheel|dial|swivel|name|working|cuts)[^&]*", "");
        page.navigate(bare);
        assertThat(page.locator("table.readings thead")).containsText("Should read");
        page.navigate(bare + "&place=crest");
        assertThat(page.locator("#answer")).containsText("Give the fixture, and a black needle shows");
        assertThat(page.locator("table.readings thead")).not().containsText("Should read");
        assertThat(hollow(page)).isEqualTo(9);
    }

    @Test
    void aWrongLineIsNamedAndNothingTypedIsLost() {
        Page page = onTheWayFromTheSetUp(Chromium.DESKTOP);
        readings(page).fill("1 0 0\n1 x -.17\n2 0 -.04");
        assertThat(page.locator(".refused")).containsText("line 2");
        assertThat(readings(page)).hasValue("1 0 0\n1 x -.17\n2 0 -.04");
    }

    @Test
    void readingsOfTwoPlacesAreShownOneAtATime() {
        Page page = onTheWayFromTheSetUp(Chromium.DESKTOP);
        String both = TYPED.replaceAll("(?m)$", " chamfer-still").replaceAll("(?m)^ chamfer-still$", "");
        readings(page).fill(both + "1 0 0 shank\n1 20 .17 shank\n1 37 .33 shank\n");
        assertThat(page.locator(".facts")).containsText("also read: shank");
        page.locator(".facts a").click();
        assertThat(page.locator("h2.subject")).containsText("shank");
        assertThat(page.locator(".land-row")).hasCount(1);
    }

    @Test
    void onAPhoneTheFacesAreLargeEnoughToRead() {
        Page page = onTheWayFromTheSetUp(Chromium.PHONE);
        readings(page).fill(TYPED);
        assertThat(page.locator(".dials.read svg")).hasCount(9);
        double width = page.locator(".dials.read svg").first().boundingBox().width;
        assertThat(width).isGreaterThan(150);
        Object over =
                page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(((Number) over).intValue()).isNotPositive();
    }

    @Test
    void theKeyboardAloneTypesReadingsAndReachesTheAnswer() {
        Page page = onTheWayFromTheSetUp(Chromium.DESKTOP);
        readings(page).focus();
        page.keyboard().type(TYPED);
        assertThat(page.locator(".land-row")).hasCount(3);
        page.locator("#how-slope summary").focus();
        page.keyboard().press("Enter");
        assertThat(page.locator("#how-slope .working")).isVisible();
    }

    @Test
    void withoutScriptsTheReadingsStillAnswer() {
        Page page = chromium.page(new Browser.NewContextOptions().setJavaScriptEnabled(false));
        page.navigate(chromium.address(M10.address().replace("/grind?", "/grind/dial?")));
        readings(page).fill(TYPED);
        page.locator("#given button.first").click();
        assertThat(page.locator(".land-row")).hasCount(3);
        assertThat(hollow(page)).isEqualTo(9);
        page.navigate(chromium.address(M10.address().replace("/grind?", "/grind/dial?")));
        page.locator("[name='readings-file']").setInputFiles(READINGS);
        page.locator("#open").click();
        assertThat(page.locator(".land-row")).hasCount(3);
    }

    @Test
    void whatNoAddressIsLongEnoughForIsAnsweredToo() {
        Page page = onTheWayFromTheSetUp(Chromium.DESKTOP);
        readings(page).fill("# a long note of the day\n".repeat(1200) + TYPED);
        assertThat(page.locator("table.readings tbody tr")).hasCount(9);
        assertThat(page.url()).doesNotContain("readings=");
    }
}
