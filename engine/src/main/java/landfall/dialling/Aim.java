// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.grind.Cam;
import landfall.grind.CamProfile;
import landfall.grind.GrindSetup;
import landfall.grind.Screws;
import landfall.grind.Setting;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What the fixture is to give, and which of its rises is turned to get there.
 *
 * @param axial rise wanted, per radian of land angle; 0 if that side is not used
 * @param radial rise wanted, per radian of land angle; 0 if that side is not used
 * @param lobe turn over which one lobe would reach its whole rise as it begins; of a straight cam its rise angle
 * @param turn the side to adjust when the fall of the chamfer is wrong
 * @param found fall of the chamfer as found, square to it, per radian, if it was dialled with the cam still
 * @param swivel as set; not the chamfer's angle on spiral flutes, null where it is
 * @param screws what one turn of the fixture's adjusting screws does
 */
public record Aim(
        Length axial,
        Length radial,
        Angle lobe,
        Side turn,
        @Nullable Length found,
        @Nullable Angle swivel,
        Screws screws) {
    /** On straight flutes, the screws not told. */
    public Aim(Length axial, Length radial, Angle lobe, Side turn, @Nullable Length found) {
        this(axial, radial, lobe, turn, found, null, Screws.UNTOLD);
    }

    /** A rise of the fixture. */
    public enum Side {
        AXIAL,
        RADIAL
    }

    /**
     * Of a set-up: its rises, and the slide that carries them.
     *
     * @param foundRelief static relief found on the tap, square to the edge; null when not measured
     */
    public static Aim of(GrindSetup setup, @Nullable Angle foundRelief) {
        Setting setting = setup.motion().setting();
        Cam cam = setup.fixture().cam();
        Angle whole = CamProfile.whole(cam.curve(), cam.lobe().riseAngle());
        double perRadian = 1 / whole.rad();
        return new Aim(
                setting.rises().axial().times(perRadian),
                setting.rises().radial().times(perRadian),
                whole,
                // with both in use the radial slide stands at its limit
                setting.way() == Setting.Way.RADIAL ? Side.RADIAL : Side.AXIAL,
                foundRelief == null ? null : setup.shape().midRadius().times(Math.tan(foundRelief.rad())),
                setting.swivel(),
                setup.fixture().screws());
    }

    /** The fall wanted, square to the chamfer, mm per radian: cos kap (a' tan kap_s + b'). */
    double squareFall(Angle chamfer) {
        return Math.cos(chamfer.rad()) * (axial.mm() * Math.tan(set(chamfer).rad()) + radial.mm());
    }

    /** The swivel as it is set for a chamfer. */
    Angle set(Angle chamfer) {
        return swivel == null ? chamfer : swivel;
    }
}
