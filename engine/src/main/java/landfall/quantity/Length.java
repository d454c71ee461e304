// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

import java.util.Locale;

/** A length. Held in millimetres, the unit of the standards we compute by; the inch is exact. */
public record Length(double mm) implements Comparable<Length> {
    /** Exact by definition of the international inch (1959). */
    public static final double MM_PER_INCH = 25.4;

    public static final Length ZERO = new Length(0);

    public Length {
        if (!Double.isFinite(mm)) {
            throw new IllegalArgumentException("length is not a finite number: " + mm);
        }
    }

    public static Length ofMm(double mm) {
        return new Length(mm);
    }

    public static Length ofInch(double inch) {
        return new Length(inch * MM_PER_INCH);
    }

    public double inch() {
        return mm / MM_PER_INCH;
    }

    public Length plus(Length other) {
        return new Length(mm + other.mm);
    }

    public Length minus(Length other) {
        return new Length(mm - other.mm);
    }

    public Length times(double factor) {
        return new Length(mm * factor);
    }

    /** The ratio of two lengths, a pure number. */
    public double over(Length other) {
        return mm / other.mm;
    }

    /** As a refusal or a caution says it, in both systems: {@code 0.553 mm (0.0218 in)}. */
    public String words() {
        return String.format(Locale.ROOT, "%.3f mm (%.4f in)", mm, inch());
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(mm, other.mm);
    }
}
