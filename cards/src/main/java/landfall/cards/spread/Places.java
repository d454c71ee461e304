// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.Locale;
import landfall.cards.answer.Unit;
import landfall.quantity.UnitSystem;
import landfall.spread.Moments;

/**
 * With how many places figures of a result are shown: as many as leave the last one within twice the sampling error of
 * the mean, and never more than the unit has.
 */
public record Places(int places, Unit unit, UnitSystem units) {
    public static Places of(Moments moments, Unit unit, UnitSystem units) {
        double error = unit.in(units, moments.deviation()) / Math.sqrt(Math.max(1, moments.count()));
        int most = unit.places(units);
        int told = error > 0 ? (int) Math.floor(-Math.log10(2 * error) + 1) : most;
        return new Places(Math.max(0, Math.min(most, told)), unit, units);
    }

    /** A value held in the metric unit. */
    public String of(double held) {
        return shown(places, held);
    }

    /** A standard deviation: one place more where the unit has it. */
    String finer(double held) {
        return shown(Math.min(places + 1, unit.places(units)), held);
    }

    /** A value with its unit, with the places of the unit. */
    static String whole(double held, Unit unit, UnitSystem units) {
        String sign = unit == Unit.PURE ? "" : " " + unit.sign(units);
        return new Places(unit.places(units), unit, units).of(held) + sign;
    }

    private String shown(int shown, double held) {
        String text = String.format(Locale.ROOT, "%." + shown + "f", unit.in(units, held));
        return text.matches("-0\\.?0*") ? text.substring(1) : text;
    }
}
