// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.fault.OutOfRange;
import landfall.quantity.Limits;
import org.jspecify.annotations.Nullable;

/**
 * The plate cam, and what the fixture makes of it.
 *
 * @param axial rise that the fixture can give over a whole rise angle, along the axis; null when it has no such slide
 * @param radial the same, square to the axis
 */
public record Cam(
        int lobes,
        CamCurve curve,
        Lobe lobe,
        @Nullable Limits axial,
        @Nullable Limits radial) {
    public Cam {
        if (lobes < 1 || lobes > 16) {
            throw new OutOfRange("cam.lobes", Integer.toString(lobes), "from 1 to 16", "count the lobes of the cam");
        }
        double pitch = 360.0 / lobes;
        double used = lobe.riseAngle().deg() + lobe.returnAngle().deg();
        if (used > pitch + 1e-9) {
            throw new OutOfRange(
                    "cam.riseAngle",
                    "%.2f deg with a return of %.2f deg"
                            .formatted(
                                    lobe.riseAngle().deg(), lobe.returnAngle().deg()),
                    "at most 360/%d = %.2f deg together with the return".formatted(lobes, pitch),
                    "measure rise and return of one lobe again, or count the lobes");
        }
        judge(curve, lobe);
        if (axial == null && radial == null) {
            throw new OutOfRange(
                    "cam",
                    "neither axial nor radial",
                    "axial, radial or both",
                    "give what the fixture can rise over one lobe");
        }
    }

    /** Whether the curve keeps rising over the whole rise angle and no further. */
    private static void judge(CamCurve curve, Lobe lobe) {
        if (curve instanceof CamCurve.Circle circle
                && circle.phase().deg() + lobe.riseAngle().deg() > 180 + 1e-9) {
            throw new OutOfRange(
                    "cam.riseAngle",
                    "%.2f deg".formatted(lobe.riseAngle().deg()),
                    "at most %.2f deg: from there a circle with this phase falls again"
                            .formatted(180 - circle.phase().deg()),
                    "measure the phase and the rise again");
        }
        if (curve instanceof CamCurve.Points points) {
            double end = points.table().get(points.table().size() - 1).angle().deg();
            if (Math.abs(end - lobe.riseAngle().deg()) > 1e-6) {
                throw new OutOfRange(
                        "cam.table",
                        "ends at %.3f deg".formatted(end),
                        "one that ends at the rise angle, %.3f deg"
                                .formatted(lobe.riseAngle().deg()),
                        "give the table over the whole rise");
            }
        }
    }
}
