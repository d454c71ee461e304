// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import landfall.cards.answer.Document;
import landfall.cards.ask.GrindAsk;
import landfall.cards.ask.Question;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.spread.Model;

/** Answers each set-up by asking the question, as if somebody had typed it. */
final class AskedModel implements Model {
    private final Question question;
    private final SpreadSetup setup;

    AskedModel(SpreadSetup setup) {
        this.question = quick(setup);
        this.setup = setup;
    }

    /** A numerical run in every set-up only where it is looked at. */
    private static Question quick(SpreadSetup setup) {
        boolean runs =
                setup.watched().stream().anyMatch(watched -> watched.path().startsWith("run."));
        Question asked = setup.question();
        return asked instanceof GrindAsk && !runs ? GrindAsk.closedForms() : asked;
    }

    @Override
    public void answer(double[][] inputs, double[][] results, Consumer<String> refused) {
        List<Varied> varied = setup.varied();
        List<Watched> watched = setup.watched();
        int size = results[0].length;
        for (int k = 0; k < size; k++) {
            if (Thread.currentThread().isInterrupted()) {
                throw new IllegalStateException("stopped inside a block");
            }
            Map<String, String> typed = new HashMap<>(setup.given());
            for (int input = 0; input < inputs.length; input++) {
                Varied field = varied.get(input);
                typed.put(field.path(), field.text(inputs[input][k]));
            }
            Answer<Document> answer = question.answer(typed);
            for (int result = 0; result < results.length; result++) {
                results[result][k] = answer instanceof Answer.Of<Document> of
                        ? watched.get(result).of(of.value()).orElse(Double.NaN)
                        : Double.NaN;
            }
            if (!answer.findings().isEmpty()) {
                refused.accept(reason(answer.findings().get(0)));
            }
        }
    }

    /** The field and the fault, without the figure that differs from set-up to set-up. */
    private static String reason(Finding finding) {
        return finding.field() + " " + finding.why();
    }
}
