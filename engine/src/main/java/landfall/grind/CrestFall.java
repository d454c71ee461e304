// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.ThreadRelief;

/**
 * How the crest of the thread falls behind its edge by its own relief: {@code d/2 tan(τ) max(0, θ - θ_c)}.
 *
 * <p>A dial on the crests sees it beside the radial rise, whether the cam is at work or at rest.
 *
 * @param perRadian radial fall behind the margin, per radian of land angle
 * @param margin land angle behind the edge that stays concentric
 */
public record CrestFall(Length perRadian, Angle margin) {
    public static final CrestFall NONE = new CrestFall(Length.ZERO, Angle.ZERO);

    /** Of a thread with a basic major diameter. */
    public static CrestFall of(Length major, ThreadRelief relief) {
        return new CrestFall(major.times(Math.tan(relief.slope().rad()) / 2), relief.margin());
    }

    /** Form of the fall: 0 on the margin, behind it one for each radian. */
    public CamProfile form() {
        return CamProfile.from(margin);
    }

    /** Fall at a land angle. */
    public Length at(Angle land) {
        return perRadian.times(form().at(land));
    }
}
