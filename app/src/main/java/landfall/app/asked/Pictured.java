// SPDX-License-Identifier: Apache-2.0
package landfall.app.asked;

import java.util.List;
import java.util.Map;
import landfall.cards.ask.LifeAsk;
import landfall.fault.Answer;
import landfall.quantity.UnitSystem;
import landfall.regrind.SharpeningsLeft;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.life.LifeView;
import landfall.sheets.life.LifeWords;
import landfall.working.Worked;

/**
 * What a page shows of an answer beside its figures.
 *
 * @param said the same as the drawings, in sentences
 */
public record Pictured(List<Drawing> drawings, List<String> said) {
    static final Pictured NOTHING = new Pictured(List.of(), List.of());

    public Pictured {
        drawings = List.copyOf(drawings);
        said = List.copyOf(said);
    }

    /** The life line of a tap. */
    static Pictured of(LifeAsk question, Map<String, String> given, UnitSystem units) {
        if (!(question.left(given) instanceof Answer.Of<Worked<SharpeningsLeft>> of)) {
            return NOTHING;
        }
        SharpeningsLeft left = of.value().value();
        Figures figures = new Figures(units);
        return new Pictured(
                List.of(new LifeView(left, figures).draw("life", Ink.SCREEN)),
                new LifeWords(left, figures).sentences());
    }
}
