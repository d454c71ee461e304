// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import java.util.Locale;

/** How a material's chip breaks, or does not. */
public enum ChipClass {
    /** Ribbons and snarls that do not break. */
    STRINGY,
    /** Long coils. */
    LONG,
    /** Coils that break now and then. */
    MEDIUM,
    /** Commas and short curls. */
    SHORT,
    /** Needles, crumbs, dust. */
    POWDER;

    /** As the list writes it. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
