// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import java.util.List;
import landfall.grind.CamCurve;
import landfall.grind.Lobe;
import landfall.quantity.Angle;

/**
 * How far a plate cam has moved the tap, as a share of its whole rise, by the angle of the spindle.
 *
 * <p>Lobe i belongs to land i; with no index error its rise begins t_s after the edge of that land comes to the centre
 * line. The return is straight. Where lobes overlap through their index errors, the higher one carries.
 */
public final class CamMotion {
    private final CamCurve curve;
    private final Lobe lobe;
    private final double[] starts;
    private final double riseRad;
    private final double returnRad;

    /** @param indexErrors one for each lobe, positive when the lobe comes late; empty for none */
    public CamMotion(CamCurve curve, Lobe lobe, int lobes, List<Angle> indexErrors) {
        if (!indexErrors.isEmpty() && indexErrors.size() != lobes) {
            throw new IllegalArgumentException(indexErrors.size() + " index errors for " + lobes + " lobes");
        }
        this.curve = curve;
        this.lobe = lobe;
        this.riseRad = lobe.riseAngle().rad();
        this.returnRad = lobe.returnAngle().rad();
        this.starts = new double[lobes];
        for (int i = 0; i < lobes; i++) {
            double error = indexErrors.isEmpty() ? 0 : indexErrors.get(i).rad();
            starts[i] = i * 2 * Math.PI / lobes + lobe.riseStart().rad() + error;
        }
    }

    int lobes() {
        return starts.length;
    }

    /** Share of the rise with the spindle at an angle in radians; 0 with the edge of land 1 on the centre line. */
    double share(double phi) {
        double share = 0;
        for (double start : starts) {
            double turn = phi - start;
            turn -= Math.floor(turn / (2 * Math.PI)) * 2 * Math.PI;
            share = Math.max(share, onLobe(turn));
        }
        return share;
    }

    private double onLobe(double turn) {
        if (turn <= riseRad) {
            return curve instanceof CamCurve.Straight
                    ? turn / riseRad
                    : curve.share(Angle.ofRad(turn), lobe.riseAngle());
        }
        return turn < riseRad + returnRad ? 1 - (turn - riseRad) / returnRad : 0;
    }
}
