// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import landfall.quantity.Length;
import landfall.quantity.UnitSystem;

/**
 * What a figure of an answer is, with the unit it is held in, the one an inch reader gets, and the places it is shown
 * with. Angles, torque, stress, speed and shares read the same in both systems.
 */
public enum Unit {
    LENGTH("mm", "in", Length.MM_PER_INCH, 3, 4),
    LENGTH_PER_RADIAN("mm/rad", "in/rad", Length.MM_PER_INCH, 4, 5),
    AREA("mm²", "in²", Length.MM_PER_INCH * Length.MM_PER_INCH, 3, 5),
    AREA_PER_LENGTH("mm²/mm", "in²/in", Length.MM_PER_INCH, 3, 4),
    VOLUME("mm³", "in³", Length.MM_PER_INCH * Length.MM_PER_INCH * Length.MM_PER_INCH, 2, 5),
    ANGLE("deg", 3),
    PURE("1", 4),
    SHARE("%", 1),
    TORQUE("N·m", 2),
    STRESS("N/mm²", 0),
    FORCE("N", 0),
    POWER("W", 0),
    SPEED("m/min", 1),
    /** Rim speeds: the foot is 0.3048 m. */
    WHEEL_SPEED("m/s", "ft/min", 0.3048 / 60, 1, 0),
    TURNING("rev/min", 0),
    TIME("s", 1),
    /** The shop's own, whatever it is. */
    MONEY("money", 2),
    /** What one hole costs: a small part of the shop's money. */
    MONEY_A_HOLE("money", 4),
    MINUTES("min", 0),
    WEEKS("wk", 1),
    /** A count that is expected, so not a whole number. */
    HOLES("holes", 0),
    /** Of a dial, to the tenth that the eye parts one into. */
    DIVISIONS("div", 1),
    /** Of a screw. */
    TURNS("turns", 2);

    private final String metric;
    private final String inch;
    private final double perInch;
    private final int metricPlaces;
    private final int inchPlaces;

    Unit(String both, int places) {
        this(both, both, 1, places, places);
    }

    Unit(String metric, String inch, double perInch, int metricPlaces, int inchPlaces) {
        this.metric = metric;
        this.inch = inch;
        this.perInch = perInch;
        this.metricPlaces = metricPlaces;
        this.inchPlaces = inchPlaces;
    }

    /** The unit's sign as it is written in an answer. */
    public String sign(UnitSystem system) {
        return system == UnitSystem.INCH ? inch : metric;
    }

    /** A value held in the metric unit, read in the system asked for. */
    public double in(UnitSystem system, double held) {
        return system == UnitSystem.INCH ? held / perInch : held;
    }

    /** Decimal places that a reader gets in plain text. */
    public int places(UnitSystem system) {
        return system == UnitSystem.INCH ? inchPlaces : metricPlaces;
    }

    /** Whether inch and metric readers get different figures. */
    public boolean hasTwoSigns() {
        return perInch != 1;
    }

    /** What a step's unit is worth in the unit held here; not a number when the step is of another kind. */
    public double heldPer(String stepUnit) {
        if (stepUnit.equals(metric)) {
            return 1;
        }
        if ((this == HOLES || this == DIVISIONS || this == TURNS) && stepUnit.equals("1")) {
            return 1;
        }
        if (this == WHEEL_SPEED && stepUnit.equals("m/min")) {
            return 1.0 / 60;
        }
        return stepUnit.equals(inch) ? perInch : Double.NaN;
    }
}
