// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import landfall.grind.GrindSetup;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * The wheel and how it passes over the tap.
 *
 * @param radius of the wheel
 * @param swivel of its face to the tap's axis
 * @param rise radial move that the whole rise is worth at this swivel: b + a·tan κ_s
 * @param aboveCentre height of the wheel's centre over the tap's, towards the heel side
 */
public record WheelPass(Length radius, Angle swivel, Length rise, Length aboveCentre) {

    /** The pass of a set-up with another swivel; the slides stay as they are set. */
    static WheelPass of(GrindSetup setup, Angle swivel, Errors errors) {
        var rises = setup.motion().setting().rises();
        return new WheelPass(
                setup.fixture().wheel().radius(),
                swivel,
                rises.radial().plus(rises.axial().times(Math.tan(swivel.rad()))),
                errors.aboveCentre());
    }
}
