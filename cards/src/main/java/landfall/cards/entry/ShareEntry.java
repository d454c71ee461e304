// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import landfall.fault.Answer;
import landfall.quantity.UnitSystem;

/**
 * Shares, as fractions of 1: {@code 70%}, {@code 70}. A bare number of 1 or less is refused: .7 can be .7 % or 70 %.
 */
public final class ShareEntry {
    static final Reader<Double> READER =
            new Reader<>("a share", "70 %", "%", units(), (shape, system) -> Optional.of(percent -> percent / 100));

    private ShareEntry() {}

    public static Answer<Double> read(String text) {
        return READER.read(text, UnitSystem.METRIC).then(share -> {
            boolean bare = Written.plain(text).matches("[+-]?[\\d.,/ -]+");
            return bare && Math.abs(share) <= 0.01 && share != 0
                    ? Written.refused(text, "can be a share of 1 or of 100", "write the % sign: 70 %")
                    : Answer.of(share);
        });
    }

    private static Map<String, DoubleFunction<Double>> units() {
        Map<String, DoubleFunction<Double>> units = new HashMap<>();
        Names.put(units, percent -> percent / 100, "%", "percent", "pct", "per cent", "percent.");
        return units;
    }
}
