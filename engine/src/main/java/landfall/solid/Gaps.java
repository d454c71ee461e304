// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import java.util.Optional;
import landfall.quantity.Length;

/**
 * The radial gap between a body's chamfer and the surface that its edges cut, place by place of the mesh.
 *
 * <p>While the tap turns by a land angle θ it advances L·θ/2π, on spiral flutes L/(1 − L/L_f)·θ/2π: the cut surface
 * there lies that much times tan κ under the edge. Places that are not on the chamfer have no gap.
 */
public final class Gaps {
    private static final double ON_SURFACE = 1e-6;
    /** The face may lean back under its land by this share of the division and still count to it. */
    private static final double LEAN = 0.2;

    private final double[] gaps;

    private Gaps(double[] gaps) {
        this.gaps = gaps;
    }

    static Gaps of(Mesh mesh, TapSurface surface) {
        double turn = surface.lead / (2 * Math.PI);
        double perRadian = turn / (1 - turn * surface.twist) * surface.tangent;
        double[] xyz = mesh.xyz();
        double[] gaps = new double[mesh.places()];
        for (int i = 0; i < gaps.length; i++) {
            double z = xyz[3 * i + 2];
            double r = Math.hypot(xyz[3 * i], xyz[3 * i + 1]);
            double turned = Math.atan2(xyz[3 * i + 1], xyz[3 * i]) - surface.twist * z;
            double land = Math.floor(turned / surface.division + LEAN);
            double theta = turned - land * surface.division;
            int number = Math.floorMod((int) land, surface.lands);
            boolean inLand = z <= surface.length && theta <= surface.landAngle * (1 + LEAN);
            boolean on = inLand && Math.abs(r - surface.chamfer(number, theta, z)) < ON_SURFACE;
            gaps[i] = on ? surface.chamfer(number, 0, z) - perRadian * Math.max(0, theta) - r : Double.NaN;
        }
        return new Gaps(gaps);
    }

    /** The gap at a place of the mesh; empty where that is not on the chamfer. */
    public Optional<Length> at(int place) {
        return Double.isNaN(gaps[place]) ? Optional.empty() : Optional.of(Length.ofMm(gaps[place]));
    }
}
