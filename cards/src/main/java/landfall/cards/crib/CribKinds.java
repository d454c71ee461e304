// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.Price;
import landfall.material.Materials;

/** The kinds that only the crib has: prices, days, materials by name. */
public final class CribKinds {
    private static final Pattern MONEY =
            Pattern.compile("([A-Za-z$£€]{0,3})\\s*(\\d{1,9}(?:\\.\\d{1,4})?)\\s*([A-Za-z$£€]{0,3})");

    public static final Kind<Price> PRICE =
            new Kind<>("a price: 18.50 EUR, 18.50", (text, bare) -> price(text), Map.of("type", "string"));

    static final Kind<LocalDate> DATE =
            new Kind<>("a day: 2027-11-01", (text, bare) -> date(text), Map.of("type", "string", "format", "date"));

    /** A work material, kept by its own name. */
    static final Kind<String> MATERIAL = new Kind<>(
            "a work material by one of its names",
            (text, bare) -> Materials.find("", text).map(found -> found.id()),
            Map.of("type", "string"));

    private CribKinds() {}

    public static <T> Kind<T> words(T[] all, Function<T, String> word) {
        Map<String, T> meanings = new LinkedHashMap<>();
        for (T one : all) {
            meanings.put(word.apply(one), one);
        }
        return Kinds.choice(meanings);
    }

    static String dashed(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Answer<Price> price(String text) {
        Matcher matcher = MONEY.matcher(text.strip());
        if (!matcher.matches()
                || (!matcher.group(1).isEmpty() && !matcher.group(3).isEmpty())) {
            return Answer.refused(
                    new Finding("", text, "is not a price", "write a figure with a decimal point, such as 18.50 EUR"));
        }
        return Answer.of(new Price(new BigDecimal(matcher.group(2)), matcher.group(1) + matcher.group(3)));
    }

    private static Answer<LocalDate> date(String text) {
        try {
            return Answer.of(LocalDate.parse(text.strip()));
        } catch (DateTimeException e) {
            return Answer.refused(
                    new Finding("", text, "is not a day", "write year, month and day, such as 2027-11-01"));
        }
    }
}
