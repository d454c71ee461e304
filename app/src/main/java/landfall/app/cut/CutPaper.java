// SPDX-License-Identifier: Apache-2.0
package landfall.app.cut;

import java.util.Map;
import java.util.function.BiFunction;
import landfall.app.build.Build;
import landfall.app.grind.GrindPaper;
import landfall.cards.answer.Document;
import landfall.cards.ask.CutAsk;
import landfall.fault.Answer;
import landfall.fault.OutOfRange;
import landfall.sheets.cut.Tapping;
import landfall.sheets.cut.Tappings;
import landfall.sheets.paper.SheetOrder;
import landfall.sheets.paper.TappingSheet;

/** The tapping sheet on paper. */
public final class CutPaper {
    private static final CutAsk QUESTION = new CutAsk();

    private CutPaper() {}

    /** The sheet as PDF, for the paper named or the usual one. */
    public static Answer<byte[]> pdf(Map<String, String> typed, String paper) {
        return sheet(typed, paper, (job, order) -> TappingSheet.pdf(job.tapping, job.document.working(), order));
    }

    /** The sheet as plain text. */
    public static Answer<String> text(Map<String, String> typed) {
        return sheet(typed, "", (job, order) -> TappingSheet.text(job.tapping, job.document.working(), order));
    }

    private record Job(Tapping tapping, Document document) {}

    private static <T> Answer<T> sheet(Map<String, String> typed, String paper, BiFunction<Job, SheetOrder, T> print) {
        try {
            return QUESTION.answer(typed)
                    .then(document -> GrindPaper.size(paper, document.units())
                            .then(size -> Tappings.of(typed)
                                    .map(tapping -> print.apply(
                                            new Job(tapping, document),
                                            new SheetOrder(
                                                    document.units(),
                                                    size,
                                                    Build.running().words())))));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }
}
