// SPDX-License-Identifier: Apache-2.0
package landfall.app.grind;

import java.util.List;
import java.util.Map;
import landfall.cards.ask.GrindAsk;
import landfall.fault.Answer;
import landfall.grind.GrindSetup;
import landfall.quantity.UnitSystem;
import landfall.sheets.dial.DialRow;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.grind.Sketches;
import landfall.working.Worked;

/**
 * The drawings of a set-up: the same that stand on its paper, in the colours of the page.
 *
 * @param dialWords where the dial stands for the faces
 */
public record Pictures(List<Drawing> sketches, List<Drawing> dials, String dialWords) {
    static final Pictures NONE = new Pictures(List.of(), List.of(), "");

    /** The drawings of what was typed; none when it was refused. */
    static Pictures of(GrindAsk question, Map<String, String> typed, UnitSystem units) {
        Answer<Worked<GrindSetup>> setup = question.setup(typed);
        return setup instanceof Answer.Of<Worked<GrindSetup>> of ? of(of.value().value(), units) : NONE;
    }

    private static Pictures of(GrindSetup setup, UnitSystem units) {
        Figures figures = new Figures(units);
        DialRow dials = new DialRow(setup);
        return new Pictures(
                new Sketches(setup, figures, "sketch").all(Ink.SCREEN), dials.draw("dial", Ink.SCREEN), dials.words());
    }
}
