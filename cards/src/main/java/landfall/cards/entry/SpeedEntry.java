// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import landfall.fault.Answer;
import landfall.quantity.Speed;

/**
 * Cutting and wheel speeds. A bare number is refused: wheels are marked in m/s and ft/min, cuts given in m/min and sfm.
 */
public final class SpeedEntry {
    static final Reader<Speed> READER = new Reader<>(
            "a speed",
            "30 m/s, 12 m/min or 40 sfm",
            "m/min, m/s or ft/min",
            units(),
            (shape, system) -> Optional.empty());

    private SpeedEntry() {}

    public static Answer<Speed> read(String text) {
        return READER.read(text, landfall.quantity.UnitSystem.METRIC);
    }

    private static Map<String, DoubleFunction<Speed>> units() {
        Map<String, DoubleFunction<Speed>> units = new HashMap<>();
        Names.put(units, Speed::ofMPerMin, "m/min", "m/minute", "mpm", "smm");
        Names.put(units, Speed::ofMPerS, "m/s", "m/sec");
        Names.put(units, Speed::ofFtPerMin, "ft/min", "sfm", "sfpm", "fpm", "feet/min", "ft/minute", "surface ft/min");
        return units;
    }
}
