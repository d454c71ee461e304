// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import landfall.grind.Gap;
import landfall.grind.Lobe;
import landfall.quantity.Length;

/**
 * One stroke of the cam against the wheel.
 *
 * @param perRadian radial fall for each radian of land
 * @param wheel its diameter
 */
public record Stroke(Lobe lobe, Gap gap, Length perRadian, Length wheel) {
    /** Land angle on the centre line where the rise ends. */
    double riseEndDeg() {
        return lobe.riseStart().deg() + lobe.riseAngle().deg();
    }
}
