// SPDX-License-Identifier: Apache-2.0
package landfall.app.grind;

import java.util.List;
import java.util.Map;
import landfall.cards.ask.GrindAsk;
import landfall.cards.ask.GrindTrial;
import landfall.fault.Answer;
import landfall.grind.GrindSetup;
import landfall.quantity.UnitSystem;
import landfall.sheets.dial.DialRow;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.grind.Sketches;

/**
 * The drawings of a set-up: the same that stand on its paper, in the colours of the page.
 *
 * @param gaps the tightest land unrolled; none when there is no set-up
 * @param dialWords where the dial stands for the faces
 */
public record Pictures(List<Drawing> sketches, List<Drawing> gaps, List<Drawing> dials, String dialWords) {
    static final Pictures NONE = new Pictures(List.of(), List.of(), List.of(), "");

    /** The drawings of what was typed; none when it was refused. */
    static Pictures of(GrindAsk question, Map<String, String> typed, UnitSystem units) {
        Answer<GrindTrial> trial = question.trial(typed);
        return trial instanceof Answer.Of<GrindTrial> of ? of(of.value(), units) : NONE;
    }

    private static Pictures of(GrindTrial trial, UnitSystem units) {
        GrindSetup setup = trial.setup();
        Sketches sketches = new Sketches(setup, new Figures(units), "sketch");
        DialRow dials = new DialRow(setup);
        return new Pictures(
                sketches.all(Ink.SCREEN),
                List.of(sketches.gaps(trial.run(), Ink.SCREEN)),
                dials.draw("dial", Ink.SCREEN),
                dials.words());
    }
}
