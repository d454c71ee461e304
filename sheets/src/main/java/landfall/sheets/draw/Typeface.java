// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * The bundled font, DejaVu Sans Condensed: advance widths read from the font file itself (tables head, hhea, hmtx, and
 * cmap format 4 of the OpenType specification), so that text can be placed without a window system.
 */
public enum Typeface {
    REGULAR("DejaVuSansCondensed.ttf"),
    BOLD("DejaVuSansCondensed-Bold.ttf");

    /** Family name, for style sheets. */
    public static final String FAMILY = "DejaVu Sans Condensed";

    /** Height of a capital over the font size: 1493 of 2048 units, the top of the letter H in both faces. */
    public static final double CAP_HEIGHT = 1493.0 / 2048;

    private final String file;

    Typeface(String file) {
        this.file = file;
    }

    /** Where the font stands among the resources. */
    public String resource() {
        return "/landfall/sheets/font/" + file;
    }

    /** Width of a text at a font size, in the unit of the size. */
    public double width(String text, double size) {
        Widths widths = this == REGULAR ? RegularHolder.WIDTHS : BoldHolder.WIDTHS;
        return text.codePoints().mapToDouble(widths::of).sum() * size;
    }

    /** Whether the font has a glyph for every character of a text. */
    public boolean holds(String text) {
        Widths widths = this == REGULAR ? RegularHolder.WIDTHS : BoldHolder.WIDTHS;
        return text.codePoints().allMatch(c -> widths.glyph(c) != 0);
    }

    private static final class RegularHolder {
        static final Widths WIDTHS = Widths.read(REGULAR);
    }

    private static final class BoldHolder {
        static final Widths WIDTHS = Widths.read(BOLD);
    }

    private record Widths(ByteBuffer font, int hmtx, int cmap, int wide, int unitsPerEm) {
        static Widths read(Typeface face) {
            try (InputStream in = Typeface.class.getResourceAsStream(face.resource())) {
                if (in == null) {
                    throw new IllegalStateException("font is missing: " + face.resource());
                }
                ByteBuffer font = ByteBuffer.wrap(in.readAllBytes());
                int wide = font.getShort(table(font, "hhea") + 34) & 0xffff;
                int unitsPerEm = font.getShort(table(font, "head") + 18) & 0xffff;
                return new Widths(font, table(font, "hmtx"), format4(font), wide, unitsPerEm);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static int table(ByteBuffer font, String tag) {
            int wanted =
                    ByteBuffer.wrap(tag.getBytes(StandardCharsets.US_ASCII)).getInt();
            for (int i = 0; i < font.getShort(4); i++) {
                if (font.getInt(12 + 16 * i) == wanted) {
                    return font.getInt(12 + 16 * i + 8);
                }
            }
            throw new IllegalStateException("font has no table " + tag);
        }

        private static int format4(ByteBuffer font) {
            int cmap = table(font, "cmap");
            for (int i = 0; i < font.getShort(cmap + 2); i++) {
                int at = cmap + font.getInt(cmap + 4 + 8 * i + 4);
                if (font.getShort(at) == 4) {
                    return at;
                }
            }
            throw new IllegalStateException("font has no cmap of format 4");
        }

        /** Share of the font size. */
        double of(int character) {
            int glyph = Math.min(glyph(character), wide - 1);
            return (font.getShort(hmtx + 4 * glyph) & 0xffff) / (double) unitsPerEm;
        }

        /** Segments: end codes, a pad, start codes, deltas, offsets into the glyph array. */
        int glyph(int character) {
            int twice = font.getShort(cmap + 6) & 0xffff;
            for (int i = 0; i < twice; i += 2) {
                int end = font.getShort(cmap + 14 + i) & 0xffff;
                if (character > end) {
                    continue;
                }
                int start = font.getShort(cmap + 16 + twice + i) & 0xffff;
                if (character < start) {
                    return 0;
                }
                int delta = font.getShort(cmap + 16 + 2 * twice + i);
                int place = cmap + 16 + 3 * twice + i;
                int offset = font.getShort(place) & 0xffff;
                if (offset == 0) {
                    return (character + delta) & 0xffff;
                }
                int glyph = font.getShort(place + offset + 2 * (character - start)) & 0xffff;
                return glyph == 0 ? 0 : (glyph + delta) & 0xffff;
            }
            return 0;
        }
    }
}
