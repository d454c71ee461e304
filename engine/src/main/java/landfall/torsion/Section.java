// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

import java.util.List;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;

/**
 * A section in torsion, against the solid circle of a diameter.
 *
 * @param outer diameter of that circle
 * @param stiffness J/J0, torque for one twist against the circle's
 * @param stress τ_max/(G·θ·R), peak stress for one twist against the circle's
 * @param strength W/W0, torque for one peak stress against the circle's: stiffness over stress
 * @param peak where the stress peaks, in the first repeat
 */
public record Section(Length outer, double stiffness, double stress, double strength, Place peak) {
    /** A turn of the outline under this is no corner, radians. */
    static final double SMOOTH = 1e-6;

    /** No peak is looked for this near an outer corner, share of the radius. */
    private static final double CORNER = 0.01;

    public static Section of(Outline outline, Length outer) {
        return of(outline, outer, Fineness.USUAL);
    }

    static Section of(Outline outline, Length outer, Fineness fineness) {
        refuseInnerCorners(outline);
        List<Panel> panels = Panel.cut(outline, fineness);
        double[] slope = new BoundaryEquation(panels, fineness.rule(), outline.repeats()).solve();
        double radius = outer.mm() / 2 * Panel.SCALED_RADIUS / outline.greatestRadius();
        double stiffness = stiffness(panels, slope, outline.repeats()) / (Math.PI * Math.pow(radius, 4) / 2);
        Peak.Found peak = new Peak(panels, slope, fineness.rule(), corners(outline)).find();
        double stress = peak.stress() / radius;
        double unscale = outline.greatestRadius() / Panel.SCALED_RADIUS;
        return new Section(
                outer, stiffness, stress, stiffness / stress, Place.ofMm(peak.x() * unscale, peak.y() * unscale));
    }

    /**
     * J for Gθ = 1. From Green's identity with r²/4: J = −½∮ r² ∂Φ/∂n ds − ∫ r² dA, and ∫ r² dA = ¼∮ r² (r·n) ds.
     * Summed over one repeat and multiplied.
     */
    private static double stiffness(List<Panel> panels, double[] slope, int repeats) {
        double sum = 0;
        int row = 0;
        for (Panel panel : panels) {
            for (int i = 0; i < panel.x.length; i++) {
                double r2 = panel.x[i] * panel.x[i] + panel.y[i] * panel.y[i];
                double rn = panel.x[i] * panel.nx[i] + panel.y[i] * panel.ny[i];
                double fall = slope[row++] - rn;
                sum -= (r2 * fall / 2 + r2 * rn / 4) * panel.ds[i];
            }
        }
        return repeats * sum;
    }

    private static void refuseInnerCorners(Outline outline) {
        for (int e = 0; e < outline.edges().size(); e++) {
            if (outline.cornerAfter(e) < -SMOOTH) {
                throw new OutOfRange(
                        "outline",
                        "a sharp inner corner of %.1f deg".formatted(-Math.toDegrees(outline.cornerAfter(e))),
                        "round at inner corners, where the stress of a sharp one has no bound",
                        "give the corner its radius");
            }
        }
    }

    /** Corners of one repeat and the one before its start, scaled: x, y and the distance to keep. */
    private static double[][] corners(Outline outline) {
        double scale = Panel.SCALED_RADIUS / outline.greatestRadius();
        double keep = CORNER * Panel.SCALED_RADIUS;
        int count = outline.edges().size();
        double[][] corners = new double[2 * count][];
        for (int e = 0; e < count; e++) {
            Edge edge = outline.edges().get(e);
            boolean sharpEnd = outline.cornerAfter(e) > SMOOTH;
            boolean sharpStart = outline.cornerAfter((e + count - 1) % count) > SMOOTH;
            corners[2 * e] = new double[] {scale * edge.x(1), scale * edge.y(1), sharpEnd ? keep : 0};
            corners[2 * e + 1] = new double[] {scale * edge.x(0), scale * edge.y(0), sharpStart ? keep : 0};
        }
        return corners;
    }
}
