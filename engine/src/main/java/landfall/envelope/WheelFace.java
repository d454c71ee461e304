// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import landfall.quantity.Length;

/**
 * What a wheel's face lacks of a true cylinder along the chamfer: dressed at an angle, hollow or round, or smaller with
 * every land.
 *
 * @param atPoint how much smaller the wheel's radius is where it grinds the tap's point
 * @param atThread the same where it grinds the end of the chamfer
 * @param hollow how much smaller it is half way between than a straight line from end to end; negative for a round face
 * @param wearPerTurn what the wheel's radius loses over one turn of the tap, land after land
 */
public record WheelFace(Length atPoint, Length atThread, Length hollow, Length wearPerTurn) {
    public static final WheelFace TRUE = new WheelFace(Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO);

    /** What the radius lacks, mm, at a share of the way from the point to the end of the chamfer; a parabola. */
    double lacks(double share) {
        double straight = atPoint.mm() + (atThread.mm() - atPoint.mm()) * share;
        return straight + 4 * hollow.mm() * share * (1 - share);
    }
}
