// SPDX-License-Identifier: Apache-2.0
package landfall.drill;

import landfall.quantity.Length;

/**
 * A drill by its name: {@code 7} in the number drawer, {@code F} in the letter drawer, {@code 27/64} in the fraction
 * drawer.
 */
public record Drill(Drawer drawer, String name, Length diameter) {
    /** As a shop writes it: {@code #7}, {@code F}, {@code 27/64}. */
    public String called() {
        return drawer == Drawer.NUMBER ? "#" + name : name;
    }
}
