// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

/** A cutting or wheel speed. Held in metres a minute. */
public record Speed(double mPerMin) implements Comparable<Speed> {
    public Speed {
        if (!Double.isFinite(mPerMin)) {
            throw new IllegalArgumentException("speed is not a finite number: " + mPerMin);
        }
    }

    public static Speed ofMPerMin(double mPerMin) {
        return new Speed(mPerMin);
    }

    public static Speed ofMPerS(double mPerS) {
        return new Speed(mPerS * 60);
    }

    /** The foot is 12 inches of 25.4 mm exactly. */
    public static Speed ofFtPerMin(double ftPerMin) {
        return new Speed(ftPerMin * 12 * Length.MM_PER_INCH / 1000);
    }

    public double mPerS() {
        return mPerMin / 60;
    }

    public double ftPerMin() {
        return mPerMin * 1000 / (12 * Length.MM_PER_INCH);
    }

    @Override
    public int compareTo(Speed other) {
        return Double.compare(mPerMin, other.mPerMin);
    }
}
