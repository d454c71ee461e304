// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

/** A force. Held in newtons; the pound-force is 0.45359237 kg times 9.80665 m/s2, both exact. */
public record Force(double n) implements Comparable<Force> {
    public Force {
        if (!Double.isFinite(n)) {
            throw new IllegalArgumentException("force is not a finite number: " + n);
        }
    }

    public static final double N_PER_POUND = 0.45359237 * 9.80665;

    public static Force ofN(double n) {
        return new Force(n);
    }

    public static Force ofPound(double pound) {
        return new Force(pound * N_PER_POUND);
    }

    public double pound() {
        return n / N_PER_POUND;
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(n, other.n);
    }
}
