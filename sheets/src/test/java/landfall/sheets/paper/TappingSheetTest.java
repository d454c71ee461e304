// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import static landfall.sheets.paper.SetupSheetTest.A4;
import static landfall.sheets.paper.SetupSheetTest.LETTER;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.stream.Stream;
import landfall.cards.ask.CutAsk;
import landfall.fault.Caution;
import landfall.sheets.cut.ShopCuts;
import landfall.sheets.cut.ShopCuts.Cut;
import landfall.sheets.cut.Tapping;
import landfall.sheets.draw.Svg;
import landfall.working.Step;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

@DisplayName("The tapping sheet")
class TappingSheetTest {
    static Stream<Cut> cuts() {
        return ShopCuts.all();
    }

    private static List<Step> steps(Cut cut) {
        return new CutAsk().answer(cut.typed()).orThrow().working();
    }

    private static String html(Cut cut, SheetOrder order) {
        return TappingSheet.html(cut.tapping(), steps(cut), order);
    }

    @Test
    void theGoldenSheetsHold() throws IOException {
        // Written first, compared after, so that one run shows every sheet that has changed.
        Golden.write("tapping-m8-a4.html", html(ShopCuts.blind(), A4));
        Golden.write("tapping-half-13-letter.html", html(ShopCuts.halfInch(), LETTER));
        Golden.write(
                "tapping-half-13.txt",
                TappingSheet.text(ShopCuts.halfInch().tapping(), steps(ShopCuts.halfInch()), LETTER));
        Golden.holds("tapping-m8-a4.html");
        Golden.holds("tapping-half-13-letter.html");
        Golden.holds("tapping-half-13.txt");
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void aSheetIsOneLeafOfPaperFrontAndBack(Cut cut) throws IOException {
        for (SheetOrder order : List.of(A4, LETTER)) {
            byte[] bytes = TappingSheet.pdf(cut.tapping(), steps(cut), order);
            try (PDDocument pdf = Loader.loadPDF(bytes)) {
                assertThat(pdf.getNumberOfPages())
                        .as("pages on " + order.paper())
                        .isEqualTo(2);
                int height = Math.round(pdf.getPage(0).getMediaBox().getHeight());
                assertThat(height).isEqualTo(order.paper() == PaperSize.A4 ? 842 : 792);
                for (COSName name : pdf.getPage(0).getResources().getFontNames()) {
                    assertThat(pdf.getPage(0).getResources().getFont(name).isEmbedded())
                            .isTrue();
                }
            }
        }
    }

    @Test
    void theSameSheetHasTheSameBytesWhateverTheMachineSpeaks() {
        Tapping tapping = ShopCuts.blind().tapping();
        List<Step> steps = steps(ShopCuts.blind());
        byte[] first = TappingSheet.pdf(tapping, steps, A4);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.FRANCE);
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            assertThat(Arrays.equals(TappingSheet.pdf(tapping, steps, A4), first))
                    .isTrue();
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void itsTextReadsBackWithEveryFigureToSet() throws IOException {
        Cut cut = ShopCuts.blind();
        try (PDDocument pdf = Loader.loadPDF(TappingSheet.pdf(cut.tapping(), steps(cut), A4))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            var stack = cut.tapping().hole().depth();
            assertThat(stripper.getText(pdf))
                    .contains("M8x1.25-6H", "Tapping sheet", "304", "6.8 mm", "1.250 mm")
                    .contains("%.0f rev/min"
                            .formatted(cut.forecast().pace().spindle().revPerMin()))
                    .contains(cut.figures().coarse(stack.drill()), cut.figures().coarse(stack.tapPoint()))
                    .contains("IT HOLDS.", "GO stops after about 13.8 turns", "Never water or emulsion on magnesium")
                    .contains("licensed practice decide")
                    .contains("page 1 of 2", "Landfall, test of a sheet");
        }
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void everyCautionOfTheJobIsOnTheSheetAndItsIdsAreUnique(Cut cut) {
        String html = html(cut, A4);
        for (Caution caution : cut.forecast().cautions()) {
            assertThat(html.replace("&quot;", "\"").replace("&gt;", ">").replace("&lt;", "<"))
                    .contains(caution.text());
        }
        Element page = Svg.parse(html);
        Set<String> ids = new TreeSet<>();
        var all = page.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            String id = ((Element) all.item(i)).getAttribute("id");
            assertThat(id.isEmpty() || ids.add(id))
                    .as("second element with id %s", id)
                    .isTrue();
        }
        assertThat(page.getElementsByTagName("svg").getLength()).isEqualTo(5);
    }

    @Test
    void theVerdictFollowsTheBands() {
        assertThat(html(ShopCuts.blind(), A4)).contains("<b>IT HOLDS.</b>");
        assertThat(ShopCuts.tooMuch().forecast().load().margin().low()).isLessThan(1);
        assertThat(html(ShopCuts.tooMuch(), A4)).doesNotContain("IT HOLDS.");
    }

    @Test
    void chipsThatStayAreToBeClearedAndThoseThatLeaveAreNot() {
        assertThat(html(ShopCuts.blind(), A4)).contains("Come out and clear the flutes");
        assertThat(html(ShopCuts.bottoming(), A4)).doesNotContain("Come out and clear the flutes");
    }

    /** Every formula shown in short is one of the answer's own steps, with its value. */
    @Test
    void theWorkingInShortIsTheAnswersOwn() {
        Cut cut = ShopCuts.halfInch();
        var lines = new ShortWorking(steps(cut)).lines();
        assertThat(lines).hasSizeGreaterThan(9);
        List<String> formulas = steps(cut).stream()
                .map(step -> step.symbol() + " = " + step.rule().formula())
                .toList();
        assertThat(lines).allSatisfy(line -> assertThat(formulas).contains(line.formula()));
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void thePlainTextKeepsToItsColumnsAndSaysTheSame(Cut cut) {
        String text = TappingSheet.text(cut.tapping(), steps(cut), A4);
        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        assertThat(text).contains("Tapping sheet  " + cut.tap().callOut().normal(), "Spindle", "Working in short");
        String whole = text.replaceAll("\\s+", " ");
        cut.forecast()
                .cautions()
                .forEach(caution -> assertThat(whole).contains(caution.text().replaceAll("\\s+", " ")));
    }
}
