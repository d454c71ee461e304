// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import landfall.quantity.Length;
import landfall.thread.PreferredNumber;
import landfall.thread.metric.Tolerances.Kind;

/**
 * The formulas behind the tables of ISO 965-1: a check on them, and a stand-in where they are blank.
 *
 * <p>The result goes to the nearest preferred number R40, shown in whole micrometres. The committee smoothed the tables
 * after that by hand: 66 of 612 entries lie one step away.
 */
final class ToleranceFormula {
    private ToleranceFormula() {}

    /** Tolerance in micrometres before it goes to a preferred number. */
    static double raw(Kind kind, MetricSize size, int grade) {
        double P = size.pitchMm();
        double d = PitchIndex.meanOfRange(PitchIndex.ofDiameter(size.diameter()));
        return factor(kind, grade) * gradeSix(kind, P, d);
    }

    private static double gradeSix(Kind kind, double P, double d) {
        return switch (kind) {
            case Td -> 180 * Math.cbrt(P * P) - 3.15 / Math.sqrt(P);
            case TD1 -> P < 1 ? 433 * P - 190 * Math.pow(P, 1.22) : 230 * Math.pow(P, 0.7);
            case Td2, TD2 -> 90 * Math.pow(P, 0.4) * Math.pow(d, 0.1);
        };
    }

    /** Of the grade, against grade 6 of the external thread for pitch diameters. */
    static double factor(Kind kind, int grade) {
        double[] factors = switch (kind) {
            case Td -> new double[] {0, 0, 0, 0, 0.63, 0, 1, 0, 1.6, 0};
            case TD1 -> new double[] {0, 0, 0, 0, 0.63, 0.8, 1, 1.25, 1.6, 0};
            case Td2 -> new double[] {0, 0, 0, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2};
            case TD2 -> new double[] {0, 0, 0, 0, 0.85, 1.06, 1.32, 1.7, 2.12, 0};
        };
        return factors[grade];
    }

    /** Amount of a fundamental deviation in whole micrometres. */
    static int deviation(char position, double P) {
        double base = switch (position) {
            case 'e' -> 50;
            case 'f' -> 30;
            case 'g', 'G' -> 15;
            default -> throw new IllegalStateException("position " + position);
        };
        return (int) Math.round(base + 11 * P);
    }

    /** The preferred number nearest to so many micrometres. */
    static int preferred(double um) {
        return (int) Math.rint(PreferredNumber.nearest(Length.ofMm(um / 1000)).mm() * 1000);
    }
}
