// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.quantity.Angle;

/**
 * A fitted angle.
 *
 * @param value best figure
 * @param standard one standard deviation
 * @param uncertainty expanded, 95 %, by Student's t; 180 degrees is "any direction"
 */
public record FittedAngle(Angle value, Angle standard, Angle uncertainty) {
    public boolean differsFromZero() {
        return Math.abs(value.deg()) > uncertainty.deg();
    }
}
