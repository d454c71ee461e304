// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cut.CutForecast;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.tap.Tap;
import landfall.thread.CallOut;
import landfall.working.Pen;
import landfall.working.Worked;

/**
 * The causes of a symptom, first the one to look at first.
 *
 * @param tap figures of the tap's card, empty when none was given
 * @param hole figures of the hole, empty when no call-out was given
 * @param cut the forecast, empty unless tap, material and depth were given
 */
public record Diagnosis(
        Symptom symptom,
        Known known,
        List<Ranked> causes,
        Optional<TapFacts> tap,
        Optional<HoleFacts> hole,
        Optional<CutFacts> cut,
        List<Caution> cautions) {

    /**
     * A cause in its place.
     *
     * @param here what this tap, hole or material says about it; empty when nothing is known
     */
    public record Ranked(Cause cause, Likelihood likelihood, String here) {}

    private static final Caution LORE = new Caution(
            "lore",
            "An order to look in, from the lore of the trade: one symptom often has two causes. Change"
                    + " one thing at a time and"
                    + " gauge.");
    private static final Caution SHARDS = new Caution(
            "shards",
            "Broken taps are glass-hard, sharp and under stress: eye protection, no fingers near the pieces. How to get"
                    + " one out: ask broken.");

    public static Worked<Diagnosis> of(Symptom symptom, Known known) {
        return Worked.of(pen -> compute(symptom, known, pen));
    }

    private static Diagnosis compute(Symptom symptom, Known known, Pen pen) {
        Map<String, Fact> facts = new HashMap<>();
        CallOut callOut = known.thread();
        Optional<HoleFacts> hole = callOut == null ? Optional.empty() : HoleFacts.of(callOut, known, pen);
        hole.ifPresent(found -> found.tell(facts));
        if (known.material() != null) {
            MaterialFacts.tell(known.material(), callOut, facts);
        }
        Tap given = known.tap();
        Optional<TapFacts> tap = Optional.empty();
        if (given != null) {
            TapFacts found = TapFacts.of(given, pen);
            found.tell(given, known.material(), facts);
            tap = Optional.of(found);
        }
        List<Caution> cautions = new ArrayList<>(cautions(symptom));
        Optional<CutFacts> cut = cut(known, hole, cautions, pen);
        if (given != null) {
            cut.ifPresent(found -> found.tell(given, facts));
        }
        return new Diagnosis(symptom, known, ranked(symptom, facts), tap, hole, cut, List.copyOf(cautions));
    }

    private static List<Ranked> ranked(Symptom symptom, Map<String, Fact> facts) {
        List<Ranked> ranked = new ArrayList<>();
        for (Cause cause : Cause.of(symptom)) {
            Fact fact = facts.get(cause.fact());
            ranked.add(
                    fact == null
                            ? new Ranked(cause, cause.likelihood(), "")
                            : new Ranked(cause, fact.moved(cause.likelihood()), fact.words()));
        }
        // the sort is stable: within one likelihood the order of the list stays
        ranked.sort(Comparator.comparing(Ranked::likelihood).reversed());
        return List.copyOf(ranked);
    }

    private static Optional<CutFacts> cut(Known known, Optional<HoleFacts> hole, List<Caution> cautions, Pen pen) {
        Answer<Worked<CutForecast>> answer = CutFacts.forecast(known, hole);
        if (answer instanceof Answer.Of<Worked<CutForecast>> of) {
            return Optional.of(CutFacts.of(of.value(), pen));
        }
        if (answer != null) {
            cautions.add(new Caution(
                    "noForecast",
                    "No torque is forecast: " + answer.findings().get(0).sentence(),
                    ""));
        }
        return Optional.empty();
    }

    private static List<Caution> cautions(Symptom symptom) {
        return symptom.code().startsWith("breaks") ? List.of(LORE, SHARDS) : List.of(LORE);
    }
}
