// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed formulas of the fixture's setting; docs/methods/cam-and-gap.md derives them. */
public final class SettingRules {
    private static final Source CAM = Source.of("derived", "docs/methods/cam-and-gap.md");

    public static final Rule SWIVEL = derived("κ_s", "κ", "deg", "swivel to set");
    public static final Rule SWIVEL_SPIRAL = derived("κ_s", "atan(tan(κ) + f'*2*pi/L_f)", "deg", "swivel to set");
    public static final Rule CAM_SLOPE = Rule.table(
            "s'",
            "1/rad",
            CAM,
            Trust.DERIVED,
            "slope of the cam with the edge on the centre line, share of its rise per radian");
    public static final Rule CAM_SLOPE_STRAIGHT =
            derived("s'", "180/(pi*B)", "1/rad", "slope of the cam, share of its rise per radian");
    static final Rule CIRCLE_PHASE = Rule.given("ψ", "deg", "phase of the offset circle");
    static final Rule EDGE_ON_CAM =
            derived("x_e", "max(0, 0 - t_s)", "deg", "turn of the cam with the edge on the centre line");
    static final Rule CAM_SLOPE_CIRCLE = derived(
            "s'",
            "sin(x_e + ψ)/(cos(ψ) - cos(B + ψ))",
            "1/rad",
            "slope of the cam with the edge on the centre line, share of its rise per radian");
    public static final Rule CAM_SHARE =
            Rule.table("s_L", "1", CAM, Trust.DERIVED, "share of the cam's rise while the land passes the centre line");
    public static final Rule CAM_SHARE_STRAIGHT = derived(
            "s_L",
            "max(0, min(1, (θ_L - t_s)/B)) - max(0, min(1, (0 - t_s)/B))",
            "1",
            "share of the cam's rise while the land passes the centre line");
    public static final Rule TOP = derived("f_top", "f'/s'", "mm", "radial fall at the top of the lobe");
    static final Rule RADIAL_LIMIT = Rule.given("b_max", "mm", "greatest radial rise of this fixture");
    static final Rule NO_AXIAL = derived("a", "0", "mm", "axial rise to set, over the lobe");
    static final Rule NO_RADIAL = derived("b", "0", "mm", "radial rise to set, over the lobe");
    static final Rule RADIAL_ONLY = derived("b", "f_top", "mm", "radial rise to set, over the lobe");
    static final Rule AXIAL_ONLY = derived("a", "f_top/tan(κ_s)", "mm", "axial rise to set, over the lobe");
    static final Rule RADIAL_AT_LIMIT = derived("b", "b_max", "mm", "radial rise to set, over the lobe");
    static final Rule AXIAL_REST = derived("a", "(f_top - b_max)/tan(κ_s)", "mm", "axial rise to set, over the lobe");
    public static final Rule AXIAL_OVER_LAND = derived("a_L", "a*s_L", "mm", "axial rise while the land passes");
    public static final Rule RADIAL_OVER_LAND = derived("b_L", "b*s_L", "mm", "radial rise while the land passes");

    static final Rule SWIVEL_OFF = Rule.given("q_s", "deg", "error of the swivel that is tried");
    static final Rule SWIVEL_TRIED = derived("κ_v", "κ_s + q_s", "deg", "swivel that is tried");
    static final Rule SWIVEL_STEP = Rule.given("κ_v", "deg", "nearest step of the swivel");
    static final Rule FALL_TRIED = derived("f'_v", "s'*(a*tan(κ_v) + b)", "mm/rad", "fall per radian at that swivel");
    static final Rule CHAMFER_TRIED = derived("κ_c", "κ_v", "deg", "chamfer angle that comes out");
    static final Rule CHAMFER_TRIED_SPIRAL =
            derived("κ_c", "atan(tan(κ_v) - f'_v*2*pi/L_f)", "deg", "chamfer angle that comes out");
    public static final Rule WORKING_TRIED =
            derived("α_v", "atan(cos(κ_c)*f'_v/r) - atan(tan(λ)*sin(κ_c))", "deg", "working relief at that swivel");
    public static final Rule BY_SWIVEL =
            derived("Δα_s", "α_v - α_w", "deg", "change of working relief for that error of the swivel");
    static final Rule DIVISION = Rule.given("q_d", "mm", "one division of the dial");
    static final Rule FALL_DIVISION_RADIAL =
            derived("f'_d", "f' + q_d*180/(pi*θ_L)", "mm/rad", "fall per radian, one division more over the land");
    static final Rule FALL_DIVISION_AXIAL = derived(
            "f'_d", "f' + q_d*tan(κ_s)*180/(pi*θ_L)", "mm/rad", "fall per radian, one division more over the land");
    public static final Rule BY_DIVISION = derived(
            "Δα_d",
            "atan(cos(κ)*f'_d/r) - atan(cos(κ)*f'/r)",
            "deg",
            "change of working relief for one dial division over the land");

    private SettingRules() {}

    private static Rule derived(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, CAM, Trust.DERIVED, means);
    }
}
