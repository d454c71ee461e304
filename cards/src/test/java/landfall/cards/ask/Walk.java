// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import static org.assertj.core.api.Assertions.assertThat;

import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.answer.TextAnswer;
import landfall.cards.words.Words;
import landfall.quantity.UnitSystem;
import landfall.working.Step;

/** Walks an answer: behind every figure stands a step of its working with the same value; every item has its words. */
final class Walk {
    private Walk() {}

    static void through(Document document) {
        for (Document.Shown shown : document.figures()) {
            assertThat(document.working().stream().anyMatch(step -> isBehind(step, shown)))
                    .as("step behind %s = %s in %s", shown.path(), shown.point().value(), document.subject())
                    .isTrue();
        }
        document.walk((path, item) ->
                assertThat(Words.find(path)).as("words for " + path).isPresent());
        for (UnitSystem units : UnitSystem.values()) {
            Document shown = document.in(units);
            assertThat(JsonAnswer.line(shown, true)).doesNotContain("NaN").doesNotContain("Infinity");
            assertThat(TextAnswer.write(shown, true).lines())
                    .allSatisfy(line ->
                            assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(80));
        }
    }

    private static boolean isBehind(Step step, Document.Shown shown) {
        double factor = shown.unit().heldPer(step.rule().unit());
        double value = shown.point().value();
        return step.rule().equals(shown.point().rule())
                && Math.abs(step.value() * factor - value) <= 1e-9 * Math.abs(value) + 1e-12;
    }
}
