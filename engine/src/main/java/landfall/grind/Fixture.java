// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The relieving fixture as it stands on the grinder.
 *
 * @param dialResolution one division of the dial; null when not told
 * @param swivelStep one step of the swivel's graduation; null when not told
 * @param screws what one turn of its adjusting screws does
 */
public record Fixture(
        String name,
        Cam cam,
        Wheel wheel,
        @Nullable Length dialResolution,
        @Nullable Angle swivelStep,
        Screws screws) {
    /** A fixture whose screws are not told. */
    public Fixture(String name, Cam cam, Wheel wheel, @Nullable Length dialResolution, @Nullable Angle swivelStep) {
        this(name, cam, wheel, dialResolution, swivelStep, Screws.UNTOLD);
    }
}
