// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import landfall.app.command.Commands;
import landfall.app.command.Exit;
import landfall.app.command.Terminal;
import landfall.store.StoreAddress;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * At the machine, with a phone: from the label on the drawer through the holes and the grinder back into the drawer.
 */
class CribPhoneTest {
    @TempDir
    private static Path folder;

    private static final StoreAddress STORE = Chromium.newStore();
    private static Chromium chromium;

    @BeforeAll
    static void aTapAndAFixtureThatFitsIt() {
        run("crib", "add", "../examples/tap-half-13-worn.json", "--price", "31.00 EUR");
        run("crib", "add", "../examples/fixture-four-lobes.json", "--kind", "fixture", "--mark", "FX-4");
        run("crib", "add", "../examples/fixture-three-lobes.json", "--kind", "fixture", "--mark", "FX-3");
        chromium = new Chromium("127.0.0.1", STORE);
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    private static void run(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--store", STORE.words()));
        var said = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        assertThat(new Commands().run(all, new Terminal(InputStream.nullInputStream(), out, out)))
                .as(said.toString(StandardCharsets.UTF_8))
                .isEqualTo(Exit.DONE);
    }

    /** What a phone's camera reads off the printed label, which is the first of its sheet: 29 mm from 10 mm on. */
    private static String scanned(String mark) throws Exception {
        Path sheet = folder.resolve("label.pdf");
        run("crib", "label", mark, "--sheet", sheet.toString(), "--address", chromium.address(""));
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(sheet))) {
            BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(0, 200);
            int edge = page.getWidth() * 10 / 210;
            int wide = page.getWidth() * 29 / 210;
            int[] pixels = page.getRGB(edge, edge, wide, wide, null, 0, wide);
            var light = new RGBLuminanceSource(wide, wide, pixels);
            return new QRCodeReader()
                    .decode(new BinaryBitmap(new HybridBinarizer(light)))
                    .getText();
        }
    }

    @Test
    void fromTheLabelThroughHolesAndGrinderBackIntoTheDrawer() throws Exception {
        Page page = chromium.page(Chromium.PHONE, ColorScheme.LIGHT);
        page.navigate(scanned("HL-0127"));
        assertThat(page.locator("h1").innerText()).isEqualTo("HL-0127 tap 1/2-13 UNC");
        cuts(page);
        isSetUp(page);
        isSharpened(page);
        isInspected(page);
        page.context().close();
        assertThat(chromium.complaints()).isEmpty();
    }

    private static void cuts(Page page) {
        page.fill("input[name=holes]", "380");
        page.fill("input[name=material]", "4140 annealed");
        page.fill("input[name=depth]", "3/4");
        page.fill("input[name=by]", "Ida");
        write(page, "tapped");
        assertThat(page.locator(".lead").first().innerText())
                .contains("Holes: 380, of them since it was sharp: 380.")
                .contains("ue for sharpening");
        Chromium.picture(page, "phone-1-tapped-390");
    }

    private static void isSetUp(Page page) {
        page.click("nav >> text=measured");
        page.fill("input[name=wear-land]", ".014");
        write(page, "measured");
        page.click(".done >> text=Set the fixture FX-4");
        assertThat(page.inputValue("input[name=wear]")).isEqualTo(".014");
        assertThat(page.inputValue("[name='cam.lobes']")).isEqualTo("4");
        assertThat(page.locator("[data-figure='setting.radial']").first().innerText())
                .isNotBlank();
        assertThat(page.locator(".refused").count()).isZero();
        Chromium.picture(page, "phone-2-set-up-390");
        page.fill("input[name=wear]", ".012");
        page.locator("input[name=wear]").blur();
        page.waitForURL(address -> address.contains("wear=.012"));
        assertThat(page.url()).as("the tap that it was opened for").contains("crib=HL-0127");
    }

    private static void isSharpened(Page page) {
        page.click("text=Write down: sharpened");
        page.selectOption("select[name=way]", "chamfer");
        page.fill("input[name=stock]", ".012");
        write(page, "sharpened");
        assertThat(page.locator(".lead").first().innerText()).contains("Sharpenings: 1", "since it was sharp: 0");
        Chromium.picture(page, "phone-3-sharpened-390");
    }

    private static void isInspected(Page page) {
        page.click(".done >> text=Inspect it");
        assertThat(page.locator(".refused").count()).isZero();
        assertThat(page.inputValue("input[name=thread]")).isEqualTo("1/2-13 UNC-2B");
        Chromium.picture(page, "phone-4-inspect-390");
        page.click("text=Write down: inspected");
        page.fill("input[name=passed]", "yes");
        write(page, "inspected");
        assertThat(page.locator(".story li").allInnerTexts()).hasSize(5);
        Chromium.picture(page, "phone-5-inspected-390");
    }

    private static void write(Page page, String kind) {
        page.click("form.given button.first");
        page.locator(".done:has-text('Written down: " + kind + "')").waitFor();
    }
}
