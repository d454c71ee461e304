// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import landfall.quantity.Angle;
import landfall.quantity.Length;

/** Radii that a wheel has left on every land, on a grid of heights and land angles. */
public final class ChamferGrid {
    private final double[][][] radius;
    private final double land;
    private final double length;

    /**
     * @param radius mm: [land][row][place]
     * @param land angle of a land, edge to heel, radians
     * @param length of the chamfer along the axis, mm
     */
    ChamferGrid(double[][][] radius, double land, double length) {
        this.radius = radius;
        this.land = land;
        this.length = length;
    }

    public int lands() {
        return radius.length;
    }

    /** Rows, the first at the point, the last at the end of the chamfer. */
    public int rows() {
        return radius[0].length;
    }

    /** Places of a row, the first at the edge, the last at the heel. */
    public int places() {
        return radius[0][0].length;
    }

    /** Height of a row over the point, along the axis. */
    public Length height(int row) {
        return Length.ofMm(length * row / (rows() - 1));
    }

    /** Land angle of a place, behind the edge at its own height. */
    public Angle theta(int place) {
        return Angle.ofRad(land * place / (places() - 1));
    }

    /** Radius about the thread's own axis. */
    public Length radius(int onLand, int row, int place) {
        return Length.ofMm(radius[onLand][row][place]);
    }
}
