// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.Arrays;
import java.util.Optional;
import landfall.cards.answer.Unit;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.UnitSystem;
import landfall.spread.Within;

/**
 * Reads the limits of a result: {@code 4 deg to 7 deg}, {@code 4 deg..7 deg}, {@code 1.5 or more}, {@code 7 deg or
 * less}, {@code yes}. A bare figure has the unit that the result is shown in.
 */
final class LimitText {
    private static final String MEND =
            "write such as 4 deg to 7 deg, 1.5 or more, 7 deg or less, or nothing for no limits";

    private final String path;
    private final String typed;
    private final Unit unit;
    private final UnitSystem system;

    LimitText(String path, String typed, Unit unit, UnitSystem system) {
        this.path = path;
        this.typed = typed.strip();
        this.unit = unit;
        this.system = system;
    }

    Answer<Within> read() {
        if (typed.isEmpty()) {
            return Answer.of(Within.ANY);
        }
        if (typed.equals("yes") || typed.equals("no")) {
            double side = typed.equals("yes") ? 1 : 0;
            return Answer.of(new Within(side, side));
        }
        if (typed.endsWith(" or more")) {
            return end(typed.replaceFirst(" or more$", "")).map(low -> new Within(low, Double.POSITIVE_INFINITY));
        }
        if (typed.endsWith(" or less")) {
            return end(typed.replaceFirst(" or less$", "")).map(high -> new Within(Double.NEGATIVE_INFINITY, high));
        }
        String[] ends = typed.split("\\s+to\\s+|\\.\\.", -1);
        if (ends.length != 2) {
            return refused("is not limits", MEND);
        }
        return end(ends[0])
                .then(low -> end(ends[1])
                        .then(high -> low <= high
                                ? Answer.of(new Within(low, high))
                                : refused("has its greater end first", "write the lesser end first")));
    }

    /** A figure with its unit, or a bare one. */
    private Answer<Double> end(String text) {
        String plain = text.strip();
        if (plain.matches("[+-]?(\\d+([.]\\d*)?|[.]\\d+)")) {
            double value = Double.parseDouble(plain);
            return Answer.of(
                    unit.hasTwoSigns() && system == UnitSystem.INCH ? value * unit.heldPer(unit.sign(system)) : value);
        }
        Optional<Amount> amount =
                Arrays.stream(Amount.values()).filter(one -> one.unit() == unit).findFirst();
        if (amount.isEmpty()) {
            return refused("is not a figure", "write it without a unit, in " + unit.sign(system));
        }
        Answer<Double> read = amount.get().read(plain, system);
        return read instanceof Answer.Of ? read : refused("is not limits of a figure in " + unit.sign(system), MEND);
    }

    private <T> Answer<T> refused(String why, String mend) {
        return Answer.refused(new Finding("watch." + path, typed, why, mend));
    }
}
