// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

/** A place on the paper: millimetres to the right of and below the drawing's upper left corner. */
public record Spot(double x, double y) {
    public Spot {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("no such place on paper: " + x + ", " + y);
        }
    }

    public static Spot at(double x, double y) {
        return new Spot(x, y);
    }

    /** Moved to the right and down. */
    public Spot plus(double right, double down) {
        return new Spot(x + right, y + down);
    }

    /** The place at a distance in a direction; direction in degrees, 0 to the right, counted anticlockwise as seen. */
    public Spot polar(double directionDeg, double distance) {
        double rad = Math.toRadians(directionDeg);
        return new Spot(x + distance * Math.cos(rad), y - distance * Math.sin(rad));
    }

    public double distance(Spot other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** Direction to another place in degrees, 0 to the right, anticlockwise as seen. */
    public double direction(Spot other) {
        return Math.toDegrees(Math.atan2(y - other.y, other.x - x));
    }

    /** The place at a share of the way to another. */
    public Spot towards(Spot other, double share) {
        return new Spot(x + (other.x - x) * share, y + (other.y - y) * share);
    }
}
