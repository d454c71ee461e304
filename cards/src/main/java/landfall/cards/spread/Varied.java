// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.List;
import landfall.cards.answer.Unit;
import landfall.spread.Law;

/**
 * A field that varies.
 *
 * @param path of the field
 * @param typed the law as it was written
 * @param law of its values; of the places in the list where the values are words
 * @param amount what the values are; of words their places
 * @param texts what is put into the field, one for each choice; empty where the value itself is
 * @param isWords whether the values are words
 */
public record Varied(String path, String typed, Law law, Amount amount, List<String> texts, boolean isWords) {
    public Varied {
        texts = List.copyOf(texts);
    }

    /** The text that a value is put in as. */
    String text(double value) {
        if (texts.isEmpty() || !(law instanceof Law.Choices choices)) {
            return amount.text(value);
        }
        return texts.get(choices.values().indexOf(value));
    }

    public Unit unit() {
        return amount.unit();
    }

    /** Whether it takes one of several values that were told, rather than any between two. */
    public boolean isChoice() {
        return law instanceof Law.Choices;
    }
}
