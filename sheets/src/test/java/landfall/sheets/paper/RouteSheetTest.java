// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.ShopLaws;
import landfall.cards.job.JobCard;
import landfall.cards.job.JobPlan;
import landfall.cards.job.JobState;
import landfall.cards.job.JobText;
import landfall.cards.job.RouteText;
import landfall.cards.job.ShopTaps;
import landfall.history.Event;
import landfall.history.Happening;
import landfall.history.History;
import landfall.history.ItemKind;
import landfall.history.JobNumber;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.route.Route;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The route card of the invented shop's bearing block. */
class RouteSheetTest {
    private static final String NUMBER = JobNumber.numbered(7).text();
    private static final String ADDRESS = "http://toolroom.local:7317/job/" + NUMBER;

    private static JobState job() {
        JobCard.Read read = JobCard.of(JobText.read(text("../examples/job-bearing-block.csv"))
                .with(Map.of(
                        "name",
                        "Bearing block <2>",
                        "drive",
                        "mill",
                        "drills",
                        "number, letter, metric",
                        "hour",
                        "60 USD",
                        "tap-price",
                        "18 USD",
                        "spoilt",
                        "40 USD",
                        "gauges",
                        "M8x1.25-6H plug")));
        return new JobState(NUMBER, ((JobCard.Good) read).card(), List.of());
    }

    private static String text(String file) {
        try {
            return Files.readString(Path.of(file));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static ShopTaps.OfCrib tap(String mark, String callOut, Happening... happened) {
        List<Event> events = new ArrayList<>();
        for (Happening what : happened) {
            events.add(new Event(events.size() + 1, Instant.EPOCH.plusSeconds(events.size()), "Ida", what));
        }
        Map<String, String> card =
                ItemForms.lasting(ItemKind.TAP, Map.of("thread", callOut)).orThrow();
        return ShopTaps.OfCrib.of(mark, "", card, History.of(events)).orElseThrow();
    }

    private static Route route() {
        Happening dull = new Happening.Measured(new Happening.Sizes(Length.ofMm(0.3), null, null, null));
        List<ShopTaps.OfCrib> taps = List.of(
                tap("T-17", "M8x1.25-6H"),
                tap("T-18", "M8x1.25-6H", new Happening.Lent("bench 4")),
                tap("T-6", "M6x1", dull),
                tap("T-25", "1/4-20 UNC-2B"));
        return JobPlan.of(
                        job().card(),
                        new JobPlan.Holds(new ShopTaps(taps, key -> ShopLaws.law(key, List.of())), List.of()),
                        LocalDate.of(2026, 11, 30))
                .orThrow()
                .value();
    }

    private static RouteSheet.Content content() {
        return new RouteSheet.Content(job(), route(), ADDRESS);
    }

    private static SheetOrder order(PaperSize paper) {
        return new SheetOrder(UnitSystem.METRIC, paper, "landfall, a test");
    }

    @Test
    void theCardIsAsItWasLookedAt() throws IOException {
        Golden.write("route-a4.html", RouteSheet.html(content(), order(PaperSize.A4)));
        Golden.holds("route-a4.html");
    }

    @Test
    void thePlainTextIsAsItWasLookedAt() throws IOException {
        Golden.write("route.txt", RouteText.write(job(), route()) + "\n");
        Golden.holds("route.txt");
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void theSquareCodeOfThePdfReadsBackToTheJobsAddress(PaperSize paper) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(RouteSheet.pdf(content(), order(paper)))) {
            BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(0, 200);
            int wide = page.getWidth() / 2;
            int high = page.getHeight() / 5;
            int[] pixels = page.getRGB(wide, 0, wide, high, null, 0, wide);
            var light = new RGBLuminanceSource(wide, high, pixels);
            assertThat(new QRCodeReader()
                            .decode(new BinaryBitmap(new HybridBinarizer(light)))
                            .getText())
                    .isEqualTo(ADDRESS);
        }
    }

    @Test
    void onPaperStandWhatIsShortTheOrderEachHoleAndTheCautions() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(RouteSheet.pdf(content(), order(PaperSize.LETTER)))) {
            String said = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertThat(said)
                    .contains(NUMBER, "Bearing block <2>", "Short: see to it first", "Operations, in order")
                    .contains("Sharpen T-6", "Drill 6.8 mm", "Tap and gauge: T-17", "from the far side, after milling")
                    .contains("Broken taps are glass-hard", "the local code and licensed practice decide")
                    .contains("ring test before mounting", "Swarf cuts");
            assertThat(said.indexOf("Short:")).isLessThan(said.indexOf("Operations,"));
        }
    }

    @Test
    void theSameJobGivesTheSameBytes() {
        assertThat(RouteSheet.pdf(content(), order(PaperSize.A4)))
                .isEqualTo(RouteSheet.pdf(content(), order(PaperSize.A4)));
    }

    @Test
    void manyLinesTakeMorePagesAndNoneIsLost() throws IOException {
        String table = "callout,material,depth,kind,count,label\n"
                + java.util.stream.IntStream.rangeClosed(1, 120)
                        .mapToObj(i -> "M6x1-6H,C45,9,through,2,Q" + i + "\n")
                        .collect(java.util.stream.Collectors.joining());
        JobState many = new JobState(NUMBER, ((JobCard.Good) JobCard.of(JobText.read(table))).card(), List.of());
        Route route = JobPlan.of(many.card(), JobPlan.Holds.NOTHING, LocalDate.of(2026, 11, 30))
                .orThrow()
                .value();
        byte[] bytes = RouteSheet.pdf(new RouteSheet.Content(many, route, ADDRESS), order(PaperSize.A4));
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            String said = new PDFTextStripper().getText(pdf);
            assertThat(said).contains("Q1", "Q60", "Q120");
            assertThat(pdf.getNumberOfPages()).isGreaterThan(3);
        }
    }
}
