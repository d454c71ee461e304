// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Spot;

/** A QR code (ISO/IEC 18004) as a drawing, with the quiet zone of four modules that the standard asks for. */
final class SquareCode {
    private static final int QUIET = 4;

    private SquareCode() {}

    /** Level M: a label in a drawer gets oily, and 15 % of it may. */
    static String svg(String id, String text, double sideMm) {
        ByteMatrix modules = modules(text);
        int across = modules.getWidth() + 2 * QUIET;
        double step = sideMm / across;
        Drawing drawing = new Drawing(id, text, "Square code of " + text, new Spot(sideMm, sideMm), Ink.PAPER);
        List<Outline> dark = new ArrayList<>();
        for (int y = 0; y < modules.getHeight(); y++) {
            int x = 0;
            while (x < modules.getWidth()) {
                int end = x;
                while (end < modules.getWidth() && modules.get(end, y) == 1) {
                    end++;
                }
                if (end > x) {
                    Spot corner = new Spot((QUIET + x) * step, (QUIET + y) * step);
                    dark.add(Outline.rectangle(corner, (end - x) * step, step));
                }
                x = end + 1;
            }
        }
        return drawing.fill(dark, Fill.SOLID).svg();
    }

    private static ByteMatrix modules(String text) {
        try {
            return Encoder.encode(text, ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
                    .getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("too long for a square code: " + text, e);
        }
    }
}
