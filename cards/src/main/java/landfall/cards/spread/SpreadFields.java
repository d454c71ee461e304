// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.List;
import java.util.Optional;
import landfall.cards.ask.CutAsk;
import landfall.cards.ask.GaugeAsk;
import landfall.cards.ask.GrindAsk;
import landfall.cards.ask.HoleAsk;
import landfall.cards.ask.InspectAsk;
import landfall.cards.ask.LifeAsk;
import landfall.cards.ask.Question;
import landfall.cards.ask.ThreadAsk;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kinds;

/** What can be asked of many set-ups, and the numbers of a run. */
public final class SpreadFields {
    private static final int MOST = 999_999_999;

    /** Questions that answer in figures, so that their inputs can vary. */
    public static final List<Question> QUESTIONS = List.of(
            new GrindAsk(),
            new CutAsk(),
            new HoleAsk(),
            new GaugeAsk(),
            new ThreadAsk(),
            new LifeAsk(),
            new InspectAsk());

    public static final Field<Integer> SAMPLES = Field.optional("samples", Kinds.count(1, MOST), "10000");
    public static final Field<Integer> SEED = Field.optional("seed", Kinds.count(0, MOST), "7");
    /** How many of the set-ups serve for the sensitivities too; each costs two more than there are fields that vary. */
    public static final Field<Integer> ROWS = Field.optional("sensitivity-samples", Kinds.count(0, MOST), "4096");

    public static final Form FORM = Form.of("spread", SAMPLES, SEED, ROWS);

    static final int USUAL_SAMPLES = 10_000;
    static final int USUAL_SEED = 1;
    static final int USUAL_ROWS = 4096;

    private SpreadFields() {}

    public static Optional<Question> question(String noun) {
        return QUESTIONS.stream()
                .filter(question -> question.noun().equals(noun))
                .findFirst();
    }

    public static List<String> nouns() {
        return QUESTIONS.stream().map(Question::noun).toList();
    }
}
