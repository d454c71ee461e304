// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.Length;
import landfall.tap.Wear;

/** Wear of a tap: fresh, due, spent, or the width of the wear land. */
final class WearKind {
    private static final Map<String, Wear> STATES =
            Kinds.ordered("fresh", Wear.FRESH, "due", Wear.DUE, "spent", Wear.SPENT);
    private static final Kind<Length> WIDTH = Quantities.length(0, 5);
    private static final String WORDS = "fresh, due, spent, or the width of the wear land: 0.2 mm";

    static final Kind<Wear> WEAR = new Kind<>(
            WORDS,
            (text, bare) -> {
                Wear state = STATES.get(text.strip().toLowerCase(Locale.ROOT));
                return state != null
                        ? Answer.of(state)
                        : width(text, WIDTH.reading().read(text, bare));
            },
            Kinds.ordered("type", List.of("string", "number"), "description", WORDS));

    private WearKind() {}

    private static Answer<Wear> width(String text, Answer<Length> width) {
        boolean isWord = !text.matches(".*\\d.*");
        return isWord
                ? Answer.refused(new Finding("", text, "is no state of wear", "write " + WORDS))
                : width.map(Wear::of);
    }
}
