// SPDX-License-Identifier: Apache-2.0
package landfall.drill;

import landfall.quantity.Length;

/**
 * A drill by its name: {@code 7} in the number drawer, {@code F} in the letter drawer, {@code 27/64} in the fraction
 * drawer, {@code 6.8} in the metric drawer.
 */
public record Drill(Drawer drawer, String name, Length diameter) {
    /** As a shop writes it: {@code #7}, {@code F}, {@code 27/64}, {@code 6.8 mm}. */
    public String called() {
        return switch (drawer) {
            case NUMBER -> "#" + name;
            case LETTER, FRACTION -> name;
            case METRIC -> name + " mm";
        };
    }
}
