// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

import org.jspecify.annotations.Nullable;

/** Limits of size. A side that a standard leaves open is null, never a made-up figure. */
public record Limits(@Nullable Length min, @Nullable Length max) {
    public Limits {
        if (min != null && max != null && min.mm() > max.mm()) {
            throw new IllegalArgumentException("limits are crossed: " + min.mm() + " mm over " + max.mm() + " mm");
        }
    }

    public static Limits ofMm(double min, double max) {
        return new Limits(Length.ofMm(min), Length.ofMm(max));
    }

    public static Limits from(Length min) {
        return new Limits(min, null);
    }

    public static Limits upTo(Length max) {
        return new Limits(null, max);
    }

    /** Whether a size lies in the limits, both ends included. */
    public boolean holds(Length size) {
        return (min == null || size.mm() >= min.mm()) && (max == null || size.mm() <= max.mm());
    }
}
