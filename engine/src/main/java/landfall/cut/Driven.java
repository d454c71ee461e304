// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What turns the tap, and what lies between. All of it may be null: not told.
 *
 * @param horizontal whether the spindle lies
 * @param bar whole length of the bar of the hand wrench
 * @param feed that the machine is set to, each turn
 */
public record Driven(
        @Nullable Drive by,
        @Nullable Holder holder,
        @Nullable Boolean horizontal,
        @Nullable Length bar,
        @Nullable Length feed) {
    public static final Driven UNTOLD = new Driven(null, null, null, null, null);

    public Driven {
        positive("bar", bar, "measure the bar of the wrench, end to end");
        positive("feed", feed, "give the feed of one turn: the lead, or what the machine is set to");
    }

    private static void positive(String field, @Nullable Length length, String mend) {
        if (length != null && length.mm() <= 0) {
            throw new OutOfRange(field, length.words(), "more than 0", mend);
        }
    }

    public static Driven by(Drive drive) {
        return new Driven(drive, null, null, null, null);
    }

    /** What turns the tap. */
    public enum Drive {
        HAND,
        DRILL_PRESS,
        LATHE,
        MILL
    }

    /** What holds the tap in the machine. */
    public enum Holder {
        RIGID,
        FLOAT,
        SYNCHRONISED,
        REVERSING_HEAD,
        SLIP;

        /** Whether it lets the tap follow its own lead freely. */
        boolean floats() {
            return this != RIGID && this != SYNCHRONISED;
        }
    }

    boolean byHand() {
        return by == Drive.HAND;
    }

    /**
     * Whether the spindle is held to the feed: told so by the holder, or taken for a mill and for a machine not named.
     */
    boolean synchronised() {
        return holder == null ? by == null || by == Drive.MILL : !holder.floats();
    }

    /** Whether the spindle runs on after its stop: no spindle held to the feed does, and no hand. */
    boolean runsOn() {
        return !byHand() && (holder == null ? by != Drive.MILL : holder.floats());
    }
}
