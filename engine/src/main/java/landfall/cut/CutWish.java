// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.chip.Evenness;
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
     * @param evenness of the chamfer's edges
     */
    public record How(
            @Nullable CuttingFluid fluid,
            @Nullable Opening opening,
            Driven driven,
            Holding holding,
            Evenness evenness) {
        public static final How USUAL =
                new How(null, null, Driven.UNTOLD, new Holding(Grip.SQUARE, null), Evenness.ALIKE);
    }

    public enum Opening {
        BLIND,
        THROUGH
    }

    /** What the tap is held by; only the square does not rest on friction. */
    public enum Grip {
        SQUARE,
        COLLET,
        CHUCK
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
