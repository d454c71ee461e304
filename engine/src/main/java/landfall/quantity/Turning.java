// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

/** A speed of rotation. Held in revolutions a minute. */
public record Turning(double revPerMin) implements Comparable<Turning> {
    public Turning {
        if (!Double.isFinite(revPerMin)) {
            throw new IllegalArgumentException("turning is not a finite number: " + revPerMin);
        }
    }

    public static Turning ofRevPerMin(double revPerMin) {
        return new Turning(revPerMin);
    }

    @Override
    public int compareTo(Turning other) {
        return Double.compare(revPerMin, other.revPerMin);
    }
}
