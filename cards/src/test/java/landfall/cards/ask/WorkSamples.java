// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.Cards;
import landfall.cards.answer.Document;

/** Answers about holes and the taps for them that between them show every item there is. */
final class WorkSamples {
    private WorkSamples() {}

    static List<Question> questions() {
        return List.of(new HoleAsk(), new TapAsk(), new WhyAsk(), new BrokenAsk());
    }

    static List<Document> documents() {
        List<Document> all = new ArrayList<>();
        HoleAsk hole = new HoleAsk();
        for (String callOut : List.of("M8x1.25-6H", "1/4-20 UNC-2B", "M10", "0-80 UNF-3B", "M16xPh3P1.5-6H-LH")) {
            all.add(hole.answer(Map.of("thread", callOut)).orThrow());
            all.add(hole.answer(Map.of("thread", callOut, "depth", "10 mm", "blind", "yes", "tap", "straight"))
                    .orThrow());
            all.add(hole.answer(Map.of("thread", callOut, "forming", "yes", "drills", "metric,inch"))
                    .orThrow());
        }
        all.add(hole.answer(Map.of(
                        "thread",
                        "1/2-13 UNC-2B",
                        "depth",
                        "1 in",
                        "through",
                        "yes",
                        "material",
                        "304",
                        "hole",
                        "27/64",
                        "screw-strength",
                        "180 ksi",
                        "part-strength",
                        "45 ksi",
                        "wall",
                        "4 mm",
                        "share",
                        "70%"))
                .orThrow());
        all.add(hole.answer(Map.of("thread", "1/2-14 NPT")).orThrow());
        all.add(hole.answer(Map.of("thread", "STI M8x1.25-5H", "insert", "1.5 D", "blind", "yes"))
                .orThrow());
        all.addAll(taps());
        all.addAll(whys());
        all.addAll(brokens());
        return all;
    }

    private static List<Document> taps() {
        TapAsk tap = new TapAsk();
        return List.of(
                tap.answer(Map.of("thread", "M8")).orThrow(),
                tap.answer(Map.of("thread", "1/4-20 UNC-2B-LH", "material", "304", "depth", ".4", "blind", "yes"))
                        .orThrow(),
                tap.answer(Map.of("thread", "M36x4-6H", "hand", "yes", "through", "yes", "material", "EN-GJL-250"))
                        .orThrow(),
                tap.answer(Map.of("thread", "G 1/2", "machine", "yes", "spindle", "horizontal"))
                        .orThrow());
    }

    private static List<Document> brokens() {
        BrokenAsk broken = new BrokenAsk();
        return List.of(
                broken.answer(Map.of("thread", "M8x1.25-6H")).orThrow(),
                broken.answer(Map.of(
                                "thread",
                                "1/4-20 UNC-2B",
                                "material",
                                "6061-T6",
                                "depth",
                                ".5",
                                "through",
                                "yes",
                                "flutes",
                                "4",
                                "proud",
                                ".2",
                                "worth",
                                "high"))
                        .orThrow(),
                broken.answer(Map.of("thread", "G 1/2", "tap-material", "carbide", "kind", "forming"))
                        .orThrow());
    }

    private static List<Document> whys() {
        WhyAsk why = new WhyAsk();
        Map<String, String> card = new LinkedHashMap<>(Cards.typed("tap-m8.json"));
        card.put("symptom", "breaks-on-reversal");
        card.put("material", "304");
        card.put("depth", "12 mm");
        return List.of(
                why.answer(Map.of()).orThrow(),
                why.answer(Map.of("symptom", "tight-go", "callout", "1/4-20 UNC-2B"))
                        .orThrow(),
                why.answer(card).orThrow());
    }
}
