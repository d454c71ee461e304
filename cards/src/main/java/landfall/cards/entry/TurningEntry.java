// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import landfall.fault.Answer;
import landfall.quantity.Turning;
import landfall.quantity.UnitSystem;

/** Speeds of rotation; a bare number is rev/min, the only unit in use. */
public final class TurningEntry {
    static final Reader<Turning> READER = new Reader<>(
            "a speed of rotation",
            "3200 rev/min",
            "rev/min or rpm",
            units(),
            (shape, system) -> Optional.of(Turning::ofRevPerMin));

    private TurningEntry() {}

    public static Answer<Turning> read(String text) {
        return READER.read(text, UnitSystem.METRIC);
    }

    private static Map<String, DoubleFunction<Turning>> units() {
        Map<String, DoubleFunction<Turning>> units = new HashMap<>();
        Names.put(units, Turning::ofRevPerMin, "rev/min", "rpm", "r/min", "1/min", "min1", "u/min", "/min", "revs/min");
        Names.put(units, rps -> Turning.ofRevPerMin(rps * 60), "rev/s", "rps", "r/s", "1/s");
        return units;
    }
}
