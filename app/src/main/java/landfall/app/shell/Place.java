// SPDX-License-Identifier: Apache-2.0
package landfall.app.shell;

import java.util.Optional;
import java.util.stream.Stream;
import landfall.cards.ask.CutAsk;
import landfall.cards.ask.GaugeAsk;
import landfall.cards.ask.GrindAsk;
import landfall.cards.ask.HoleAsk;
import landfall.cards.ask.Question;
import landfall.cards.ask.TapAsk;
import landfall.cards.ask.ThreadAsk;
import landfall.cards.ask.WhyAsk;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kinds;
import org.jspecify.annotations.Nullable;

/** A page that exists, in the order in which the job goes round. The words on the page are the trade's nouns. */
public enum Place {
    TODAY("/", "Today"),
    THREAD("/thread", "Thread", new ThreadAsk()),
    HOLE("/hole", "Hole", new HoleAsk()),
    TAP("/tap", "Tap", new TapAsk()),
    CUT("/cut", "Cut", new CutAsk()),
    GRIND("/grind", "Grind", new GrindAsk()),
    GAUGE("/gauge", "Gauge", new GaugeAsk()),
    CRIB("/crib", "Crib"),
    JOB("/job", "Job"),
    WHAT_IF("/what-if", "What if"),
    WHY("/why", "Why", new WhyAsk()),
    METHODS("/methods", "Methods");

    /** The crib's list keeps to one size. */
    private static final Form FILTER = Form.of("crib list", Field.optional("thread", Kinds.TEXT, "M8x1.25"));

    private final String path;
    private final String noun;
    private final @Nullable Question question;

    Place(String path, String noun) {
        this(path, noun, null);
    }

    Place(String path, String noun, @Nullable Question question) {
        this.path = path;
        this.noun = noun;
        this.question = question;
    }

    /** What its page asks for; none for a page of records or notes. */
    Optional<Form> form() {
        return this == CRIB
                ? Optional.of(FILTER)
                : Optional.ofNullable(question).map(Question::form);
    }

    /** The noun of the question that its page asks; empty for a page of records or notes. */
    String question() {
        return question == null ? "" : question.noun();
    }

    /** The place of an address, or that of the page which it lies under; none for a page that belongs to no place. */
    static Optional<Place> at(String path) {
        return Stream.of(values())
                .filter(place -> path.equals(place.path) || path.startsWith(place.path + "/"))
                .findFirst();
    }

    /** The same, where its page has fields of a subject. */
    static Optional<Place> askingAt(String path) {
        return at(path).filter(place -> place.form().isPresent());
    }

    public String path() {
        return path;
    }

    public String noun() {
        return noun;
    }
}
