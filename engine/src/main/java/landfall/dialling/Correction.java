// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * One thing to do, and by how much.
 *
 * @param kind which adjustment
 * @param land the land it belongs to, 0 for all of them
 * @param act which way, in words
 * @param length by how much, if it is a length
 * @param angle by how much, if it is an angle
 * @param turns of the adjusting screw that make it, if the fixture's card tells what one turn does
 */
public record Correction(
        Kind kind,
        int land,
        String act,
        @Nullable Length length,
        @Nullable Angle angle,
        @Nullable Double turns) {
    Correction(Kind kind, int land, String act, @Nullable Length length, @Nullable Angle angle) {
        this(kind, land, act, length, angle, null);
    }

    /** How many divisions of a dial it is; null where it is no length. */
    public @Nullable Double divisions(Length division) {
        return length == null ? null : length.over(division);
    }

    /** In the order in which they are made: each disturbs those after it, none those before. */
    public enum Kind {
        /** Dial the thread or the shank first: without it nothing is known about run-out. */
        REFERENCE,
        /** Seat the tap again, so that its thread runs true. */
        RESEAT,
        /** Turn the swivel. */
        SWIVEL,
        /** Turn index or lobe of one land. */
        INDEX,
        /** Set the axial rise over one lobe. */
        AXIAL,
        /** Set the radial rise over one lobe. */
        RADIAL,
        /** Grind until the lowest edge cleans up. */
        STOCK,
        /** Read again. */
        READ_AGAIN
    }
}
