// SPDX-License-Identifier: Apache-2.0
package landfall.app.grind;

import java.util.Map;
import landfall.app.build.Build;
import landfall.cards.answer.Document;
import landfall.cards.ask.GrindAsk;
import landfall.cards.ask.GrindTrial;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.quantity.UnitSystem;
import landfall.sheets.paper.PaperSize;
import landfall.sheets.paper.SetupSheet;
import landfall.sheets.paper.SheetOrder;

/** The set-up on paper. */
public final class GrindPaper {
    private static final GrindAsk QUESTION = new GrindAsk();

    private GrindPaper() {}

    /** The paper of a name; what a shop of the answer's units has when none was named. */
    public static Answer<PaperSize> size(String named, UnitSystem units) {
        return switch (named.strip().toLowerCase(java.util.Locale.ROOT)) {
            case "a4" -> Answer.of(PaperSize.A4);
            case "letter" -> Answer.of(PaperSize.LETTER);
            case "" -> Answer.of(units == UnitSystem.INCH ? PaperSize.LETTER : PaperSize.A4);
            default -> Answer.refused(new Finding("paper", named, "must be a4 or letter", "write a4 or letter"));
        };
    }

    /** The sheet as PDF, for the paper named or the usual one. */
    public static Answer<byte[]> pdf(Map<String, String> typed, String paper) {
        try {
            return QUESTION.answer(typed)
                    .then(document -> size(paper, document.units())
                            .then(size -> QUESTION.trial(typed).map(trial -> pdf(trial, document, size))));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static byte[] pdf(GrindTrial trial, Document document, PaperSize size) {
        return SetupSheet.pdf(
                trial.setup(),
                trial.run(),
                new SheetOrder(document.units(), size, Build.running().words()));
    }
}
