// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import landfall.grind.ChamferRelief;
import landfall.grind.GrindSetup;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;

/**
 * The whole chamfer as the wheel leaves it: the radius on every land, by land angle and height from the point.
 *
 * <p>Straight and spiral flutes. A land angle is counted at each height from the edge there; on spiral flutes the edge
 * lags by 2π·z/L_f, and the cam, which knows the spindle only, is timed for the middle of the chamfer. Each plane
 * square to the axis is solved on its own at the nodes of a Chebyshev grid, and heights between are interpolated. Radii
 * are about the thread's own axis; run-out counts to first order.
 */
public final class ChamferGround {
    /** Planes over the chamfer; the test holds the whole grid to a micrometre of brute force. */
    private static final int PLANES = 9;

    /** Land angle from one place to the next. */
    public static final Angle STEP = Angle.ofDeg(0.25);

    private final Lands lands;
    private final ChebyshevHeights heights;
    private final double[][][] radius;
    private final double[][] dying;

    private ChamferGround(Lands lands, ChebyshevHeights heights, double[][][] radius, double[][] dying) {
        this.dying = dying;
        this.lands = lands;
        this.heights = heights;
        this.radius = radius;
    }

    /**
     * The lands of a tap under the spindle.
     *
     * @param angle of a land, edge to heel, radians
     * @param steps places on a land, less one
     * @param perHeight lag of the edge, radians per mm; 0 on straight flutes
     * @param middle height at which the cam is timed, mm
     */
    record Lands(int count, double angle, int steps, double perHeight, double middle) {
        /** Angle round the tap, from the edge of land 1 at the middle height, backwards. */
        double round(int land, double theta, double z) {
            return land * 2 * Math.PI / count + theta + (z - middle) * perHeight;
        }

        double theta(int step) {
            return angle * step / steps;
        }
    }

    /** Runs a set-up over the whole chamfer. */
    public static ChamferGround of(GrindSetup setup, Errors errors) {
        return of(setup, setup.motion().setting().swivel(), errors);
    }

    /** The same with another swivel; the slides stay as they are set. */
    static ChamferGround of(GrindSetup setup, Angle swivel, Errors errors) {
        ChebyshevHeights heights = new ChebyshevHeights(PLANES, length(setup));
        Lands lands = lands(setup, (int) Math.ceil(setup.land().rad() / STEP.rad()));
        double[][][] radius = new double[lands.count][PLANES][lands.steps + 1];
        double[][] dying = new double[lands.count][PLANES];
        CamMotion motion = motion(setup, errors);
        for (int p = 0; p < PLANES; p++) {
            ChamferPlane plane = new ChamferPlane(setup, motion, swivel, errors, heights.node(p));
            for (int land = 0; land < lands.count; land++) {
                // no index error: every land meets the wheel alike
                double[] like = land > 0 && plane.isEven() ? radius[0][p] : null;
                plane.fill(radius[land][p], lands.round(land, 0, heights.node(p)), lands.theta(1), like);
            }
            for (int land = 0; land < lands.count; land++) {
                double edge = lands.round(land, 0, heights.node(p));
                plane.shift(radius[land][p], land, edge, lands.theta(1));
                dying[land][p] = plane.riseEnds(land) - edge;
            }
        }
        return new ChamferGround(lands, heights, radius, dying);
    }

    /** Radii of the edges alone, by height; quicker than the whole. */
    static double[][] edges(GrindSetup setup, Angle swivel, Errors errors, ChebyshevHeights heights) {
        Lands lands = lands(setup, 1);
        double[][] edges = new double[lands.count][heights.count()];
        CamMotion motion = motion(setup, errors);
        for (int p = 0; p < heights.count(); p++) {
            ChamferPlane plane = new ChamferPlane(setup, motion, swivel, errors, heights.node(p));
            for (int land = 0; land < lands.count; land++) {
                double[] edge = new double[1];
                double round = lands.round(land, 0, heights.node(p));
                plane.fill(edge, round, 0, null);
                plane.shift(edge, land, round, 0);
                edges[land][p] = edge[0];
            }
        }
        return edges;
    }

    /** Length of the chamfer of a set-up along the axis. */
    public static Length lengthOf(GrindSetup setup) {
        return Length.ofMm(length(setup));
    }

    /** Length of the chamfer along the axis, mm. */
    static double length(GrindSetup setup) {
        return setup.tap().chamfer().threads() * setup.tap().thread().pitch().mm();
    }

    static CamMotion motion(GrindSetup setup, Errors errors) {
        var cam = setup.fixture().cam();
        return new CamMotion(cam.curve(), cam.lobe(), setup.tap().flutes().count(), errors.index());
    }

    private static Lands lands(GrindSetup setup, int steps) {
        var flutes = setup.tap().flutes();
        double perHeight = flutes.kind().isSpiral()
                ? 2
                        * Math.PI
                        / ChamferRelief.fluteLead(setup.tap().thread(), flutes, Pen.NONE)
                                .mm()
                : 0;
        return new Lands(flutes.count(), setup.land().rad(), steps, perHeight, length(setup) / 2);
    }

    public int lands() {
        return lands.count;
    }

    /** Angle of a land, edge to heel. */
    public Angle land() {
        return Angle.ofRad(lands.angle);
    }

    /** Length of the chamfer along the axis. */
    public Length length() {
        return Length.ofMm(heights.length());
    }

    /**
     * Radius left, about the thread's axis.
     *
     * @param land from 0, counted backwards over the lands
     * @param theta land angle behind the edge at that height; beyond the land its ends count
     * @param fromPoint height over the point, along the axis; the chamfer's line runs on past its end
     */
    public Length radius(int land, Angle theta, Length fromPoint) {
        double place = Math.min(1, Math.max(0, theta.rad() / lands.angle)) * lands.steps;
        int k = Math.min(lands.steps - 1, (int) place);
        double low = at(land, k, fromPoint.mm());
        double high = at(land, k + 1, fromPoint.mm());
        return Length.ofMm(low + (place - k) * (high - low));
    }

    private double at(int land, int k, double z) {
        double inside = Math.min(heights.length(), Math.max(0, z));
        double[] weights = heights.weights(inside);
        double value = 0;
        for (int p = 0; p < PLANES; p++) {
            value += weights[p] * radius[land][p][k];
        }
        return value + (z - inside) * slope();
    }

    /** Slope of the nominal chamfer line: rise of the edges from the first plane to the last. */
    private double slope() {
        double rise = 0;
        for (double[][] land : radius) {
            rise += (land[PLANES - 1][0] - land[0][0]) / lands.count;
        }
        return rise / heights.length();
    }

    /**
     * The whole chamfer on a grid, places {@link #STEP} apart or a little closer.
     *
     * @param between height from one row to the next at most
     */
    public ChamferGrid grid(Length between) {
        int rows = (int) Math.ceil(heights.length() / between.mm());
        return new ChamferGrid(rows(rows), lands.angle, heights.length());
    }

    /**
     * The gaps of one land.
     *
     * @param land from 0
     */
    public LandGaps gaps(GrindSetup setup, int land, Length between) {
        ChamferGrid grid = grid(between);
        double[] ends = new double[grid.rows()];
        for (int row = 0; row < ends.length; row++) {
            double[] weights = heights.weights(grid.height(row).mm());
            for (int p = 0; p < PLANES; p++) {
                ends[row] += weights[p] * dying[land][p];
            }
        }
        return new LandGaps(land, grid, advance(setup), ends);
    }

    /** What the tap's advance takes of the radial fall, mm per radian of land. */
    static double advance(GrindSetup setup) {
        return setup.shape().place().leadFelt().mm()
                / (2 * Math.PI)
                * Math.tan(setup.tap().chamfer().angle().rad());
    }

    /** Radii at rows + 1 heights, mm: [land][height][place]. */
    double[][][] rows(int rows) {
        double[][][] grid = new double[lands.count][rows + 1][lands.steps + 1];
        for (int row = 0; row <= rows; row++) {
            double[] weights = heights.weights(heights.length() * row / rows);
            for (int land = 0; land < lands.count; land++) {
                fill(grid[land][row], weights, radius[land]);
            }
        }
        return grid;
    }

    private static void fill(double[] into, double[] weights, double[][] planes) {
        for (int p = 0; p < weights.length; p++) {
            double weight = weights[p];
            double[] plane = planes[p];
            for (int k = 0; k < into.length; k++) {
                into[k] += weight * plane[k];
            }
        }
    }

    Lands places() {
        return lands;
    }

    ChebyshevHeights heights() {
        return heights;
    }

    /** Radii at the nodes, mm: [land][plane][place]. */
    double[][][] nodes() {
        return radius;
    }
}
