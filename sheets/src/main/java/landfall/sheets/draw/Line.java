// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

/** Kinds of line, with the two widths of ISO 128 for a drawing of this size: 0.5 and 0.25 mm. */
public enum Line {
    OUTLINE("outline", 0.5, "", Tone.INK),
    THIN("thin", 0.25, "", Tone.THIN),
    HIDDEN("hidden", 0.25, "2 0.8", Tone.THIN),
    CENTRE("centre", 0.25, "5 1 0.6 1", Tone.THIN),
    /** A neighbouring part or another position: long dash, two short. */
    PHANTOM("phantom", 0.25, "4.5 0.8 0.6 0.8 0.6 0.8", Tone.THIN),
    HATCH("hatch", 0.18, "", Tone.THIN),
    /** What the program proposes. */
    WANTED("wanted", 0.5, "", Tone.ACCENT),
    /** What must not be overlooked. */
    ALARM("alarm", 0.5, "", Tone.RUST),
    FINE("fine", 0.18, "", Tone.INK);

    private final String word;
    private final double width;
    private final String dashes;
    private final Tone tone;

    Line(String word, double width, String dashes, Tone tone) {
        this.word = word;
        this.width = width;
        this.dashes = dashes;
        this.tone = tone;
    }

    String attributes(Ink ink) {
        String dashed = dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"";
        return "class=\"lf-%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%s\"%s stroke-linejoin=\"round\""
                .formatted(word, ink.colour(tone), Coordinate.text(width), dashed);
    }
}
