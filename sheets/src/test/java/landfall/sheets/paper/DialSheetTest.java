// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import static landfall.sheets.paper.SetupSheetTest.A4;
import static landfall.sheets.paper.SetupSheetTest.LETTER;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.ask.DialAsk;
import landfall.cards.ask.Dialled;
import landfall.cards.card.Flat;
import landfall.sheets.draw.Svg;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class DialSheetTest {
    private static final Path HOUSE = Path.of(System.getProperty("landfall.house", ".."));

    /** The invented shop's readings of its left-hand M10, with the fixture, or without it on the crests. */
    private static DialSheet.Dialling m10(boolean fixture) throws IOException {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String card :
                fixture ? List.of("tap-m10-left-hand", "fixture-three-lobes") : List.of("tap-m10-left-hand")) {
            typed.putAll(Flat.read(text(card + ".json")).orThrow());
        }
        String readings = text("readings-m10.csv");
        typed.put("readings", fixture ? readings : readings.replace("chamfer-still", "crest"));
        Dialled dialled = new DialAsk().dialled(typed).orThrow();
        return new DialSheet.Dialling(
                dialled.tap(), dialled.ask(), dialled.found().value(), dialled.cautions());
    }

    private static String text(String name) throws IOException {
        return Files.readString(HOUSE.resolve("examples").resolve(name));
    }

    @Test
    void theGoldenSheetHolds() throws IOException {
        Golden.write("dial-m10-a4.html", DialSheet.html(m10(true), A4));
        Golden.holds("dial-m10-a4.html");
    }

    @Test
    void theTurnsComeFirstThenThreeFacesALandAndEveryReading() throws IOException {
        DialSheet.Dialling dialling = m10(true);
        String html = DialSheet.html(dialling, A4);
        assertThat(html.indexOf("What to turn")).isLessThan(html.indexOf("id=\"dial-1-1-title\""));
        dialling.found().corrections().forEach(turn -> assertThat(html).contains(turn.act()));
        dialling.cautions()
                .forEach(caution -> assertThat(html.replace("&quot;", "\"")).contains(caution.text()));
        Element page = Svg.parse(html);
        assertThat(page.getElementsByTagName("svg").getLength()).isEqualTo(11);
        assertThat(html.split("<td>\u22120.320</td>", -1)).hasSize(3);
    }

    @Test
    void withoutAFixtureNothingIsSaidOfWhatItShouldRead() throws IOException {
        assertThat(DialSheet.html(m10(false), A4))
                .contains("Without a fixture it is not known where it should stand.")
                .doesNotContain("<th>should</th>");
    }

    @Test
    void itIsOneLeafOnEitherPaperAndReadsBack() throws IOException {
        for (SheetOrder order : List.of(A4, LETTER)) {
            try (PDDocument pdf = Loader.loadPDF(DialSheet.pdf(m10(true), order))) {
                assertThat(pdf.getNumberOfPages()).isEqualTo(2);
                assertThat(new PDFTextStripper().getText(pdf).replaceAll("\\s+", " "))
                        .contains("M10x1.5-6H-LH", "increase the radial rise over one lobe", "one division 0.010 mm");
            }
        }
    }
}
