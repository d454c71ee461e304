// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import landfall.quantity.Length;

/**
 * What a wheel's face lacks of a true cylinder along the chamfer: dressed at an angle, worn at one corner, or smaller
 * with every land.
 *
 * @param atPoint how much smaller the wheel's radius is where it grinds the tap's point
 * @param atThread the same where it grinds the end of the chamfer
 * @param wearPerTurn what the wheel's radius loses over one turn of the tap, land after land
 */
public record WheelFace(Length atPoint, Length atThread, Length wearPerTurn) {
    public static final WheelFace TRUE = new WheelFace(Length.ZERO, Length.ZERO, Length.ZERO);
}
