// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 */
public record Diagnosis(
        Symptom symptom,
        Known known,
        List<Ranked> causes,
        Optional<TapFacts> tap,
        Optional<HoleFacts> hole,
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
            "Broken taps are glass-hard, sharp and under stress: eye protection, no fingers near the pieces.");

    public static Worked<Diagnosis> of(Symptom symptom, Known known) {
        return Worked.of(pen -> compute(symptom, known, pen));
    }

    private static Diagnosis compute(Symptom symptom, Known known, Pen pen) {
        Map<String, Fact> facts = new HashMap<>();
        CallOut callOut = known.callOut() != null || known.tap() == null
                ? known.callOut()
                : known.tap().callOut();
        Optional<HoleFacts> hole = callOut == null ? Optional.empty() : HoleFacts.of(callOut, pen);
        hole.ifPresent(found -> found.tell(facts));
        if (known.material() != null) {
            MaterialFacts.tell(known.material(), facts);
        }
        Tap given = known.tap();
        Optional<TapFacts> tap = Optional.empty();
        if (given != null) {
            TapFacts found = TapFacts.of(given, pen);
            found.tell(given, known.material(), facts);
            tap = Optional.of(found);
        }
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
        return new Diagnosis(symptom, known, List.copyOf(ranked), tap, hole, cautions(symptom));
    }

    private static List<Caution> cautions(Symptom symptom) {
        return symptom.code().startsWith("breaks") ? List.of(LORE, SHARDS) : List.of(LORE);
    }
}
