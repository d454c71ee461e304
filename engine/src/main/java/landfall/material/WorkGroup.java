// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import java.util.Locale;

/** Materials that behave alike when they are tapped; torque is calibrated by group. */
public enum WorkGroup {
    STEEL,
    /** Austenitic and soft martensitic stainless steel. */
    STAINLESS,
    /** Over about 35 HRC. */
    HARDENED,
    IRON,
    ALUMINIUM,
    COPPER,
    TITANIUM_NICKEL,
    MAGNESIUM,
    ZINC,
    PLASTIC;

    /** As the list writes it. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether a tooth that rubs leaves a hard skin for the next. */
    public boolean hardensUnderTheTool() {
        return this == STAINLESS || this == TITANIUM_NICKEL;
    }
}
