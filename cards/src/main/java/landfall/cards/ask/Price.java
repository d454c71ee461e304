// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.cards.entry.NumberEntry;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * An amount of money.
 *
 * @param currency three letters, empty where none was named
 */
record Price(double amount, String currency) {
    private static final String WORDS = "an amount of money, its currency if you like: 24.50, 24.50 EUR";
    private static final Pattern SHAPE = Pattern.compile("([A-Za-z]{3})?\\s*([^A-Za-z]+?)\\s*([A-Za-z]{3})?");

    static final Kind<Price> KIND = new Kind<>(
            WORDS,
            (text, bare) -> read(text),
            Kinds.ordered("type", java.util.List.of("string", "number"), "description", WORDS));

    private static Answer<Price> read(String text) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches() || (shape.group(1) != null && shape.group(3) != null)) {
            return Answer.refused(new Finding("", text, "is no amount of money", "write " + WORDS));
        }
        String named = shape.group(1) != null ? shape.group(1) : shape.group(3);
        String currency = named == null ? "" : named.toUpperCase(Locale.ROOT);
        return NumberEntry.read(shape.group(2)).map(amount -> new Price(amount, currency));
    }
}
