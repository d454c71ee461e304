// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.card.TapFields;
import landfall.fault.Answer;
import landfall.thread.callout.CallOuts;
import landfall.thread.callout.Heard;

/** What the reader of a call-out took for granted is told before everything else. */
final class TakenForGranted {
    private TakenForGranted() {}

    static Answer<Document> told(Answer<Document> answer, Map<String, String> typed) {
        return answer.map(document ->
                CallOuts.hear(typed.getOrDefault(TapFields.THREAD.path(), "")) instanceof Answer.Of<Heard> heard
                        ? document.cautionedFirst(heard.value().assumed())
                        : document);
    }
}
