// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import java.util.ArrayList;
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
    /** A curve that bends is taken in arcs of at most this turn, each a parabola: within 1e-6 of its offset. */
    private static final double ARC = Math.toRadians(2);

    private final CamCurve curve;
    private final Lobe lobe;
    private final double[] starts;
    private final boolean even;
    private final double riseRad;
    private final double returnRad;
    private final List<Arc> arcs;

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
        boolean same = true;
        for (int i = 0; i < lobes; i++) {
            double error = indexErrors.isEmpty() ? 0 : indexErrors.get(i).rad();
            same &= error == 0;
            starts[i] = i * 2 * Math.PI / lobes + lobe.riseStart().rad() + error;
        }
        this.even = same;
        this.arcs = arcs();
    }

    /**
     * A piece of a lobe without a corner in it; the share of the rise is a parabola there.
     *
     * @param from turn from the start of the rise, radians
     * @param share at the middle of the piece
     * @param slope there, per radian
     * @param bend second derivative, per radian squared
     */
    record Arc(double from, double to, double share, double slope, double bend) {
        double share(double turn) {
            double u = turn - (from + to) / 2;
            return share + u * (slope + u * bend / 2);
        }

        double slope(double turn) {
            return slope + (turn - (from + to) / 2) * bend;
        }
    }

    private List<Arc> arcs() {
        List<Arc> pieces = new ArrayList<>();
        if (curve instanceof CamCurve.Points points) {
            for (int i = 1; i < points.table().size(); i++) {
                CamCurve.Point a = points.table().get(i - 1);
                CamCurve.Point b = points.table().get(i);
                pieces.add(straight(a.angle().rad(), b.angle().rad(), a.share(), b.share()));
            }
        } else if (curve instanceof CamCurve.Circle) {
            int count = (int) Math.ceil(riseRad / ARC);
            for (int i = 0; i < count; i++) {
                pieces.add(bent(riseRad * i / count, riseRad * (i + 1) / count));
            }
        } else {
            pieces.add(straight(0, riseRad, 0, 1));
        }
        if (returnRad > 0) {
            pieces.add(straight(riseRad, riseRad + returnRad, 1, 0));
        }
        return List.copyOf(pieces);
    }

    private static Arc straight(double from, double to, double first, double last) {
        return new Arc(from, to, (first + last) / 2, (last - first) / (to - from), 0);
    }

    /** The parabola through both ends and the middle. */
    private Arc bent(double from, double to) {
        double first = onLobe(from);
        double middle = onLobe((from + to) / 2);
        double last = onLobe(to);
        double half = (to - from) / 2;
        return new Arc(from, to, middle, (last - first) / (to - from), (first + last - 2 * middle) / (half * half));
    }

    int lobes() {
        return starts.length;
    }

    /** Whether every lobe stands where it should, so that every land is ground alike. */
    boolean isEven() {
        return even;
    }

    /** Angle of the spindle at which the rise of a lobe begins, radians. */
    double start(int i) {
        return starts[i];
    }

    /** One lobe piece by piece, turns counted from the start of its rise. */
    List<Arc> pieces() {
        return arcs;
    }

    /** How many of them rise; the others come back. */
    int risePieces() {
        return arcs.size() - (returnRad > 0 ? 1 : 0);
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
