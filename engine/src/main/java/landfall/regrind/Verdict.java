// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import landfall.quantity.Measured;

/** The outcome of one check. */
public enum Verdict {
    GOOD,
    BAD,
    /** The limit lies inside the uncertainty: measure finer. */
    UNSURE;

    /** Whether a measured length lies between two limits, its uncertainty allowed for. */
    static Verdict within(Measured found, double leastMm, double mostMm) {
        double value = found.value().mm();
        double uncertainty = found.uncertainty().mm();
        Verdict under = atMost(value, uncertainty, mostMm);
        Verdict over = atMost(-value, uncertainty, -leastMm);
        if (under == BAD || over == BAD) {
            return BAD;
        }
        return under == GOOD && over == GOOD ? GOOD : UNSURE;
    }

    /** Whether a figure is at most its limit, its uncertainty allowed for. */
    static Verdict atMost(double found, double uncertainty, double limit) {
        if (found + uncertainty <= limit) {
            return GOOD;
        }
        return found - uncertainty > limit ? BAD : UNSURE;
    }
}
