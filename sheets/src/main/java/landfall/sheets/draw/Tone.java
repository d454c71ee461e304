// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

/** What a line or a filling is for; {@link Ink} says which colour that is. */
public enum Tone {
    /** Outlines, figures, needles. */
    INK,
    /** Dimension lines, hatching, centre lines. */
    THIN,
    /** What the person may touch and what the program proposes. */
    ACCENT,
    /** What must not be overlooked. */
    RUST,
    /** The sheet itself, to blank out what lies behind. */
    SHEET
}
