// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.math.BigDecimal;
import java.util.Optional;
import landfall.cards.answer.Unit;
import landfall.cards.entry.AngleEntry;
import landfall.cards.entry.LengthEntry;
import landfall.cards.entry.NumberEntry;
import landfall.cards.entry.ShareEntry;
import landfall.cards.entry.SpeedEntry;
import landfall.cards.entry.StressEntry;
import landfall.cards.entry.TorqueEntry;
import landfall.cards.entry.TurningEntry;
import landfall.cards.form.Kind;
import landfall.cards.form.Quantities;
import landfall.fault.Answer;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Speed;
import landfall.quantity.Stress;
import landfall.quantity.Torque;
import landfall.quantity.Turning;
import landfall.quantity.UnitSystem;

/** What a field holds when it is a figure: how a text becomes a number, and a number a text of that field. */
public enum Amount {
    LENGTH("mm", Unit.LENGTH, (text, bare) -> LengthEntry.read(text, bare).map(Length::mm)),
    ANGLE("deg", Unit.ANGLE, (text, bare) -> AngleEntry.read(text).map(Angle::deg)),
    SPEED("m/min", Unit.SPEED, (text, bare) -> SpeedEntry.read(text).map(Speed::mPerMin)),
    TURNING("rev/min", Unit.TURNING, (text, bare) -> TurningEntry.read(text).map(Turning::revPerMin)),
    STRESS("N/mm2", Unit.STRESS, (text, bare) -> StressEntry.read(text, bare).map(Stress::nPerMm2)),
    TORQUE("N·m", Unit.TORQUE, (text, bare) -> TorqueEntry.read(text, bare).map(Torque::nm)),
    /** Held per cent, as it is written. */
    SHARE("%", Unit.SHARE, (text, bare) -> ShareEntry.read(text).map(share -> share * 100)),
    COUNT("", Unit.PURE, (text, bare) -> NumberEntry.read(text)),
    NUMBER("", Unit.PURE, (text, bare) -> NumberEntry.read(text));

    private final String sign;
    private final Unit unit;
    private final Kind.Reading<Double> reading;

    Amount(String sign, Unit unit, Kind.Reading<Double> reading) {
        this.sign = sign;
        this.unit = unit;
        this.reading = reading;
    }

    Answer<Double> read(String text, UnitSystem bare) {
        return reading.read(text, bare);
    }

    public Unit unit() {
        return unit;
    }

    /** The text of a value, which the field's reader makes the same number of again. */
    String text(double value) {
        double whole = this == COUNT ? Math.rint(value) : value;
        String digits = new BigDecimal(Double.toString(whole)).toPlainString();
        String plain = digits.replaceFirst("\\.0$", "");
        return sign.isEmpty() ? plain : plain + " " + sign;
    }

    /** What a field holds that has accepted a text; empty where that is a word. */
    static Optional<Amount> of(Kind<?> kind, Object accepted, String text, UnitSystem bare) {
        if (accepted instanceof Length) {
            return Optional.of(LENGTH);
        } else if (accepted instanceof Angle) {
            return Optional.of(ANGLE);
        } else if (accepted instanceof Speed) {
            return Optional.of(SPEED);
        } else if (accepted instanceof Turning) {
            return Optional.of(TURNING);
        } else if (accepted instanceof Stress) {
            return Optional.of(STRESS);
        } else if (accepted instanceof Torque) {
            return Optional.of(TORQUE);
        } else if (accepted instanceof Integer) {
            return Optional.of(COUNT);
        } else if (accepted instanceof Double) {
            return Optional.of(kind == Quantities.SHARE ? SHARE : NUMBER);
        }
        // a field such as the wear takes words as well as lengths
        return LengthEntry.read(text, bare) instanceof Answer.Of ? Optional.of(LENGTH) : Optional.empty();
    }

    /** The number of what a field accepted: names of drills are lengths too. */
    Answer<Double> held(Object accepted, String text, UnitSystem bare) {
        return accepted instanceof Length length ? Answer.of(length.mm()) : read(text, bare);
    }
}
