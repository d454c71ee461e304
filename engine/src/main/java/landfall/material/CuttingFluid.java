// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import java.util.Locale;

/** What is put on the tap. */
public enum CuttingFluid {
    DRY(false),
    /** Soluble oil in water. */
    EMULSION(true),
    /** Thin mineral or lard oil, no active sulphur. */
    LIGHT_OIL(false),
    SULPHUR_OIL(false),
    /** Oil with extreme-pressure additives. */
    EP_OIL(false),
    /** Grease, wax or paste. */
    PASTE(false);

    private final boolean water;

    CuttingFluid(boolean water) {
        this.water = water;
    }

    /** Whether water is in it: never on magnesium. */
    public boolean hasWater() {
        return water;
    }

    /** As written on a card and in the list. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
