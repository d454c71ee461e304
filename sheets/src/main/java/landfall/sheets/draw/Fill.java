// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

/** Kinds of filling. */
public enum Fill {
    SOLID("solid", Tone.INK, 1),
    /** The body of a part, in the palest grey that still prints. */
    TINT("tint", Tone.INK, 0.07),
    /** Blanks out what lies behind. */
    SHEET("sheet", Tone.SHEET, 1),
    WANTED("wanted-fill", Tone.ACCENT, 1),
    ALARM("alarm-fill", Tone.RUST, 1);

    private final String word;
    private final Tone tone;
    private final double opacity;

    Fill(String word, Tone tone, double opacity) {
        this.word = word;
        this.tone = tone;
        this.opacity = opacity;
    }

    String attributes(Ink ink) {
        String veil = opacity < 1 ? " fill-opacity=\"" + Coordinate.text(opacity) + "\"" : "";
        return "class=\"lf-%s\" fill=\"%s\"%s stroke=\"none\"".formatted(word, ink.colour(tone), veil);
    }
}
