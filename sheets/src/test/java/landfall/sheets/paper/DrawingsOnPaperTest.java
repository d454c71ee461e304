// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import landfall.choice.TapAdvice;
import landfall.choice.TapWish;
import landfall.gauge.GaugeWish;
import landfall.gauge.Gauging;
import landfall.identity.Identification;
import landfall.identity.Sighting;
import landfall.quantity.Length;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.gauge.GaugeSketches;
import landfall.sheets.tap.BlankView;
import landfall.sheets.tap.CandidatesView;
import landfall.sheets.tap.MarkingView;
import landfall.sheets.thread.ThreadSketches;
import landfall.thread.CallOut;
import landfall.thread.LimitsOfSize;
import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Drawings of threads, gauges and taps on paper")
class DrawingsOnPaperTest {

    @ParameterizedTest
    @ValueSource(strings = {"M8x1.25-6H", "1/4-20 UNC", "1/2-14 NPT", "1/4-20 BSW", "1/2-10 ACME", "STI M8"})
    void threadsAndGaugesLeaveTheirInk(String text) throws IOException {
        CallOut callOut = CallOuts.read(text).orThrow();
        Figures figures = new Figures(callOut.thread().family().system());
        List<Drawing> all =
                new ArrayList<>(new ThreadSketches(LimitsOfSize.of(callOut, Pen.NONE), figures, "t").all(Ink.PAPER));
        Gauging gauging = Gauging.of(callOut, GaugeWish.NOTHING).orThrow().value();
        all.addAll(new GaugeSketches(gauging, GaugeWish.NOTHING, figures, "g").all(Ink.PAPER));
        for (Drawing drawing : all) {
            assertThat(ink(drawing)).as(drawing.svg().substring(0, 200)).isGreaterThan(0.01);
        }
    }

    @Test
    void tapsLeaveTheirInk() throws IOException {
        CallOut callOut = CallOuts.read("1/4-20 UNC").orThrow();
        Figures figures = new Figures(callOut.thread().family().system());
        TapWish wish = new TapWish(callOut, null, TapWish.Place.UNKNOWN, TapWish.Drive.UNKNOWN);
        TapAdvice advice = TapAdvice.of(wish).orThrow().value();
        Sighting sighting =
                new Sighting(Length.ofInch(0.2545), Length.ofInch(0.05), Length.ofMm(0.02), Sighting.Seen.NOTHING);
        Identification found = Identification.of(sighting).value();
        List<Drawing> all = List.of(
                new BlankView(callOut.thread(), advice.reach().orElseThrow(), figures).draw("b", Ink.PAPER),
                new CandidatesView(found, sighting.major(), sighting.uncertainty(), figures).draw("c", Ink.PAPER),
                new MarkingView(List.of(new MarkingView.Part("HSS", "high-speed steel"))).draw("m", Ink.PAPER));
        for (Drawing drawing : all) {
            assertThat(ink(drawing)).as(drawing.svg().substring(0, 200)).isGreaterThan(0.01);
        }
    }

    /** Share of the drawing's own area that is dark. */
    private static double ink(Drawing drawing) throws IOException {
        String xhtml = """
                <html xmlns="http://www.w3.org/1999/xhtml"><head><style>@page { size: %smm %smm; margin: 0; }
                body { margin: 0; }</style></head><body>%s</body></html>
                """.formatted(
                        Math.ceil(drawing.size().x()), Math.ceil(drawing.size().y() + 2), drawing.svg());
        try (PDDocument pdf = Loader.loadPDF(Press.print(xhtml))) {
            BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(0, 100);
            long dark = 0;
            for (int x = 0; x < image.getWidth(); x++) {
                for (int y = 0; y < image.getHeight(); y++) {
                    dark += (image.getRGB(x, y) & 0xff) < 160 ? 1 : 0;
                }
            }
            return dark / (double) (image.getWidth() * image.getHeight());
        }
    }
}
