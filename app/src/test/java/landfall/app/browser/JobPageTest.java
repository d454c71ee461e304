// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A drawing's holes on the page: typed, planned, kept, printed, marked. */
class JobPageTest {
    private static Chromium chromium;

    @BeforeAll
    static void open() {
        chromium = new Chromium();
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        for (String[] tap : new String[][] {{"M8x1.25-6H", "T-8"}, {"M6x1-6H", "T-6"}, {"1/4-20 UNC-2B", "T-25"}}) {
            page.navigate(chromium.address("/crib"));
            page.fill("form[method=post] input[name=thread]", tap[0]);
            page.fill("form[method=post] input[name=mark]", tap[1]);
            page.click("form[method=post] button");
        }
        page.context().close();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    private static void hole(Page page, int line, String... cells) {
        page.fill("[name='holes." + line + ".callout']", cells[0]);
        page.fill("[name='holes." + line + ".material']", "C45");
        page.fill("[name='holes." + line + ".depth']", cells[1]);
        page.selectOption("[name='holes." + line + ".kind']", cells[2]);
        page.fill("[name='holes." + line + ".count']", cells[3]);
    }

    private static void three(Page page) {
        page.navigate(chromium.address("/job"));
        hole(page, 1, "M8x1.25-6H", "16", "blind", "12");
        hole(page, 2, "M6x1-6H", "12 mm", "through", "4");
        hole(page, 3, "10-32 UNF-2B", "3/8", "through", "2");
        page.fill("[name=name]", "Bearing block");
    }

    @Test
    void threeHolesAreTypedPlannedKeptPrintedAndMarkedAndTheTapsHistoryShowsThem() throws Exception {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);
        three(page);
        page.click("button[value=plan]");
        assertThat(page.locator("#short + ul").innerText()).contains("No tap on record can do 10-32 UNF-2B");
        assertThat(page.locator("#route ~ .scroll").first().innerText()).contains("drill 6.8 mm", "tap T-8");
        assertThat(page.inputValue("[name='holes.2.callout']"))
                .as("what was typed stays")
                .isEqualTo("M6x1-6H");
        Chromium.picture(page, "job-planned-390");
        page.click("button[formaction='/job']");
        assertThat(page.url()).matches(".*/job/J\\d{4}-[A-Z0-9]");
        String number = page.url().replaceFirst(".*/", "");
        assertThat(page.locator("h1").innerText()).contains(number, "Bearing block");
        byte[] card = page.request()
                .get(chromium.address("/job/" + number + "/card.pdf"))
                .body();
        try (PDDocument pdf = Loader.loadPDF(card)) {
            assertThat(new PDFTextStripper().getText(pdf)).contains(number, "M8x1.25-6H", "T-8", "Drill 6.8 mm");
        }
        page.fill("#count-1", "5");
        page.fill("#by-1", "Ida");
        page.click("form[aria-label='Line 1'] button");
        assertThat(page.locator("form[aria-label='Line 1'] .says").innerText()).contains("done 5 of 12");
        page.click("#told ~ ul a");
        assertThat(page.url()).endsWith("/crib/T-8");
        assertThat(page.locator(".story li").first().innerText())
                .contains("Ida: tapped holes 5", "depth 16 mm", number + " line 1");
        page.goBack();
        page.click("details.given summary");
        page.fill("#back-line", "1");
        page.fill("#back-because", "wrong tap");
        page.click("details.given button");
        assertThat(page.locator("form[aria-label='Line 1'] .says").innerText()).contains("done 0 of 12");
        assertThat(page.locator("#told ~ ul s").count()).isEqualTo(1);
        Chromium.picture(page, "job-kept-390");
        page.context().close();
    }

    @Test
    void nothingTypedIsLostOnARefusal() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        three(page);
        page.fill("[name='holes.2.material']", "kryptonite");
        page.fill("[name='holes.3.callout']", "1/8-27 NPT");
        page.click("button[formaction='/job']");
        assertThat(page.locator(".refused").innerText()).contains("line 2, material", "kryptonite");
        assertThat(page.locator("[name='holes.2.material']").getAttribute("aria-invalid"))
                .isEqualTo("true");
        assertThat(page.inputValue("[name='holes.3.depth']")).isEqualTo("3/8");
        assertThat(page.inputValue("[name=name]")).isEqualTo("Bearing block");
        page.fill("[name='holes.2.material']", "C45");
        page.click("button[value=plan]");
        assertThat(page.locator(".refused").innerText()).contains("line 3, callout", "is a taper thread");
        assertThat(page.inputValue("[name='holes.1.count']")).isEqualTo("12");
        page.context().close();
    }

    @Test
    void aRefusedMarkStandsInItsLineAgain() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        three(page);
        page.click("button[formaction='/job']");
        page.fill("#tap-1", "T-6");
        page.fill("#count-1", "3");
        page.click("form[aria-label='Line 1'] button");
        assertThat(page.locator(".refused").innerText()).contains("is a tap M6x1, and line 1 is M8x1.25-6H");
        assertThat(page.inputValue("#tap-1")).isEqualTo("T-6");
        assertThat(page.inputValue("#count-1")).isEqualTo("3");
        page.fill("#tap-1", "T-8");
        page.click("form[aria-label='Line 1'] button");
        assertThat(page.locator("form[aria-label='Line 1'] .says").innerText()).contains("done 3 of 12");
        page.navigate(chromium.address("/job/J0009-0"));
        assertThat(page.locator(".line-done").count()).isZero();
        page.context().close();
    }

    @Test
    void aTableIsPastedIntoLinesAndWorksWithoutScripts() {
        Page page = chromium.page(new Browser.NewContextOptions().setJavaScriptEnabled(false));
        page.navigate(chromium.address("/job"));
        page.click("text=Paste a table");
        page.fill("[name=paste]", "callout;material;depth\nM8;C45;16");
        page.click("button[value=paste]");
        assertThat(page.locator(".refused").innerText()).contains("have no kind");
        assertThat(page.inputValue("[name=paste]")).contains("M8;C45;16");
        page.fill("[name=paste]", "callout;material;depth;kind;count\nM8;C45;16;blind;4\nM6;C45;9;through;2");
        page.click("button[value=paste]");
        assertThat(page.inputValue("[name='holes.2.callout']")).isEqualTo("M6");
        assertThat(page.inputValue("[name=paste]")).isEmpty();
        page.click("button[value=more]");
        assertThat(page.locator("form.holes fieldset").count()).isGreaterThan(6);
        page.click("button[value=plan]");
        assertThat(page.locator("#route").count()).isEqualTo(1);
        page.context().close();
    }

    @Test
    void theEnterKeyGoesOnToTheNextCellAndFiguresBringUpTheKeypad() {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);
        page.navigate(chromium.address("/job"));
        page.focus("[name='holes.1.callout']");
        page.keyboard().type("M8");
        page.keyboard().press("Enter");
        page.keyboard().type("C45");
        page.keyboard().press("Enter");
        page.keyboard().type("16");
        assertThat(page.inputValue("[name='holes.1.material']")).isEqualTo("C45");
        assertThat(page.inputValue("[name='holes.1.depth']")).isEqualTo("16");
        assertThat(page.locator("[name='holes.1.count']").getAttribute("inputmode"))
                .isEqualTo("numeric");
        page.context().close();
    }

    @Test
    void theLinksOfALineOpenItsQuestionsWithTheSubjectFilledIn() {
        Page page = chromium.page(Chromium.DESKTOP, ColorScheme.LIGHT);
        three(page);
        page.click("button[value=plan]");
        Page hole = page.waitForPopup(() -> page.click("text=hole in full >> nth=0"));
        assertThat(hole.inputValue("[name=thread]")).isEqualTo("M8x1.25-6H");
        assertThat(hole.inputValue("[name=depth]")).isEqualTo("16.000 mm");
        assertThat(hole.locator(".refused").count()).isZero();
        assertThat(page.inputValue("[name='holes.3.callout']")).isEqualTo("10-32 UNF-2B");
        page.context().close();
    }
}
