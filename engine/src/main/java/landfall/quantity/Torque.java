// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

/** A torque. Held in newton metres. */
public record Torque(double nm) implements Comparable<Torque> {
    public Torque {
        if (!Double.isFinite(nm)) {
            throw new IllegalArgumentException("torque is not a finite number: " + nm);
        }
    }

    public static Torque ofNm(double nm) {
        return new Torque(nm);
    }

    public static Torque ofInchPound(double inchPound) {
        return new Torque(inchPound * Force.N_PER_POUND * Length.MM_PER_INCH / 1000);
    }

    public double inchPound() {
        return nm * 1000 / Length.MM_PER_INCH / Force.N_PER_POUND;
    }

    @Override
    public int compareTo(Torque other) {
        return Double.compare(nm, other.nm);
    }
}
