// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import landfall.cards.Cards;
import landfall.cards.answer.Document;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The numerical run in the answer of grind")
class GrindRunTest {
    private static final Map<String, String> TYPED = Cards.typed("tap-m8.json", "fixture-three-lobes.json");

    @Test
    void withoutTheRunAllOtherFiguresAreTheSame() {
        Map<String, Double> whole = new TreeMap<>(figures(new GrindAsk()));
        Map<String, Double> closed = figures(GrindAsk.closedForms());
        assertThat(whole.keySet()).anyMatch(path -> path.startsWith("grind.run."));
        whole.keySet().removeIf(path -> path.startsWith("grind.run."));
        assertThat(closed).containsExactlyInAnyOrderEntriesOf(whole);
    }

    private static Map<String, Double> figures(GrindAsk ask) {
        Document document = ask.answer(TYPED).orThrow();
        return GrindAskTest.figures(document);
    }
}
