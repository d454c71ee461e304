// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

/** The outcome of one check. */
public enum Verdict {
    GOOD,
    BAD,
    /** The limit lies inside the uncertainty: measure finer. */
    UNSURE;

    /** Whether a figure is at most its limit, its uncertainty allowed for. */
    static Verdict atMost(double found, double uncertainty, double limit) {
        if (found + uncertainty <= limit) {
            return GOOD;
        }
        return found - uncertainty > limit ? BAD : UNSURE;
    }
}
