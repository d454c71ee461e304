// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * What is not as it should be in the chucking and the cam.
 *
 * @param runOut eccentricity of the thread to the spindle, half the total reading
 * @param direction of the thread's axis from the spindle's, from the edge of land 1 backwards over the lands
 * @param index error of each lobe, positive when it comes late; empty for none
 * @param aboveCentre height of the wheel's centre over the tap's, towards the heel side
 * @param face what the wheel lacks of a true cylinder
 */
public record Errors(Length runOut, Angle direction, List<Angle> index, Length aboveCentre, WheelFace face) {
    public static final Errors NONE = new Errors(Length.ZERO, Angle.ZERO, List.of(), Length.ZERO, WheelFace.TRUE);

    public Errors {
        index = List.copyOf(index);
    }
}
