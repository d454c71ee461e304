// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import static landfall.sheets.paper.SetupSheetTest.A4;
import static landfall.sheets.paper.SetupSheetTest.LETTER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import landfall.grind.GrindSetup;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;
import landfall.sheets.grind.Sketches;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PdfTest {
    static Stream<GrindSetup> setups() {
        return Stream.of(
                ShopTaps.plug(),
                ShopTaps.leftHand(),
                ShopTaps.oneArc(),
                ShopTaps.bothSlides(),
                ShopTaps.large(),
                ShopTaps.small(),
                Examples.wornHalfInch(),
                Examples.leftHand());
    }

    /** One leaf to set and grind by, front and back, and one for afterwards: what to measure, what to find. */
    @ParameterizedTest
    @MethodSource("setups")
    void aSheetIsALeafToGrindByAndALeafForAfterwards(GrindSetup setup) throws IOException {
        for (SheetOrder order : List.of(A4, LETTER)) {
            try (PDDocument pdf = Loader.loadPDF(SetupSheet.pdf(setup, order))) {
                assertThat(pdf.getNumberOfPages())
                        .as("pages on " + order.paper())
                        .isEqualTo(4);
                float height = pdf.getPage(0).getMediaBox().getHeight();
                assertThat(Math.round(height)).isEqualTo(order.paper() == PaperSize.A4 ? 842 : 792);
                PDFTextStripper last = new PDFTextStripper();
                last.setStartPage(3);
                last.setEndPage(3);
                assertThat(last.getText(pdf))
                        .contains("after the grind: measure")
                        .contains("Sharpenings left");
                last.setStartPage(4);
                last.setEndPage(4);
                assertThat(last.getText(pdf)).contains("what to find: run with").contains("share of the cut");
            }
        }
    }

    @Test
    void itsTextReadsBackWithEveryFigureToSet() throws IOException {
        String text = text(SetupSheet.pdf(ShopTaps.plug(), A4));
        assertThat(text)
                .contains("M8x1.25-6H")
                .contains("3 flutes, straight, right hand. Chamfer 9\u00b0, 4.0 threads, point \u00d86.400 mm.")
                .contains("GAP CLEAR.")
                .contains("0.435 mm")
                .contains("heel 37.2\u00b0 0.000 +0.270 \u22120.129 +0.270 \u22120.266 0.000")
                .contains("Prove one full turn of the cam by hand")
                .contains("page 1 of 4")
                .contains("Landfall, test of a sheet");
    }

    @Test
    void inchSheetsReadInInches() throws IOException {
        assertThat(text(SetupSheet.pdf(ShopTaps.leftHand(), LETTER)))
                .contains("5/8-11 UNC-2B-LH")
                .contains("0.1096 in")
                .contains("2.783 mm")
                .contains("GAP NOT CLEAR: do not grind with this cam.")
                .contains("counter-clockwise seen from the shank");
    }

    private static String text(byte[] bytes) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(pdf);
        }
    }

    @Test
    void theSameSheetHasTheSameBytesWhateverTheMachineSpeaks() {
        GrindSetup setup = ShopTaps.plug();
        byte[] first = SetupSheet.pdf(setup, A4);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.FRANCE);
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            assertThat(java.util.Arrays.equals(SetupSheet.pdf(setup, A4), first))
                    .isTrue();
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void bothFacesOfTheFontAreEmbedded() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(SetupSheet.pdf(ShopTaps.plug(), A4))) {
            PDPage page = pdf.getPage(0);
            List<String> names = new ArrayList<>();
            for (COSName name : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(name);
                assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                names.add(font.getName());
            }
            assertThat(names).anyMatch(name -> name.endsWith("+DejaVuSansCondensed"));
            assertThat(names).anyMatch(name -> name.endsWith("+DejaVuSansCondensed-Bold"));
        }
    }

    /** Every drawing by itself: the PDF's renderer must put down about the ink that its lines and letters are. */
    @ParameterizedTest
    @MethodSource("setups")
    void everySketchLeavesItsInk(GrindSetup setup) throws IOException {
        Figures figures = new Figures(landfall.quantity.UnitSystem.METRIC);
        for (Drawing drawing : new Sketches(setup, figures, "s").all(Ink.PAPER)) {
            double share = ink(render(page(drawing.svg())), 0, 0, 1, 1);
            assertThat(share).as(drawing.svg().substring(0, 200)).isBetween(0.004, 0.05);
        }
    }

    /** On the sheet as printed: each place where a drawing stands has ink, found from the words around it. */
    @ParameterizedTest
    @MethodSource("setups")
    void theSheetHasInkWhereItsDrawingsStand(GrindSetup setup) throws IOException {
        byte[] pdf = SetupSheet.pdf(setup, A4);
        BufferedImage image = render(pdf);
        double gap = below(pdf, "GAP");
        double stock = below(pdf, "Stock");
        double dial = below(pdf, "Dial at");
        double relief = below(pdf, "Relief");
        for (int half = 0; half < 2; half++) {
            double left = 0.06 + 0.44 * half;
            assertThat(ink(image, left, gap + 0.02, left + 0.42, stock - 0.01)).isGreaterThan(0.01);
        }
        assertThat(ink(image, 0.06, stock, 0.46, dial - 0.02)).isGreaterThan(0.01);
        for (int face = 0; face < 4; face++) {
            double left = 0.06 + 0.22 * face;
            assertThat(ink(image, left, dial + 0.03, left + 0.21, relief - 0.01))
                    .as("dial " + face)
                    .isGreaterThan(0.03);
        }
    }

    @Test
    void aDrawingThatTheRendererCannotReadIsAFaultAndNotAGap() {
        String svg = new Drawing("d", "t", "d", Spot.at(20, 20), Ink.PAPER)
                .line(Spot.at(0, 0), Spot.at(9, 9), Line.OUTLINE)
                .svg();
        String broken = svg.replace("d=\"M0 0", "d=\"nonsense M0 0");
        assertThatThrownBy(() -> Press.print(page(broken)))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageStartingWith("the sheet could not be printed whole: ");
    }

    private static String page(String svg) {
        return "<!DOCTYPE html><html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>t</title><style>"
                + "@page { size: 100mm 100mm; margin: 0 }</style></head><body>" + svg + "</body></html>";
    }

    private static BufferedImage render(String xhtml) throws IOException {
        return render(Press.print(xhtml));
    }

    private static BufferedImage render(byte[] bytes) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            return new PDFRenderer(pdf).renderImageWithDPI(0, 100);
        }
    }

    /** Share of dark pixels in a part of the page; edges as shares of the page. */
    private static double ink(BufferedImage image, double left, double top, double right, double foot) {
        int dark = 0;
        int all = 0;
        for (int y = (int) (top * image.getHeight()); y < foot * image.getHeight(); y++) {
            for (int x = (int) (left * image.getWidth()); x < right * image.getWidth(); x++) {
                all++;
                dark += (image.getRGB(x, y) & 0xff) < 110 ? 1 : 0;
            }
        }
        return (double) dark / all;
    }

    /** Where on the first page the first line with these words stands, as a share of the page's height. */
    private static double below(byte[] bytes, String words) throws IOException {
        double[] found = {-1};
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            float height = pdf.getPage(0).getMediaBox().getHeight();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    if (found[0] < 0 && text.startsWith(words)) {
                        found[0] = positions.get(0).getYDirAdj() / height;
                    }
                }
            };
            stripper.setEndPage(1);
            stripper.getText(pdf);
        }
        assertThat(found[0]).as("where %s stands", words).isPositive();
        return found[0];
    }
}
