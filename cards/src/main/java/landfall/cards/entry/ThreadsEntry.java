// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import landfall.fault.Answer;
import landfall.quantity.UnitSystem;

/** Lengths counted in threads, such as that of a chamfer: {@code 4}, {@code 1.5}, {@code 4 threads}. */
public final class ThreadsEntry {
    static final Reader<Double> READER = new Reader<>(
            "a number of threads", "4 or 1.5", "threads or none", units(), (shape, system) -> Optional.of(n -> n));

    private ThreadsEntry() {}

    public static Answer<Double> read(String text) {
        return READER.read(text, UnitSystem.METRIC);
    }

    private static Map<String, DoubleFunction<Double>> units() {
        Map<String, DoubleFunction<Double>> units = new HashMap<>();
        Names.put(units, n -> n, "threads", "thread", "pitches", "pitch");
        return units;
    }
}
