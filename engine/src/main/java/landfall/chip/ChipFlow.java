// SPDX-License-Identifier: Apache-2.0
package landfall.chip;

import java.util.Locale;
import landfall.tap.FluteKind;
import landfall.thread.Hand;

/**
 * Where the chips go. Flutes of the thread's own hand screw them back to the shank, flutes of the other hand push them
 * ahead (a tap maker's page, read, for right-hand threads; the mirror is derived). A spiral point pushes them ahead
 * when it is ground to the hand of the thread.
 */
public enum ChipFlow {
    BACK,
    FORWARD,
    STAYS;

    public static ChipFlow of(FluteKind kind, Hand hand) {
        return switch (kind) {
            case SPIRAL_POINT -> FORWARD;
            case SPIRAL_RIGHT -> hand == Hand.RIGHT ? BACK : FORWARD;
            case SPIRAL_LEFT -> hand == Hand.LEFT ? BACK : FORWARD;
            case STRAIGHT, FORMING -> STAYS;
        };
    }

    /** As written in JSON. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
