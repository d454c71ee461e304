// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import java.util.Locale;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * What a job is called by: {@code J}, a number of four figures or more, and a check character as {@link Mark} has it.
 * Every job is numbered by the program, so that a number misread from a card is told from another job's.
 */
public record JobNumber(String text) {
    /** A number as somebody typed it or as a scanner read it. */
    public static Answer<JobNumber> read(String typed) {
        String text = typed.strip().toUpperCase(Locale.ROOT);
        if (!text.matches("J\\d{4,12}-[A-Z0-9]")) {
            return Answer.refused(new Finding(
                    "number",
                    typed,
                    "is not the number of a job",
                    "write it as it stands on the card, such as J0007-" + Mark.check("J0007")));
        }
        String body = text.substring(0, text.length() - 2);
        char right = Mark.check(body);
        if (text.charAt(text.length() - 1) != right) {
            return Answer.refused(new Finding(
                    "number",
                    typed,
                    "has a check character that does not agree with its number",
                    "read the card again: " + body + " ends in -" + right));
        }
        return Answer.of(new JobNumber(text));
    }

    public static JobNumber numbered(long number) {
        String body = "J" + String.format(Locale.ROOT, "%04d", number);
        return new JobNumber(body + "-" + Mark.check(body));
    }

    @Override
    public String toString() {
        return text;
    }
}
