// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;

/**
 * One lobe of the cam, by angles of the spindle.
 *
 * @param riseStart land angle on the centre line where the rise begins; 0 with the edge on it
 * @param riseAngle turn over which the lobe rises
 * @param returnAngle turn over which it comes back
 */
public record Lobe(Angle riseStart, Angle riseAngle, Angle returnAngle) {
    public Lobe {
        if (!(riseAngle.deg() > 0 && riseAngle.deg() < 360)) {
            throw new OutOfRange(
                    "cam.riseAngle",
                    riseAngle.deg() + " deg",
                    "over 0 and under 360 deg",
                    "measure the rise of one lobe");
        }
        if (!(returnAngle.deg() >= 0)) {
            throw new OutOfRange(
                    "cam.returnAngle", returnAngle.deg() + " deg", "0 deg or more", "measure the return of one lobe");
        }
        if (!(riseStart.deg() > -90 && riseStart.deg() < 90)) {
            throw new OutOfRange(
                    "cam.riseStart",
                    riseStart.deg() + " deg",
                    "between -90 and 90 deg",
                    "give the land angle that is on the centre line when the rise begins");
        }
    }
}
