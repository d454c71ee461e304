// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import landfall.fault.OutOfRange;
import landfall.hole.HoleEnd;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.thread.CallOut;

/** One line of a drawing's holes: so many alike. */
public record HoleLine(Named named, CallOut callOut, WorkMaterial material, Place place, int count) {
    /**
     * What the line is called by.
     *
     * @param line its number in the job, from 1
     * @param label of the hole on the drawing; may be empty
     * @param note for the person at the machine; may be empty
     */
    public record Named(int line, String label, String note) {}

    /** @param depth of full thread, from the face */
    public record Place(Length depth, HoleEnd end) {
        public Place {
            if (depth.mm() <= 0) {
                throw new OutOfRange("depth", depth.words(), "more than 0", "give the depth of full thread");
            }
        }
    }

    public HoleLine {
        if (count < 1) {
            throw new OutOfRange("count", Integer.toString(count), "1 or more", "give how many holes are alike");
        }
    }

    public int line() {
        return named.line;
    }

    public boolean through() {
        return place.end == HoleEnd.THROUGH;
    }
}
