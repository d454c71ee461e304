// SPDX-License-Identifier: Apache-2.0
package landfall.app.dial;

import java.util.Map;
import landfall.app.build.Build;
import landfall.app.grind.GrindPaper;
import landfall.cards.ask.DialAsk;
import landfall.cards.ask.Dialled;
import landfall.fault.Answer;
import landfall.sheets.paper.DialSheet;
import landfall.sheets.paper.PaperSize;
import landfall.sheets.paper.SheetOrder;

/** A dialling-in on paper. */
public final class DialPaper {
    private static final DialAsk QUESTION = new DialAsk();

    private DialPaper() {}

    /** The sheet as PDF, for the paper named or the usual one. */
    public static Answer<byte[]> pdf(Map<String, String> typed, String paper) {
        return QUESTION.dialled(typed)
                .then(dialled -> GrindPaper.size(paper, dialled.units()).map(size -> pdf(dialled, size)));
    }

    private static byte[] pdf(Dialled dialled, PaperSize size) {
        DialSheet.Dialling dialling = new DialSheet.Dialling(
                dialled.tap(), dialled.ask(), dialled.found().value(), dialled.cautions());
        return DialSheet.pdf(
                dialling, new SheetOrder(dialled.units(), size, Build.running().words()));
    }
}
