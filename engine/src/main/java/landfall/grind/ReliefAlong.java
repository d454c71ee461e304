// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * Relief at the point, the middle and the large end of the chamfer. The fall per radian is the same along the chamfer,
 * so both the relief and its loss grow as 1/r towards the point.
 */
public record ReliefAlong(String at, Length radius, Angle ground, Angle loss, Angle working) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/chamfer-relief.md");
    static final Rule POINT_RADIUS = new Rule("r_x", "d_p/2", "mm", GEOMETRY, Trust.DERIVED, "radius at the point");
    static final Rule MIDDLE_RADIUS =
            new Rule("r_x", "r", "mm", GEOMETRY, Trust.DERIVED, "radius at the middle of the chamfer");
    static final Rule LARGE_RADIUS = new Rule("r_x", "d/2", "mm", GEOMETRY, Trust.DERIVED, "radius at the large end");
    public static final Rule GROUND =
            new Rule("α_nx", "atan(cos(κ)*f'/r_x)", "deg", GEOMETRY, Trust.DERIVED, "static relief there");
    public static final Rule LOSS = new Rule(
            "η_x", "atan(L_w/(2*pi*r_x)*sin(κ))", "deg", GEOMETRY, Trust.DERIVED, "relief lost to the advance there");
    public static final Rule WORKING =
            new Rule("α_wx", "α_nx - η_x", "deg", GEOMETRY, Trust.DERIVED, "working relief there");

    /** The three places, from the point to the large end. */
    static List<ReliefAlong> of(ChamferPlace place, Length perRadian, Pen pen) {
        List<ReliefAlong> along = new ArrayList<>();
        along.add(at("point", pen.write(POINT_RADIUS, place.pointRadius().mm()), place, perRadian, pen));
        along.add(at("middle", pen.write(MIDDLE_RADIUS, place.midRadius().mm()), place, perRadian, pen));
        along.add(at("large end", pen.write(LARGE_RADIUS, place.largeRadius().mm()), place, perRadian, pen));
        return List.copyOf(along);
    }

    private static ReliefAlong at(String name, double r_x, ChamferPlace place, Length perRadian, Pen pen) {
        double kappa = place.kappa().rad();
        double alpha_nx = pen.write(GROUND, Math.toDegrees(Math.atan(Math.cos(kappa) * perRadian.mm() / r_x)));
        double eta_x = pen.write(
                LOSS, Math.toDegrees(Math.atan(place.leadFelt().mm() / (2 * Math.PI * r_x) * Math.sin(kappa))));
        double alpha_wx = pen.write(WORKING, alpha_nx - eta_x);
        return new ReliefAlong(
                name, Length.ofMm(r_x), Angle.ofDeg(alpha_nx), Angle.ofDeg(eta_x), Angle.ofDeg(alpha_wx));
    }
}
