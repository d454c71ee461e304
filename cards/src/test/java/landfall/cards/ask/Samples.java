// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.Cards;
import landfall.cards.answer.Document;
import landfall.cards.crib.DueSamples;

/** Answers to every question that between them show every item there is. */
public final class Samples {
    private Samples() {}

    public static List<Question> questions() {
        List<Question> all = new ArrayList<>(List.of(
                new ThreadAsk(),
                new GrindAsk(),
                new GaugeAsk(),
                new MarkingAsk(),
                new IdentifyAsk(),
                new LifeAsk(),
                new DialAsk()));
        all.addAll(WorkSamples.questions());
        all.addAll(MendSamples.questions());
        all.add(new CutAsk());
        return all;
    }

    public static List<Document> documents() {
        List<Document> all = new ArrayList<>();
        for (String callOut : List.of("M8x1.25", "M16xPh3P1.5-6H-LH", "1/2-13 UNC-2A", "1/4-20 UNC", "1/2-14 NPT")) {
            all.add(new ThreadAsk().answer(Map.of("thread", callOut)).orThrow());
        }
        Map<String, String> m8 = new LinkedHashMap<>(Cards.typed("tap-m8.json", "fixture-three-lobes.json"));
        all.add(new GrindAsk().answer(m8).orThrow());
        m8.putAll(Map.of("flutes.kind", "spiral-right", "flutes.helix", "15 deg", "swivel", "9.25 deg"));
        all.add(new GrindAsk().answer(m8).orThrow());
        all.add(new GrindAsk()
                .answer(Cards.typed("tap-half-13-worn.json", "fixture-four-lobes.json"))
                .orThrow());
        all.addAll(gauges());
        all.addAll(GaugeSamples.documents());
        all.add(new IdentifyAsk()
                .answer(Map.of("major", "0.2545", "tpi", "20", "shank", "0.255", "flutes", "4"))
                .orThrow());
        all.add(new LifeAsk().answer(Cards.typed("tap-half-13-worn.json")).orThrow());
        all.addAll(WorkSamples.documents());
        all.addAll(MendSamples.documents());
        Map<String, String> dial =
                new LinkedHashMap<>(Cards.typed("tap-m10-left-hand.json", "fixture-three-lobes.json"));
        dial.put("readings", Cards.text("readings-m10.csv"));
        all.add(new DialAsk().answer(dial).orThrow());
        all.addAll(cuts());
        all.addAll(DueSamples.documents());
        return all;
    }

    private static List<Document> gauges() {
        GaugeAsk gauge = new GaugeAsk();
        return List.of(
                gauge.answer(Map.of("thread", "1/2-13", "wire", ".050", "pitch-diameter", ".45004"))
                        .orThrow(),
                gauge.answer(Map.of("thread", "1/2-13", "wire", ".050", "over", ".53352"))
                        .orThrow(),
                gauge.answer(Map.of(
                                "thread", "M10x1.5", "wire", "0.866", "flutes", "3", "reading", "10.2", "crest",
                                "10.05"))
                        .orThrow(),
                gauge.answer(Map.of("thread", "M10x1.5-6g")).orThrow());
    }

    private static List<Document> cuts() {
        CutAsk cut = new CutAsk();
        Map<String, String> m8 = new LinkedHashMap<>(Cards.typed("tap-m8.json"));
        m8.putAll(Map.of("cuts", "C45", "hole", "6.8 mm", "depth", "12 mm", "blind", "yes", "run-out", "0.02 mm"));
        Map<String, String> half = new LinkedHashMap<>(Cards.typed("tap-half-13-worn.json"));
        half.putAll(Map.of("hole", "27/64", "depth", ".75", "wear", "due"));
        Map<String, String> driven = new LinkedHashMap<>(m8);
        driven.putAll(Map.of("drive", "mill", "holder", "slip", "feed", "1.24 mm", "spindle", "vertical"));
        Map<String, String> hand = new LinkedHashMap<>(m8);
        hand.putAll(Map.of("drive", "hand", "bar", "200 mm"));
        return List.of(
                cut.answer(m8).orThrow(),
                cut.answer(half).orThrow(),
                cut.answer(driven).orThrow(),
                cut.answer(hand).orThrow());
    }
}
