// SPDX-License-Identifier: Apache-2.0
package landfall.drill;

import landfall.quantity.UnitSystem;

/** The drawers that a shop keeps its drills in. */
public enum Drawer {
    NUMBER(UnitSystem.INCH),
    LETTER(UnitSystem.INCH),
    FRACTION(UnitSystem.INCH),
    METRIC(UnitSystem.METRIC);

    private final UnitSystem system;

    Drawer(UnitSystem system) {
        this.system = system;
    }

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    public UnitSystem system() {
        return system;
    }
}
