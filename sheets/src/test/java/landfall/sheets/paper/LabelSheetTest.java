// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class LabelSheetTest {
    @Test
    void everyCodeOfAPrintedSheetReadsBackToItsAddress() throws Exception {
        List<Label> labels = labels(14);
        try (PDDocument pdf = Loader.loadPDF(LabelSheet.pdf(labels, PaperSize.A4))) {
            BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(0, 200);
            assertThat(read(page, labels.size()))
                    .containsExactlyElementsOf(
                            labels.stream().map(Label::address).toList());
            assertThat(new PDFTextStripper().getText(pdf)).contains("T0007-").contains("tap M8x1.25 & more");
        }
    }

    @Test
    void manyLabelsTakeMorePagesAndNoneIsCut() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(LabelSheet.pdf(labels(60), PaperSize.LETTER))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(3);
        }
    }

    private static List<Label> labels(int count) {
        return Stream.iterate(1, number -> number + 1)
                .limit(count)
                .map(number -> "T%04d-X".formatted(number))
                .map(mark -> new Label(mark, "tap M8x1.25 & more", "http://bench.example:8087/crib/" + mark))
                .toList();
    }

    /** Each code by itself, as a phone is held over it: the sheet's cells are 60 by 28 mm, from 10 mm on. */
    private static List<String> read(BufferedImage page, int count) throws Exception {
        double perMm = page.getWidth() / 210.0;
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int x = (int) ((10 + 60 * (i % 3)) * perMm);
            int y = (int) ((10 + 28 * (i / 3)) * perMm);
            int wide = (int) (29 * perMm);
            int[] pixels = page.getRGB(x, y, wide, wide, null, 0, wide);
            var light = new RGBLuminanceSource(wide, wide, pixels);
            texts.add(new QRCodeReader()
                    .decode(new BinaryBitmap(new HybridBinarizer(light)))
                    .getText());
        }
        return texts;
    }
}
