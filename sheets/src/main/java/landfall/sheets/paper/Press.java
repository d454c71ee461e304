// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.EnumSet;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.logging.Level;
import java.util.logging.Logger;
import landfall.sheets.draw.Typeface;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/**
 * Prints XHTML as PDF with the bundled font embedded, the same bytes for the same sheet.
 *
 * <p>The renderer drops a drawing that it cannot read and only says so in its log; here such a line is a fault, so that
 * no sheet leaves without its sketches. It loads nothing from outside: fonts and drawings are in the page.
 *
 * <p>Loaded only when a PDF is asked for: its libraries take seconds to start.
 */
final class Press {
    /** A fixed day, as the sheet's own date stands in its text: PDF dates would make every print differ. */
    private static final int[] FIXED_DAY = {2026, Calendar.JANUARY, 1};

    /** Held, so that its level is not forgotten: it warns that a base font that no sheet uses is not on the machine. */
    private static final Logger FONT_LOG = Logger.getLogger("org.apache.pdfbox.pdmodel.font.PDType1Font");

    static {
        FONT_LOG.setLevel(Level.SEVERE);
        FontMappers.set(new OneFont());
        XRLog.setLoggingEnabled(true);
        XRLog.setLoggerImpl(new Silence());
    }

    private Press() {}

    static byte[] print(String xhtml) {
        List<String> complaints = new ArrayList<>();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.withDiagnosticConsumer(diagnostic -> note(diagnostic, complaints));
        for (Typeface face : Typeface.values()) {
            int weight = face == Typeface.BOLD ? 700 : 400;
            EnumSet<FSFontUseCase> everywhere = EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG);
            builder.useFont(() -> font(face), Typeface.FAMILY, weight, FontStyle.NORMAL, true, everywhere);
        }
        builder.useExternalResourceAccessControl(
                (uri, kind) -> false,
                com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.withHtmlContent(xhtml, null);
        byte[] pdf = run(builder);
        if (!complaints.isEmpty()) {
            throw new IllegalStateException("the sheet could not be printed whole: " + complaints);
        }
        return pdf;
    }

    private static void note(Diagnostic diagnostic, List<String> complaints) {
        if (diagnostic.getLevel().intValue() >= Level.WARNING.intValue()) {
            complaints.add(diagnostic.getFormattedMessage());
        }
    }

    private static InputStream font(Typeface face) {
        InputStream in = Press.class.getResourceAsStream(face.resource());
        if (in == null) {
            throw new IllegalStateException("font is missing: " + face.resource());
        }
        return in;
    }

    private static byte[] run(PdfRendererBuilder builder) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            fix(document);
            document.save(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** Fixed dates and identity: PDFBox draws both from the clock. */
    private static void fix(PDDocument document) {
        Calendar day = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        day.clear();
        day.set(FIXED_DAY[0], FIXED_DAY[1], FIXED_DAY[2]);
        document.getDocumentInformation().setCreationDate(day);
        document.getDocumentInformation().setModificationDate(day);
        document.getDocumentInformation().setProducer("Landfall");
        document.setDocumentId(1L);
        COSArray id = new COSArray();
        id.add(new COSString("landfall-set-up"));
        id.add(new COSString("landfall-set-up"));
        document.getDocument().getTrailer().setItem(COSName.ID, id);
    }
}
