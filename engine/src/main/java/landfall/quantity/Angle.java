// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

/** A plane angle. Held in degrees, as people enter it and as fixtures are graduated. */
public record Angle(double deg) implements Comparable<Angle> {
    public static final Angle ZERO = new Angle(0);

    public Angle {
        if (!Double.isFinite(deg)) {
            throw new IllegalArgumentException("angle is not a finite number: " + deg);
        }
    }

    public static Angle ofDeg(double deg) {
        return new Angle(deg);
    }

    public static Angle ofRad(double rad) {
        return new Angle(Math.toDegrees(rad));
    }

    public double rad() {
        return Math.toRadians(deg);
    }

    public Angle plus(Angle other) {
        return new Angle(deg + other.deg);
    }

    public Angle minus(Angle other) {
        return new Angle(deg - other.deg);
    }

    public Angle times(double factor) {
        return new Angle(deg * factor);
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(deg, other.deg);
    }
}
