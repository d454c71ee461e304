// SPDX-License-Identifier: Apache-2.0
package landfall.verdict;

import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Measured;
import org.jspecify.annotations.Nullable;

/** Good, bad, or not to be told with this measurement; in the order of how bad it is. */
public enum Verdict {
    GO,
    BORDERLINE,
    NOT_GO;

    /** A measured figure against its limits; an open end is never passed. */
    public static Verdict of(Measured found, Limits limits) {
        return atLeast(found, limits.min()).and(atMost(found, limits.max()));
    }

    /** Not under a limit: sure, surely not, or neither. */
    static Verdict atLeast(Measured found, @Nullable Length least) {
        return least == null
                ? GO
                : by(found.value().mm() - least.mm(), found.uncertainty().mm());
    }

    /** Not over a limit. */
    static Verdict atMost(Measured found, @Nullable Length most) {
        return most == null
                ? GO
                : by(most.mm() - found.value().mm(), found.uncertainty().mm());
    }

    /** Room to the limit against what it may be out by. */
    static Verdict by(double room, double uncertainty) {
        double noise = 1e-9;
        if (room >= uncertainty - noise) {
            return GO;
        }
        return room < -uncertainty - noise ? NOT_GO : BORDERLINE;
    }

    /** Both: the worse of the two. */
    public Verdict and(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
