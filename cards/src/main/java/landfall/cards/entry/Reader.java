// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import landfall.fault.Answer;
import landfall.quantity.UnitSystem;

/**
 * Reads one kind of quantity.
 *
 * @param what such as {@code a length}
 * @param example a text that is read, for mends
 * @param allowed the units, as a person reads them
 * @param units each unit, in small letters, as a maker of the quantity
 * @param bare what a number without a unit means
 */
record Reader<T>(String what, String example, String allowed, Map<String, DoubleFunction<T>> units, Bare<T> bare) {
    /** What a number without a unit means; empty when nobody can tell. */
    interface Bare<T> {
        Optional<DoubleFunction<T>> of(Written.Shape shape, UnitSystem system);
    }

    Answer<T> read(String text, UnitSystem system) {
        return Written.read(text, what, example).then(written -> made(text, written, system));
    }

    private Answer<T> made(String text, Written written, UnitSystem system) {
        if (written.unit().isEmpty()) {
            return bare.of(written.shape(), system)
                    .map(maker -> Answer.of(maker.apply(written.number())))
                    .orElseGet(() -> Written.refused(text, "has no unit", "put one of " + allowed + " after it"));
        }
        DoubleFunction<T> maker = units.get(written.unit());
        return maker == null
                ? Written.refused(
                        text,
                        "has a unit that is not one of " + what + ", \"" + written.unit() + "\"",
                        "write it in " + allowed + ", such as " + example)
                : Answer.of(maker.apply(written.number()));
    }
}
