// SPDX-License-Identifier: Apache-2.0
package landfall.store.people;

import java.text.Normalizer;
import java.util.Locale;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * A password as it was typed. It shows itself nowhere: neither as text of this record nor in a refusal.
 *
 * <p>Least length after NIST SP 800-63B-4 (2025) for a password that is the only proof, as others quote it; composition
 * is not ruled, all characters count, and they are brought to NFKC so that every keyboard types the same.
 */
public record Password(String secret) {
    public static final int LEAST = 15;
    static final int MOST = 200;
    private static final int LEAST_DIFFERENT = 5;

    /** One that was typed to get in; whether it is right is told by its hash alone. */
    public static Password typed(String typed) {
        String cut = typed.length() > MOST ? typed.substring(0, MOST + 1) : typed;
        return new Password(Normalizer.normalize(cut, Normalizer.Form.NFKC));
    }

    /** One that somebody chose. */
    public static Answer<Password> chosen(String field, String typed, PersonName owner) {
        Password password = typed(typed);
        String text = password.secret();
        long length = text.codePoints().count();
        if (length < LEAST) {
            return refused(field, "has " + length + " characters, which are soon guessed");
        }
        if (length > MOST) {
            return refused(field, "is longer than " + MOST + " characters");
        }
        if (text.codePoints().distinct().count() < LEAST_DIFFERENT) {
            return refused(field, "is made of too few different characters");
        }
        String rest = text.toLowerCase(Locale.ROOT).replace(owner.text(), "").replace("landfall", "");
        return rest.codePoints().count() < LEAST / 2
                ? refused(field, "is little more than the name")
                : Answer.of(password);
    }

    private static Answer<Password> refused(String field, String why) {
        return Answer.refused(new Finding(
                field,
                "",
                why,
                "take at least " + LEAST + " characters: four words that have nothing to do with another"));
    }

    @Override
    public String toString() {
        return "(not shown)";
    }
}
