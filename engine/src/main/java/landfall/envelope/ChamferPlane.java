// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import landfall.grind.GrindSetup;
import landfall.quantity.Angle;
import org.jspecify.annotations.Nullable;

/** One plane square to the axis under the wheel. */
final class ChamferPlane {
    private final SectionEnvelope section;
    private final boolean even;
    private final double runOut;
    private final double direction;
    private final double wear;

    ChamferPlane(GrindSetup setup, CamMotion motion, Angle swivel, Errors errors, double z) {
        double length = ChamferGround.length(setup);
        double point = setup.tap().chamfer().pointDiameter().mm() / 2;
        // the swivelled line turns about the middle of the chamfer
        double kappa = setup.tap().chamfer().angle().rad();
        double line = point + length / 2 * Math.tan(kappa) + (z - length / 2) * Math.tan(swivel.rad());
        WheelFace face = errors.face();
        double drop = face.lacks(z / length);
        int flutes = setup.tap().flutes().count();
        this.section = new SectionEnvelope(WheelPass.of(setup, swivel, errors), motion, line, drop);
        this.even = motion.isEven();
        this.runOut = errors.runOut().mm();
        this.direction = errors.direction().rad();
        this.wear = face.wearPerTurn().mm() / flutes / Math.cos(swivel.rad());
    }

    /** Angle round the tap up to which the rise of a land's own lobe has ground. */
    double riseEnds(int land) {
        return section.riseEnds(land);
    }

    boolean isEven() {
        return even;
    }

    /**
     * Radii about the spindle's axis, wheel not worn.
     *
     * @param like what another land got that meets the wheel alike; null when there is none
     */
    void fill(double[] into, double first, double step, double @Nullable [] like) {
        if (like == null) {
            section.fill(into, first, step);
        } else {
            System.arraycopy(like, 0, into, 0, into.length);
        }
    }

    /** Makes them radii about the thread's axis, of a wheel that has worn by now. */
    void shift(double[] into, int land, double first, double step) {
        for (int k = 0; k < into.length; k++) {
            double off = runOut == 0 ? 0 : runOut * Math.cos(first + k * step - direction);
            into[k] += wear * land - off;
        }
    }
}
