// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed formulas of what a fixture as it is set grinds; docs/methods/spread.md derives them. */
public final class AsSetRules {
    private static final Source NOTE = Source.of("derived", "docs/methods/spread.md");

    static final Rule SWIVEL_GIVEN = Rule.given("κ_u", "deg", "swivel as it is set");
    static final Rule SWIVEL_TAKEN = derived("κ_u", "κ_s", "deg", "swivel, taken as set right");
    static final Rule AXIAL_GIVEN = Rule.given("a_u", "mm", "axial rise over the lobe as it is set");
    static final Rule RADIAL_GIVEN = Rule.given("b_u", "mm", "radial rise over the lobe as it is set");
    static final Rule AXIAL_TAKEN = derived("a_u", "a", "mm", "axial rise over the lobe, taken as set right");
    static final Rule RADIAL_TAKEN = derived("b_u", "b", "mm", "radial rise over the lobe, taken as set right");

    public static final Rule FALL =
            derived("f'_u", "s'*(a_u*tan(κ_u) + b_u)", "mm/rad", "radial fall per radian that this setting grinds");
    static final Rule CHAMFER = derived("κ_cu", "κ_u", "deg", "chamfer angle that comes out");
    static final Rule CHAMFER_SPIRAL =
            derived("κ_cu", "atan(tan(κ_u) - f'_u*2*pi/L_f)", "deg", "chamfer angle that comes out");
    public static final Rule GROUND =
            derived("α_nu", "atan(cos(κ_cu)*f'_u/r)", "deg", "static relief that comes out, square to the edge");
    public static final Rule LOSS =
            derived("η_u", "atan(tan(λ)*sin(κ_cu))", "deg", "relief lost to the advance on that chamfer");
    public static final Rule WORKING =
            derived("α_u", "α_nu - η_u", "deg", "working relief that comes out, square to the edge");

    private AsSetRules() {}

    private static Rule derived(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, NOTE, Trust.DERIVED, means);
    }
}
