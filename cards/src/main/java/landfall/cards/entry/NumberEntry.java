// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.fault.Answer;
import landfall.quantity.UnitSystem;

/** Pure numbers, such as a back taper: {@code 0.001}, {@code 1:1000}, {@code 1 µm/mm}, {@code 0.0007 in/in}. */
public final class NumberEntry {
    static final Reader<Double> READER = new Reader<>(
            "a number",
            "0.001 or 1:1000",
            "in/in, mm/mm, µm/mm or none",
            units(),
            (shape, system) -> Optional.of(value -> value));

    private static final Pattern RATIO =
            Pattern.compile("(\\d{1,6}(?:[.,]\\d{1,6})?)\\s*:\\s*(\\d{1,6}(?:[.,]\\d{1,6})?)");

    private NumberEntry() {}

    public static Answer<Double> read(String text) {
        Matcher ratio = RATIO.matcher(Written.plain(text));
        if (!ratio.matches()) {
            return READER.read(text, UnitSystem.METRIC);
        }
        double over = Double.parseDouble(ratio.group(2).replace(',', '.'));
        return over == 0
                ? Written.refused(text, "divides by 0", "write a ratio such as 1:1000")
                : Answer.of(Double.parseDouble(ratio.group(1).replace(',', '.')) / over);
    }

    private static Map<String, DoubleFunction<Double>> units() {
        Map<String, DoubleFunction<Double>> units = new HashMap<>();
        Names.put(units, value -> value, "mm/mm", "in/in");
        Names.put(units, value -> value / 1000, "um/mm", "mm/m", "thou/in");
        return units;
    }
}
