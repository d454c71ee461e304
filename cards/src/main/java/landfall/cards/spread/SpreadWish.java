// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Many set-ups as a person asks for them, in texts.
 *
 * @param question its noun: {@code grind}
 * @param given fields that stand still, by path
 * @param vary laws by the path of the field, in the order they were told
 * @param watch limits by the path of the result, in the order they were told; a blank text is no limits
 * @param numbers fields of {@link SpreadFields#FORM}
 */
public record SpreadWish(
        String question,
        Map<String, String> given,
        Map<String, String> vary,
        Map<String, String> watch,
        Map<String, String> numbers) {
    public SpreadWish {
        given = ordered(given);
        vary = ordered(vary);
        watch = ordered(watch);
        numbers = ordered(numbers);
    }

    private static Map<String, String> ordered(Map<String, String> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
