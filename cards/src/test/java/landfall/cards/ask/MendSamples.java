// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.Cards;
import landfall.cards.answer.Document;

/** Answers on mending and inspecting a tap that between them show every item there is. */
final class MendSamples {
    private MendSamples() {}

    static List<Question> questions() {
        return List.of(new DecideAsk(), new InspectAsk());
    }

    static List<Document> documents() {
        return List.of(
                decide(Map.of("wear", "0.2 mm", "new-chamfer-threads", "1.5")),
                decide(Map.of("torn", "3 mm", "price", "24.50 EUR")),
                decide(Map.of("flank", "0.2 mm")),
                inspect(Map.of()),
                inspect(Map.of(
                        "chamfer-lengths", "5.05; 5.02; 5.07",
                        "falls", "0.26; 0.27; 0.26",
                        "run-out", "0.02",
                        "pitch-diameter", "7.236",
                        "uncertainty", "0.004",
                        "ground-back", "0.19",
                        "point-diameter", "6.37")));
    }

    static Document decide(Map<String, String> more) {
        return new DecideAsk().answer(tap(more)).orThrow();
    }

    static Document inspect(Map<String, String> more) {
        return new InspectAsk().answer(tap(more)).orThrow();
    }

    private static Map<String, String> tap(Map<String, String> more) {
        Map<String, String> typed = new LinkedHashMap<>(Cards.typed("tap-m8.json"));
        typed.putAll(more);
        return typed;
    }
}
