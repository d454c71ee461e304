// SPDX-License-Identifier: Apache-2.0
package landfall.app.question;

import java.util.List;
import java.util.Optional;
import landfall.cards.ask.BrokenAsk;
import landfall.cards.ask.CutAsk;
import landfall.cards.ask.DecideAsk;
import landfall.cards.ask.DialAsk;
import landfall.cards.ask.GaugeAsk;
import landfall.cards.ask.GrindAsk;
import landfall.cards.ask.HoleAsk;
import landfall.cards.ask.IdentifyAsk;
import landfall.cards.ask.InspectAsk;
import landfall.cards.ask.LifeAsk;
import landfall.cards.ask.MarkingAsk;
import landfall.cards.ask.Question;
import landfall.cards.ask.TapAsk;
import landfall.cards.ask.ThreadAsk;
import landfall.cards.ask.WhyAsk;

/** Every question that the program answers, in the order of the job. A new one is one line here. */
public final class Questions {
    private static final List<Question> ALL = List.of(
            new ThreadAsk(),
            new HoleAsk(),
            new TapAsk(),
            new CutAsk(),
            new GrindAsk(),
            new DialAsk(),
            new DecideAsk(),
            new InspectAsk(),
            new LifeAsk(),
            new GaugeAsk(),
            new MarkingAsk(),
            new IdentifyAsk(),
            new WhyAsk(),
            new BrokenAsk());

    private Questions() {}

    public static List<Question> all() {
        return ALL;
    }

    public static List<String> nouns() {
        return ALL.stream().map(Question::noun).toList();
    }

    public static Optional<Question> of(String noun) {
        return ALL.stream().filter(question -> question.noun().equals(noun)).findFirst();
    }
}
