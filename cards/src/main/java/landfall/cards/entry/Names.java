// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import java.util.Map;
import java.util.function.DoubleFunction;

/** The several names of one unit. */
final class Names {
    private Names() {}

    static <T> void put(Map<String, DoubleFunction<T>> units, DoubleFunction<T> maker, String... names) {
        for (String name : names) {
            units.put(name, maker);
        }
    }
}
