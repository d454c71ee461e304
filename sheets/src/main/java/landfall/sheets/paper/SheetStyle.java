// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import landfall.sheets.draw.Typeface;

/** The style of a printed sheet, {@code sheet.css}: only what a CSS 2.1 renderer and a browser both know. */
final class SheetStyle {
    private static final String STYLE = read();

    private SheetStyle() {}

    static String of(PaperSize paper, String foot) {
        return STYLE.replace("PAPER", paper.css())
                .replace("FONT", Typeface.FAMILY)
                .replace("FOOT", quoted(foot));
    }

    private static String read() {
        try (InputStream in = SheetStyle.class.getResourceAsStream("sheet.css")) {
            if (in == null) {
                throw new IllegalStateException("sheet.css is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As a CSS string: quotes, backslashes, and what would end the style element are written as escapes. */
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder();
        text.chars().forEach(c -> {
            if (c == '"' || c == '\\' || c == '<' || c == '&' || c < ' ') {
                quoted.append("\\%06x".formatted(c));
            } else {
                quoted.append((char) c);
            }
        });
        return quoted.toString();
    }
}
