// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

/** A stress or strength. Held in N/mm2 (MPa). */
public record Stress(double nPerMm2) implements Comparable<Stress> {
    public Stress {
        if (!Double.isFinite(nPerMm2)) {
            throw new IllegalArgumentException("stress is not a finite number: " + nPerMm2);
        }
    }

    public static Stress ofNPerMm2(double nPerMm2) {
        return new Stress(nPerMm2);
    }

    public static Stress ofPsi(double psi) {
        return new Stress(psi * Force.N_PER_POUND / (Length.MM_PER_INCH * Length.MM_PER_INCH));
    }

    public double psi() {
        return nPerMm2 / Force.N_PER_POUND * Length.MM_PER_INCH * Length.MM_PER_INCH;
    }

    @Override
    public int compareTo(Stress other) {
        return Double.compare(nPerMm2, other.nPerMm2);
    }
}
