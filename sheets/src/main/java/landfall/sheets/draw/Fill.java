// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import java.util.List;

/** Kinds of filling. */
public enum Fill {
    SOLID("solid", Tone.INK, 1),
    /** The body of a part, in the palest grey that still prints. */
    TINT("tint", Tone.INK, 0.07),
    /** One ink in steps, palest first; ink letters stand on each of them at 4.5 : 1 and better. */
    STEP_1("step-1", Tone.INK, 0.05),
    STEP_2("step-2", Tone.INK, 0.12),
    STEP_3("step-3", Tone.INK, 0.19),
    STEP_4("step-4", Tone.INK, 0.27),
    STEP_5("step-5", Tone.INK, 0.36),
    /** Blanks out what lies behind. */
    SHEET("sheet", Tone.SHEET, 1),
    WANTED("wanted-fill", Tone.ACCENT, 1),
    ALARM("alarm-fill", Tone.RUST, 1);

    private static final List<Fill> STEPS = List.of(STEP_1, STEP_2, STEP_3, STEP_4, STEP_5);

    private final String word;
    private final Tone tone;
    private final double opacity;

    Fill(String word, Tone tone, double opacity) {
        this.word = word;
        this.tone = tone;
        this.opacity = opacity;
    }

    /** The step of a share: 0 the palest, 1 the darkest. */
    public static Fill step(double share) {
        int step = (int) Math.floor(share * STEPS.size());
        return STEPS.get(Math.max(0, Math.min(STEPS.size() - 1, step)));
    }

    String attributes(Ink ink) {
        String veil = opacity < 1 ? " fill-opacity=\"" + Coordinate.text(opacity) + "\"" : "";
        return "class=\"lf-%s\" fill=\"%s\"%s stroke=\"none\"".formatted(word, ink.colour(tone), veil);
    }
}
