// SPDX-License-Identifier: Apache-2.0
package landfall.store.people;

import java.text.Normalizer;
import java.util.Locale;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * What a person signs in with and what events are signed with: letters, figures, point, dash; its case is no matter.
 */
public record PersonName(String text) {
    private static final int LONGEST = 40;

    public static Answer<PersonName> read(String field, String typed) {
        String text = Normalizer.normalize(typed.strip(), Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
        if (text.isEmpty()) {
            return Answer.refused(new Finding(field, "", "is needed", "write a name to sign in with, such as ida"));
        }
        return text.matches("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N}._-]*") && text.length() <= LONGEST
                ? Answer.of(new PersonName(text))
                : Answer.refused(new Finding(
                        field,
                        typed,
                        "is not a name to sign in with",
                        "write up to " + LONGEST
                                + " letters, figures, points and dashes, without blanks, such as ida"));
    }

    @Override
    public String toString() {
        return text;
    }
}
