// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.InputStream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TypefaceTest {
    private static final String SHOWN = "ABCxyz 0123456789 .,:;+\u2212\u00d8\u00b0()\u2022\u26a0\u00b5\u03ba";

    @ParameterizedTest
    @EnumSource(Typeface.class)
    void widthsAreThoseOfAnIndependentReaderOfTheSameFile(Typeface face) throws Exception {
        try (InputStream in = TypefaceTest.class.getResourceAsStream(face.resource());
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
            for (int c : SHOWN.codePoints().toArray()) {
                int glyph = font.getUnicodeCmapLookup().getGlyphId(c);
                double expected = font.getAdvanceWidth(glyph) / 2048.0;
                assertThat(face.width(Character.toString(c), 1))
                        .as(Character.toString(c))
                        .isCloseTo(expected, within(1e-12));
            }
            int capital = font.getGlyph()
                    .getGlyph(font.getUnicodeCmapLookup().getGlyphId('H'))
                    .getYMaximum();
            assertThat(Typeface.CAP_HEIGHT).isCloseTo(capital / 2048.0, within(1e-9));
        }
    }

    @ParameterizedTest
    @EnumSource(Typeface.class)
    void figuresAreTabular(Typeface face) {
        for (char c = '0'; c <= '9'; c++) {
            assertThat(face.width(String.valueOf(c), 1)).isEqualTo(face.width("0", 1));
        }
    }

    @ParameterizedTest
    @EnumSource(Typeface.class)
    void hasEverySignThatASheetPrintsAndSaysWhatItLacks(Typeface face) {
        assertThat(face.holds(SHOWN)).isTrue();
        assertThat(face.holds("\u4e00")).isFalse();
    }
}
