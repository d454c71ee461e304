// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import java.util.function.DoubleUnaryOperator;
import landfall.quantity.Length;
import landfall.thread.ScrewThread;

/**
 * A straight wire laid in a thread groove, free to tilt, found numerically: no lead formula is used.
 *
 * <p>Groove on the +x side, symmetric about z = 0. Its flanks are z = L·θ/2π ± [(ρ − E/2)·tan A + P/4] at radius ρ and
 * azimuth θ. Turned half a turn about x the groove is itself, so one flank is enough. The wire's axis crosses the x
 * axis at c, square to it, tilted by β out of the y direction. A surface point keeps the axis at x + sqrt(W²/4 − q²) or
 * more, q being its distance from the axis seen along x; the wire rests at the greatest of these, and tilts until that
 * is least. Size over the wires: 2·c + W.
 */
final class WireOnHelicoid {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int ROUNDS = 60;

    private WireOnHelicoid() {}

    static Length over(ScrewThread thread, Length wire, Length pitchDiameter) {
        double lead = thread.lead().perTurn().mm() / (2 * Math.PI);
        double half = pitchDiameter.mm() / 2;
        double pitch = thread.pitch().mm();
        double tangent = Math.tan(thread.profile().flankAngle().rad());
        double W = wire.mm();
        double tilt = Math.atan(lead / half);
        double reach = Math.min(half, pitch);
        double span = Math.min(1.2, 4 * W / half);
        DoubleUnaryOperator rest = beta -> greatest(
                -span,
                span,
                theta -> greatest(half - reach, half + reach, rho -> {
                    double z = lead * theta + (rho - half) * tangent + pitch / 4;
                    double q = rho * Math.sin(theta) * Math.sin(beta) - z * Math.cos(beta);
                    double room = W * W / 4 - q * q;
                    // outside the wire's width the point holds nothing up; fall off steadily so that the search comes
                    // back
                    return room < 0 ? half - reach - Math.sqrt(-room) : rho * Math.cos(theta) + Math.sqrt(room);
                }));
        double c = -greatest(tilt / 3, tilt * 2, beta -> -rest.applyAsDouble(beta));
        return Length.ofMm(2 * c + W);
    }

    /** Greatest value of a function with one hill, by golden section. */
    private static double greatest(double from, double to, DoubleUnaryOperator f) {
        double a = from;
        double b = to;
        double x1 = b - GOLDEN * (b - a);
        double x2 = a + GOLDEN * (b - a);
        double f1 = f.applyAsDouble(x1);
        double f2 = f.applyAsDouble(x2);
        for (int i = 0; i < ROUNDS && b - a > 1e-9; i++) {
            if (f1 > f2) {
                b = x2;
                x2 = x1;
                f2 = f1;
                x1 = b - GOLDEN * (b - a);
                f1 = f.applyAsDouble(x1);
            } else {
                a = x1;
                x1 = x2;
                f1 = f2;
                x2 = a + GOLDEN * (b - a);
                f2 = f.applyAsDouble(x2);
            }
        }
        return Math.max(f1, f2);
    }
}
