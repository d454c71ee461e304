// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import java.util.ArrayList;
import java.util.List;
import landfall.grind.GrindSetup;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * The chamfer that comes out of a set-up, found on the whole of it and not at its middle only.
 *
 * @param angle of the edges to the axis, mean of the lands
 * @param swivel that would bring the wanted chamfer angle out, slides left as they are
 * @param lands each with the length of its own chamfer
 * @param least the smallest gap to the cut surface behind the first degree of the lands; negative drags
 */
public record ChamferFound(Angle angle, Angle swivel, List<LandChamfer> lands, LeastGap least) {
    private static final int PLANES = 5;
    private static final int ROWS = 40;
    private static final double NEAR_EDGE = Math.toRadians(1);
    private static final double ALIKE = Math.toRadians(1e-4);

    public ChamferFound {
        lands = List.copyOf(lands);
    }

    /**
     * One land's chamfer.
     *
     * @param land its number, counted backwards over the lands from 1
     * @param angle of its edge to the axis
     * @param length from the point to where its edge meets the basic major diameter
     */
    public record LandChamfer(int land, Angle angle, Length length) {}

    /** Where the gap is least: the land, the land angle and the height over the point. */
    public record LeastGap(Length gap, int land, Angle at, Length fromPoint) {}

    /** What a set-up leaves. */
    public static ChamferFound of(GrindSetup setup, ChamferGround ground, Errors errors) {
        ChebyshevHeights heights = new ChebyshevHeights(PLANES, ChamferGround.length(setup));
        Angle set = setup.motion().setting().swivel();
        Line[] edges = lines(ChamferGround.edges(setup, set, errors, heights), heights);
        double major = setup.tap().thread().major().mm() / 2;
        List<LandChamfer> lands = new ArrayList<>();
        for (int i = 0; i < edges.length; i++) {
            lands.add(new LandChamfer(
                    i + 1,
                    Angle.ofRad(Math.atan(edges[i].slope)),
                    Length.ofMm((major - edges[i].foot) / edges[i].slope)));
        }
        return new ChamferFound(
                Angle.ofRad(angle(edges)), swivelFor(setup, errors, heights), lands, least(setup, ground));
    }

    /** A straight line through the edge radii: radius at the point, and slope. */
    private record Line(double foot, double slope) {}

    private static Line[] lines(double[][] edges, ChebyshevHeights heights) {
        Line[] lines = new Line[edges.length];
        for (int i = 0; i < edges.length; i++) {
            double meanZ = 0;
            double meanR = 0;
            for (int p = 0; p < heights.count(); p++) {
                meanZ += heights.node(p) / heights.count();
                meanR += edges[i][p] / heights.count();
            }
            double zz = 0;
            double zr = 0;
            for (int p = 0; p < heights.count(); p++) {
                double z = heights.node(p) - meanZ;
                zz += z * z;
                zr += z * (edges[i][p] - meanR);
            }
            lines[i] = new Line(meanR - zr / zz * meanZ, zr / zz);
        }
        return lines;
    }

    private static double angle(Line[] edges) {
        double sum = 0;
        for (Line edge : edges) {
            sum += Math.atan(edge.slope);
        }
        return sum / edges.length;
    }

    /** Secant steps; the angle follows the swivel nearly one to one. */
    private static Angle swivelFor(GrindSetup setup, Errors errors, ChebyshevHeights heights) {
        double wanted = setup.tap().chamfer().angle().rad();
        double before = setup.motion().setting().swivel().rad();
        double offBefore = angleAt(setup, before, errors, heights) - wanted;
        double here = before - offBefore;
        for (int step = 0; step < 12 && Math.abs(here - before) > ALIKE; step++) {
            double off = angleAt(setup, here, errors, heights) - wanted;
            double next = off == offBefore ? here : here - off * (here - before) / (off - offBefore);
            before = here;
            offBefore = off;
            here = next;
        }
        return Angle.ofRad(here);
    }

    private static double angleAt(GrindSetup setup, double swivel, Errors errors, ChebyshevHeights heights) {
        return angle(lines(ChamferGround.edges(setup, Angle.ofRad(swivel), errors, heights), heights));
    }

    private static LeastGap least(GrindSetup setup, ChamferGround ground) {
        double perRadian = ChamferGround.advance(setup);
        double[][][] rows = ground.rows(ROWS);
        double least = Double.POSITIVE_INFINITY;
        LeastGap found = new LeastGap(Length.ZERO, 1, Angle.ZERO, Length.ZERO);
        for (int land = 0; land < rows.length; land++) {
            for (int row = 0; row <= ROWS; row++) {
                double[] places = rows[land][row];
                for (int k = 1; k < places.length; k++) {
                    double theta = ground.places().theta(k);
                    double gap = places[0] - places[k] - perRadian * theta;
                    if (theta >= NEAR_EDGE && gap < least) {
                        least = gap;
                        found = new LeastGap(
                                Length.ofMm(gap),
                                land + 1,
                                Angle.ofRad(theta),
                                Length.ofMm(ground.length().mm() * row / ROWS));
                    }
                }
            }
        }
        return found;
    }
}
