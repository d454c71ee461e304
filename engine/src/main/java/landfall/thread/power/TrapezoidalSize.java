// SPDX-License-Identifier: Apache-2.0
package landfall.thread.power;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import landfall.thread.Table;
import landfall.thread.scan.Numerals;

/** Diameter and pitch in units of 1e-4 mm, and starts. */
public record TrapezoidalSize(int diameter, int pitch, int starts) {
    static final long UNIT = Numerals.ONE / 10_000;

    private static final List<TrapezoidalSize> SERIES = Table.rows("trapezoidal-series").stream()
            .map(row -> new TrapezoidalSize(units(row.get(0)), units(row.get(1)), 1))
            .toList();
    private static final Set<TrapezoidalSize> STANDARD = SERIES.stream().collect(Collectors.toUnmodifiableSet());

    private static int units(String mm) {
        return (int) Math.round(Double.parseDouble(mm) * 10_000);
    }

    static List<TrapezoidalSize> standard() {
        return SERIES;
    }

    boolean isStandard() {
        return STANDARD.contains(new TrapezoidalSize(diameter, pitch, 1));
    }

    double d() {
        return diameter / 10_000.0;
    }

    double P() {
        return pitch / 10_000.0;
    }

    /** 0.15 at pitch 1.5, 0.25 to 5, 0.5 to 12, 1 above; under 1.5 as at 1.5. */
    double crestClearance() {
        if (P() < 2) {
            return 0.15;
        }
        return P() <= 5 ? 0.25 : P() <= 12 ? 0.5 : 1;
    }

    /** {@code Tr40x7} or {@code Tr40x14(P7)}. */
    String label() {
        String text = "Tr" + mm(diameter) + "x";
        return starts == 1 ? text + mm(pitch) : text + mm(pitch * starts) + "(P" + mm(pitch) + ")";
    }

    private static String mm(int units) {
        return Numerals.plain(units * UNIT);
    }
}
