// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import org.jspecify.annotations.Nullable;

/**
 * What a fixture grinds as it is set, right or not: the set-up read forwards, docs/methods/spread.md. The wheel line
 * stands at the swivel, the slides rise as they are set, the tap is the one in the hand.
 *
 * @param setting swivel, axial and radial rise over the lobe
 * @param perRadian radial fall per radian that comes out
 * @param chamfer angle that comes out
 * @param relief static, loss and working, square to the edge at the middle of the chamfer
 */
public record AsSet(Dials setting, Length perRadian, Angle chamfer, Came relief) {

    /** What stands on swivel and slides. */
    public record Dials(Angle swivel, Length axial, Length radial) {}

    /** The relief that comes out. */
    public record Came(Angle ground, Angle loss, Angle working) {}

    /**
     * What was read off the fixture; what is null is taken as the set-up asks for.
     *
     * @param axial rise over the whole lobe
     * @param radial rise over the whole lobe
     */
    public record Read(
            @Nullable Angle swivel,
            @Nullable Length axial,
            @Nullable Length radial) {
        public boolean isEmpty() {
            return swivel == null && axial == null && radial == null;
        }
    }

    /** @param pen holds the steps of the set-up before these */
    public static AsSet of(GrindSetup setup, Read read, Pen pen) {
        Setting setting = setup.motion().setting();
        double kappa_u = read.swivel() == null
                ? pen.write(AsSetRules.SWIVEL_TAKEN, setting.swivel().deg())
                : pen.write(AsSetRules.SWIVEL_GIVEN, read.swivel().deg());
        double a_u = read.axial() == null
                ? pen.write(AsSetRules.AXIAL_TAKEN, setting.rises().axial().mm())
                : pen.write(AsSetRules.AXIAL_GIVEN, read.axial().mm());
        double b_u = read.radial() == null
                ? pen.write(AsSetRules.RADIAL_TAKEN, setting.rises().radial().mm())
                : pen.write(AsSetRules.RADIAL_GIVEN, read.radial().mm());
        AsSetCurve curve = AsSetCurve.of(setup);
        double tangent = Math.tan(Math.toRadians(kappa_u));
        double perRadian = pen.write(AsSetRules.FALL, curve.slope() * (a_u * tangent + b_u));
        double kappa_cu = curve.perFluteLead() == 0
                ? pen.write(AsSetRules.CHAMFER, kappa_u)
                : pen.write(
                        AsSetRules.CHAMFER_SPIRAL,
                        Math.toDegrees(Math.atan(tangent - perRadian * curve.perFluteLead())));
        double cosine = Math.cos(Math.toRadians(kappa_cu));
        double sine = Math.sin(Math.toRadians(kappa_cu));
        double ground = pen.write(AsSetRules.GROUND, Math.toDegrees(Math.atan(cosine * perRadian / curve.radius())));
        double loss = pen.write(AsSetRules.LOSS, Math.toDegrees(Math.atan(curve.advance() * sine)));
        double working = pen.write(AsSetRules.WORKING, ground - loss);
        return new AsSet(
                new Dials(Angle.ofDeg(kappa_u), Length.ofMm(a_u), Length.ofMm(b_u)),
                Length.ofMm(perRadian),
                Angle.ofDeg(kappa_cu),
                new Came(Angle.ofDeg(ground), Angle.ofDeg(loss), Angle.ofDeg(working)));
    }
}
