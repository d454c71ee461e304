// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import landfall.sheets.draw.Typeface;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Answers every call for a font that is not embedded with the bundled one. The library's own way reads through all
 * fonts of the machine and leaves a cache file in the home folder, which takes seconds and makes a sheet depend on the
 * machine.
 */
final class OneFont implements FontMapper {
    private final TrueTypeFont font;

    OneFont() {
        try (InputStream in = OneFont.class.getResourceAsStream(Typeface.REGULAR.resource())) {
            font = new TTFParser().parse(new RandomAccessReadBuffer(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, true);
    }

    @Override
    public CIDFontMapping getCIDFont(String baseFont, PDFontDescriptor descriptor, PDCIDSystemInfo info) {
        return new CIDFontMapping(null, font, true);
    }
}
