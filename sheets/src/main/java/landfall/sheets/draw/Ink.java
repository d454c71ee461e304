// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

/**
 * The colours of a drawing.
 *
 * <p>{@link #PAPER} is black on white, fixed, as the PDF renderer knows no custom properties. {@link #SCREEN} takes the
 * colour of the text around it and the page's custom properties, so that a dark page turns the drawing dark with it;
 * the fallbacks are the light page's.
 */
public enum Ink {
    PAPER("#000000", "#000000", "#000000", "#000000", "#ffffff"),
    SCREEN(
            "currentColor",
            "var(--thin, #59626a)",
            "var(--blue, #23508f)",
            "var(--rust, #9a4a1c)",
            "var(--sheet, #fffdf7)");

    private final String ink;
    private final String thin;
    private final String accent;
    private final String rust;
    private final String sheet;

    Ink(String ink, String thin, String accent, String rust, String sheet) {
        this.ink = ink;
        this.thin = thin;
        this.accent = accent;
        this.rust = rust;
        this.sheet = sheet;
    }

    String colour(Tone tone) {
        return switch (tone) {
            case INK -> ink;
            case THIN -> thin;
            case ACCENT -> accent;
            case RUST -> rust;
            case SHEET -> sheet;
        };
    }
}
