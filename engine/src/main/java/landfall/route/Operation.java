// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.util.List;

/**
 * One step of the route, without a change of the tool.
 *
 * @param what the tool, or what is done
 * @param lines of the drawing, in order
 * @param time set-up and all holes
 * @param why it stands here
 */
public record Operation(Kind kind, String what, List<Integer> lines, Timed time, String why) {
    /** The kinds, in the order in which they follow each other. */
    public enum Kind {
        SHARPEN,
        GAUGES,
        DRILL,
        COUNTERSINK,
        TAP;

        /** As written in JSON. */
        public String code() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    public Operation {
        lines = List.copyOf(lines);
    }
}
