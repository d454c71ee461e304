// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What the fixture is to give, and which of its rises is turned to get there.
 *
 * @param axial rise wanted, per radian of land angle; 0 if that side is not used
 * @param radial rise wanted, per radian of land angle; 0 if that side is not used
 * @param lobe rise angle of one lobe, over which the fixture's rise is set
 * @param turn the side to adjust when the fall of the chamfer is wrong
 * @param found fall of the chamfer as found, square to it, per radian, if it was dialled with the cam still
 */
public record Aim(
        Length axial,
        Length radial,
        Angle lobe,
        Side turn,
        @Nullable Length found) {
    /** A rise of the fixture. */
    public enum Side {
        AXIAL,
        RADIAL
    }

    /** The fall wanted, square to the chamfer, mm per radian: a' sin kap + b' cos kap. */
    double squareFall(Angle chamfer) {
        return axial.mm() * Math.sin(chamfer.rad()) + radial.mm() * Math.cos(chamfer.rad());
    }
}
