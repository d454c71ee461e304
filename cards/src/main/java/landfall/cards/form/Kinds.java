// SPDX-License-Identifier: Apache-2.0
package landfall.cards.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.UnitSystem;

/** The kinds that are not quantities: words, choices, counts. */
public final class Kinds {
    /** Any text that is not blank. */
    public static final Kind<String> TEXT = new Kind<>(
            "text",
            (text, bare) -> text.isBlank()
                    ? refused(text, "is empty", "write something, or leave the field out")
                    : Answer.of(text.strip()),
            ordered("type", "string", "minLength", 1));

    public static final Kind<Boolean> YES_NO = new Kind<>(
            "yes or no",
            Kinds.<Boolean>choice(ordered("yes", true, "no", false, "true", true, "false", false))
                    .reading(),
            ordered("type", List.of("boolean", "string")));

    public static final Kind<UnitSystem> UNITS = choice(ordered("inch", UnitSystem.INCH, "metric", UnitSystem.METRIC));

    private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");

    private Kinds() {}

    /** A whole number between two ends, both included. */
    public static Kind<Integer> count(int least, int most) {
        String allowed = "a whole number from " + least + " to " + most;
        return new Kind<>(
                allowed,
                (text, bare) -> {
                    String digits = text.strip();
                    if (!WHOLE.matcher(digits).matches()) {
                        return refused(text, "is not a whole number", "write " + allowed);
                    }
                    int count = Integer.parseInt(digits);
                    return count < least || count > most
                            ? refused(text, "must be from " + least + " to " + most, "write " + allowed)
                            : Answer.of(count);
                },
                ordered("type", "integer", "minimum", least, "maximum", most));
    }

    /** One of several words, whatever their case; the first of equal meaning is the one that is printed. */
    public static <T> Kind<T> choice(Map<String, T> meanings) {
        List<String> all = new ArrayList<>(meanings.keySet());
        String words = String.join(", ", all);
        return new Kind<>(
                "one of " + words,
                (text, bare) -> {
                    String asked = text.strip().replace(' ', '-');
                    for (Map.Entry<String, T> entry : meanings.entrySet()) {
                        if (entry.getKey().equalsIgnoreCase(asked)) {
                            return Answer.of(entry.getValue());
                        }
                    }
                    return refused(
                            text,
                            "must be one of " + words,
                            "write " + Nearest.of(asked, all) + ", the nearest, or another of them");
                },
                ordered("type", "string", "enum", all));
    }

    /** A map that keeps the order it was written in. */
    @SuppressWarnings("unchecked")
    public static <T> Map<String, T> ordered(Object... keysAndValues) {
        Map<String, T> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put((String) keysAndValues[i], (T) keysAndValues[i + 1]);
        }
        return map;
    }

    private static <T> Answer<T> refused(String given, String why, String mend) {
        return Answer.refused(new Finding("", given, why, mend));
    }
}
