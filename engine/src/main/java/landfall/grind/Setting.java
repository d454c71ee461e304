// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What is set on the fixture.
 *
 * @param swivel of the table or the head, chamfer angle corrected for spiral flutes; unrounded
 * @param rises axial and radial
 * @param step the fixture's nearest swivel step; null when it has none
 * @param ways the ways there are, the chosen one first
 */
public record Setting(
        Way way, Angle swivel, Rises rises, @Nullable SwivelStep step, List<Option> ways) {
    public Setting {
        ways = List.copyOf(ways);
    }

    /** Which slide carries the rise. */
    public enum Way {
        RADIAL("radial only"),
        AXIAL("axial only"),
        BOTH("radial at its limit, axial for the rest");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * Rises over one lobe's whole rise angle, and the share of them over the land.
     *
     * @param axial over the lobe; 0 when that slide is not used
     * @param radial over the lobe; 0 when that slide is not used
     */
    public record Rises(Length axial, Length radial, Length axialOverLand, Length radialOverLand) {}

    /** The nearest step of the swivel, and the working relief it then leaves. */
    public record SwivelStep(Angle swivel, Angle working) {}

    /**
     * One way to reach the fall.
     *
     * @param reached whether the fixture's slides reach it
     * @param bySwivel change of working relief for a quarter of a degree of swivel
     * @param byDivision change of working relief for one dial division over the land
     */
    public record Option(Way way, Rises rises, boolean reached, Angle bySwivel, Angle byDivision) {}
}
