// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import landfall.fault.OutOfRange;
import landfall.quantity.Length;

/** A thread by its basic sizes, unrounded. */
public record ScrewThread(Family family, Profile profile, Length major, Lead lead, Hand hand) {
    public ScrewThread {
        double least = 2 * profile.depth() * lead.pitch().mm();
        if (major.mm() <= least) {
            throw new OutOfRange(
                    "major diameter",
                    major.words(),
                    "more than its own thread depth, " + Length.ofMm(least).words(),
                    "check that diameter and pitch were not swapped");
        }
    }

    public Length pitch() {
        return lead.pitch();
    }

    /** Basic pitch diameter: major less twice the addendum. */
    public Length pitchDiameter() {
        return major.minus(pitch().times(2 * profile.addendum()));
    }

    /** Basic minor diameter of the internal thread: major less twice the depth. */
    public Length minorDiameter() {
        return major.minus(pitch().times(2 * profile.depth()));
    }
}
