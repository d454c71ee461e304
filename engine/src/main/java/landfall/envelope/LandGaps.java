// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * The radial gap between one land and the surface that its edge has cut, unrolled: rows along the chamfer, places
 * behind the edge.
 */
public final class LandGaps {
    private final int land;
    private final ChamferGrid grid;
    private final double perRadian;
    private final double[] dying;

    /**
     * @param land from 0
     * @param perRadian what the tap's advance takes of the fall, mm per radian of land
     * @param dying land angle of each row at which the rise has ended under the wheel, radians
     */
    LandGaps(int land, ChamferGrid grid, double perRadian, double[] dying) {
        this.land = land;
        this.grid = grid;
        this.perRadian = perRadian;
        this.dying = dying;
    }

    /** Its number, counted backwards over the lands from 1. */
    public int land() {
        return land + 1;
    }

    public int rows() {
        return grid.rows();
    }

    public int places() {
        return grid.places();
    }

    /** Height of a row over the point, along the axis. */
    public Length height(int row) {
        return grid.height(row);
    }

    /** Land angle of a place, behind the edge at its own height. */
    public Angle theta(int place) {
        return grid.theta(place);
    }

    /** Radial gap to the cut surface; 0 at the edge, negative where the land drags. */
    public Length gap(int row, int place) {
        double fall =
                grid.radius(land, row, 0).mm() - grid.radius(land, row, place).mm();
        return Length.ofMm(fall - perRadian * grid.theta(place).rad());
    }

    /**
     * Land angle behind which the rise has ended and only the wheel's own arc goes on relieving; past the heel: never.
     */
    public Angle dying(int row) {
        return Angle.ofRad(dying[row]);
    }
}
