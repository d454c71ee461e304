// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import landfall.fault.OutOfRange;
import landfall.quantity.Length;

/** Pitch and starts; the lead is their product. */
public record Lead(Length pitch, int starts) {
    public Lead {
        if (pitch.mm() <= 0) {
            throw new OutOfRange("pitch", pitch.mm() + " mm", "more than 0", "give the distance from crest to crest");
        }
        if (starts < 1) {
            throw new OutOfRange(
                    "starts", Integer.toString(starts), "1 or more", "count the starts at the thread's end");
        }
    }

    /** Advance in one turn. */
    public Length perTurn() {
        return pitch.times(starts);
    }
}
