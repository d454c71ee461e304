// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import java.util.Locale;
import java.util.regex.Pattern;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * What a thing of the crib is called by. A shop's own marks are taken as they are, in capitals; the program's own are a
 * letter for the kind, a number of four figures or more and a check character after ISO 7064, MOD 37,36, which tells
 * every wrong character and nearly all neighbours that changed places.
 */
public record Mark(String text) {
    private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private static final int MODULUS = 36;
    private static final int LONGEST = 32;
    private static final Pattern ANY = Pattern.compile("[A-Z0-9][A-Z0-9._-]{0," + (LONGEST - 1) + "}");
    private static final Pattern NUMBERED = Pattern.compile("[TFWDG]\\d{4,12}-[A-Z0-9]");

    /** A mark as somebody typed it: letters, figures, {@code - . _} and no blanks, 32 characters at most. */
    public static Answer<Mark> read(String typed) {
        String text = typed.strip().toUpperCase(Locale.ROOT);
        if (!ANY.matcher(text).matches()) {
            return Answer.refused(new Finding(
                    "mark",
                    typed,
                    "is not a mark",
                    "write up to " + LONGEST + " letters, figures and - . _ without blanks, such as T0042-"
                            + check("T0042")));
        }
        if (NUMBERED.matcher(text).matches()) {
            String body = text.substring(0, text.length() - 2);
            char right = check(body);
            if (text.charAt(text.length() - 1) != right) {
                return Answer.refused(new Finding(
                        "mark",
                        typed,
                        "has a check character that does not agree with its number",
                        "read the label again: " + body + " ends in -" + right));
            }
        }
        return Answer.of(new Mark(text));
    }

    /** The mark of that number. */
    public static Mark numbered(ItemKind kind, long number) {
        String body = kind.letter() + String.format(Locale.ROOT, "%04d", number);
        return new Mark(body + "-" + check(body));
    }

    /** ISO 7064 hybrid system MOD 37,36 over letters and figures. */
    static char check(String body) {
        int product = MODULUS;
        for (int i = 0; i < body.length(); i++) {
            int sum = (product + CHARACTERS.indexOf(body.charAt(i))) % MODULUS;
            product = (sum == 0 ? MODULUS : sum) * 2 % (MODULUS + 1);
        }
        return CHARACTERS.charAt((MODULUS + 1 - product) % MODULUS);
    }

    @Override
    public String toString() {
        return text;
    }
}
