// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import java.math.MathContext;
import java.math.RoundingMode;
import landfall.cards.answer.Unit;
import landfall.quantity.Rounding;
import landfall.quantity.UnitSystem;

/** Numbers as they are shown. */
public final class Digits {
    /** Enough to follow a formula with a pocket calculator. */
    private static final MathContext POCKET = new MathContext(7, RoundingMode.HALF_UP);

    private static final int ESTIMATED = 3;

    private Digits() {}

    /** A value held in metric, in the system asked for, with the places that its unit is shown with. */
    public static String shown(double held, Unit unit, UnitSystem units) {
        int places = unit == Unit.ANGLE ? 2 : unit.places(units);
        var rounded = Rounding.decimal(unit.in(units, held)).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0
                ? rounded.abs().toPlainString()
                : rounded.toPlainString().replace('-', '−');
    }

    /** A pure number with the places of its unit and no idle noughts. */
    public static String plain(double held, Unit unit) {
        String text = shown(held, unit, UnitSystem.METRIC);
        return text.indexOf('.') < 0 ? text : text.replaceFirst("\\.?0+$", "");
    }

    /** The ends of a band: a pure number or a torque that is only estimated gets three significant digits at most. */
    public static String estimated(double held, Unit unit, UnitSystem units) {
        if ((unit != Unit.PURE && unit != Unit.TORQUE) || held == 0) {
            return shown(held, unit, units);
        }
        int whole = (int) Math.floor(Math.log10(Math.abs(held))) + 1;
        int places = Math.max(0, Math.min(unit.places(units), ESTIMATED - whole));
        return Rounding.decimal(held)
                .setScale(places, RoundingMode.HALF_UP)
                .toPlainString()
                .replace('-', '\u2212');
    }

    /** With its sign, unless it rounds to nothing. */
    public static String signed(double held, Unit unit, UnitSystem units) {
        String text = shown(held, unit, units);
        boolean nought = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return nought || text.startsWith("−") ? text : "+" + text;
    }

    /** An angle in degrees with no more than two decimals and no idle ones. */
    public static String shortAngle(double deg) {
        var rounded = Rounding.decimal(deg).setScale(2, RoundingMode.HALF_UP);
        return (rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString()) + "°";
    }

    /** Up to seven significant digits and no idle noughts. */
    public static String plain(double value) {
        if (value == 0) {
            return "0";
        }
        return Rounding.decimal(value).round(POCKET).stripTrailingZeros().toPlainString();
    }

    /** The unit's sign as it stands beside a figure on a page. */
    public static String sign(Unit unit, UnitSystem units) {
        return switch (unit) {
            case ANGLE -> "°";
            case PURE -> "";
            default -> unit.sign(units);
        };
    }
}
