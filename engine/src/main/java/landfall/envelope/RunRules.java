// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import landfall.working.Rule;
import landfall.working.Source;

/** Figures of the numerical grind. */
public final class RunRules {
    private static final Source NOTE = Source.of("derived", "docs/methods/numerical-grind.md");

    public static final Rule ANGLE = Rule.run("κ_run", "deg", NOTE, "chamfer angle that comes out, mean of the lands");
    public static final Rule SWIVEL =
            Rule.run("κ_mend", "deg", NOTE, "swivel that brings out the wanted chamfer angle, slides as they are");
    public static final Rule CLIPPED =
            Rule.run("q_clip", "mm", NOTE, "most that the lobe before takes off an edge on its way back");
    public static final Rule GAP = Rule.run(
            "g_least", "mm", NOTE, "least radial gap to the cut surface over the whole chamfer; under 0 drags");
    public static final Rule GAP_AT = Rule.run("θ_least", "deg", NOTE, "land angle of the least gap");
    public static final Rule GAP_HEIGHT = Rule.run("z_least", "mm", NOTE, "height of the least gap over the point");
    public static final Rule EDGE =
            Rule.run("e_i", "mm", NOTE, "edge of a land against the mean of all, radially; + stands proud");
    public static final Rule WORKING =
            Rule.run("α_run", "deg", NOTE, "relief left at work near the edge, square to it, middle of the chamfer");
    public static final Rule FALL = Rule.run("f_run", "mm", NOTE, "radial fall at the heel, middle of the chamfer");
    public static final Rule LAND_GAP =
            Rule.run("g_i", "mm", NOTE, "least radial gap of a land to the cut surface, middle of the chamfer");
    public static final Rule LENGTH =
            Rule.run("l_i", "mm", NOTE, "chamfer of a land along the axis, from the point to the full thread");
    public static final Rule SHARE = Rule.run("p_i", "%", NOTE, "share of a tooth in what a turn cuts");

    private RunRules() {}
}
