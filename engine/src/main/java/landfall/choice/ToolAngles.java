// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import landfall.material.Between;
import landfall.material.WorkMaterial;
import landfall.quantity.Angle;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * Angles to look for, or to grind, for a material.
 *
 * @param rake radial, at the major diameter
 * @param relief of the chamfer, static, square to the axis
 */
public record ToolAngles(Between<Angle> rake, Between<Angle> relief) {
    private static final Source LIST = Source.of("common-practice", "list of materials");
    static final Rule RAKE_LEAST = angle("γ_1", "least radial rake for the material");
    static final Rule RAKE_GREATEST = angle("γ_2", "greatest radial rake for the material");
    static final Rule RELIEF_LEAST = angle("α_1", "least chamfer relief for the material, square to the axis");
    static final Rule RELIEF_GREATEST = angle("α_2", "greatest chamfer relief for the material, square to the axis");

    private static Rule angle(String symbol, String means) {
        return Rule.table(symbol, "deg", LIST, Trust.PRACTICE, means);
    }

    static ToolAngles of(WorkMaterial material, Pen pen) {
        Between<Angle> rake = material.cutting().rake().value();
        pen.write(RAKE_LEAST, rake.least().deg());
        pen.write(RAKE_GREATEST, rake.greatest().deg());
        pen.write(RELIEF_LEAST, material.relief().least().deg());
        pen.write(RELIEF_GREATEST, material.relief().greatest().deg());
        return new ToolAngles(
                rake, new Between<>(material.relief().least(), material.relief().greatest()));
    }
}
