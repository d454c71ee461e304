// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.fault.OutOfRange;
import landfall.material.CuttingFluid;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.tap.Wear;
import org.jspecify.annotations.Nullable;

/**
 * What is to be cut, and how.
 *
 * @param hole its diameter, before tapping
 * @param depth of full thread
 * @param wear null when not told: a fresh edge is taken, with a caution
 */
public record CutWish(
        WorkMaterial material,
        Length hole,
        Length depth,
        @Nullable Wear wear,
        How how) {
    public CutWish {
        if (depth.mm() <= 0) {
            throw new OutOfRange("depth", depth.words(), "more than 0", "give the depth of full thread");
        }
    }

    /**
     * How the work is done.
     *
     * @param fluid null for the one that the list advises
     * @param opening null when not told
     * @param drive null when not told
     * @param holding of the tap's shank
     * @param runOut total run-out of the chamfer against the thread; zero when it is not asked about
     */
    public record How(
            @Nullable CuttingFluid fluid,
            @Nullable Opening opening,
            @Nullable Drive drive,
            Holding holding,
            Length runOut) {
        public static final How USUAL = new How(null, null, null, new Holding(Grip.SQUARE, null), Length.ZERO);

        public How {
            if (runOut.mm() < 0) {
                throw new OutOfRange("run-out", runOut.words(), "0 or more", "give the whole swing of the dial");
            }
        }
    }

    public enum Opening {
        BLIND,
        THROUGH
    }

    /** What turns the tap. */
    public enum Drive {
        HAND,
        DRILL_PRESS,
        LATHE,
        MILL
    }

    /** What the tap is held by. */
    public enum Grip {
        SQUARE,
        COLLET
    }

    /**
     * How the shank is held.
     *
     * @param square across the flats; null when not measured
     */
    public record Holding(Grip grip, @Nullable Length square) {
        public Holding {
            if (square != null && square.mm() <= 0) {
                throw new OutOfRange("square", square.words(), "more than 0", "measure the square across its flats");
            }
        }
    }

    Wear wearUsed() {
        return wear == null ? Wear.FRESH : wear;
    }

    CuttingFluid fluidUsed() {
        return how.fluid != null
                ? how.fluid
                : material.cutting().fluid().value().fluid();
    }
}
