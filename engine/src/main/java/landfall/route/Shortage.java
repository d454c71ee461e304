// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.util.List;

/**
 * What the shop lacks for the job.
 *
 * @param lines of the drawing that wait for it
 * @param says what is missing
 * @param mend what to do about it
 */
public record Shortage(Kind kind, List<Integer> lines, String says, String mend) {
    /** What is short. */
    public enum Kind {
        DRILL,
        TAP,
        /** The tap, freshly sharpened, does not last the job. */
        LIFE,
        GAUGE,
        CALIBRATION;

        /** As written in JSON. */
        public String code() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    public Shortage {
        lines = List.copyOf(lines);
    }
}
