// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import java.util.List;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.ask.Question;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import org.jspecify.annotations.Nullable;

/** What a page has to say: nothing yet, why not, or the answer. */
public record Reply(@Nullable AnswerView answer, List<Finding> findings) {
    /** Before anything was asked. */
    public static final Reply NOTHING = new Reply(null, List.of());

    /** Asks the question, if anything was typed. */
    public static Reply to(Question question, Answer<Map<String, String>> typed) {
        if (typed instanceof Answer.Of<Map<String, String>> of && of.value().isEmpty()) {
            return NOTHING;
        }
        try {
            Answer<Document> answer = typed.then(question::answer);
            return answer instanceof Answer.Of<Document> document
                    ? new Reply(new AnswerView(document.value()), List.of())
                    : new Reply(null, answer.findings());
        } catch (OutOfRange e) {
            return new Reply(null, List.of(e.finding()));
        }
    }

    public boolean isRefused() {
        return !findings.isEmpty();
    }
}
