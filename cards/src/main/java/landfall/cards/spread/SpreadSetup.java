// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.ask.Question;
import landfall.fault.Answer;
import landfall.spread.Model;
import landfall.spread.Plan;
import landfall.spread.Run;

/**
 * Many set-ups, judged and ready to run.
 *
 * @param wish as it was asked for; the same wish makes the same run
 * @param given fields that stand still, those included that are held as the set-up asks for
 * @param nominal the answer when nothing is off
 */
public record SpreadSetup(
        SpreadWish wish,
        Map<String, String> given,
        Document nominal,
        List<Varied> varied,
        List<Watched> watched,
        Plan plan) {
    public SpreadSetup {
        given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
        varied = List.copyOf(varied);
        watched = List.copyOf(watched);
    }

    /** The set-up, or everything that is wrong with the wish. */
    public static Answer<SpreadSetup> of(SpreadWish wish) {
        return SpreadJudge.judge(wish);
    }

    Question question() {
        return SpreadFields.question(wish.question()).orElseThrow();
    }

    /** What answers a set-up: the question's asker, or a closed form that gives the same. */
    public Model model() {
        return ClosedForm.of(this).orElseGet(this::asked);
    }

    /** The question's own asker. */
    public Model asked() {
        return new AskedModel(this);
    }

    public Run run(int threads) {
        return new Run(plan, model(), threads);
    }
}
