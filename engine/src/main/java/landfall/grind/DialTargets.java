// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * What a dial should read while the tap is turned in its cutting sense, by place and land angle. Zero at the edge.
 *
 * <p>On a thread flank the lead comes off the axial rise, so zero there means "follows the lead"; a stylus on a flank
 * must stand square to a radial rise, or the rise shifts it by b·tan 30°. On the crests the relief of the crest is
 * subtracted from the reading. Square to the chamfer with the cam at work the dial stands still when the cam follows
 * what is on the tap.
 */
final class DialTargets {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/dial-targets.md");
    static final Rule AT = Rule.given("θ", "deg", "land angle, from the edge back to the heel");
    static final Rule CAM_SHARE_STRAIGHT = derived(
            "s_θ",
            "max(0, min(1, (θ - t_s)/B)) - max(0, min(1, (0 - t_s)/B))",
            "1",
            "share of the cam's rise since the edge stood on the centre line");
    static final Rule CAM_SHARE = Rule.table(
            "s_θ", "1", GEOMETRY, Trust.DERIVED, "share of the cam's rise since the edge stood on the centre line");
    static final Rule END = derived("y_end", "a*s_θ", "mm", "reading on the end of the tap or spindle");
    static final Rule SHANK = derived("y_shank", "b*s_θ", "mm", "reading on the shank");
    static final Rule FLANK = derived("y_flank", "a*s_θ - L*θ/360", "mm", "reading on a thread flank");
    static final Rule CREST_SLOPE = Rule.given("τ", "deg", "slope of the thread relief");
    static final Rule CREST_MARGIN = Rule.given("θ_c", "deg", "concentric margin of the thread relief");
    static final Rule CREST = derived(
            "y_crest",
            "b*s_θ - d/2*tan(τ)*max(0, θ - θ_c)*pi/180",
            "mm",
            "reading on the crests, their relief subtracted");
    static final Rule GROUND_STRAIGHT = derived(
            "f_θ",
            "cos(κ)*f'*max(0, θ - m)*pi/180",
            "mm",
            "fall behind the edge that this set-up grinds, square to the chamfer");
    static final Rule GROUND = Rule.table(
            "f_θ",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "fall behind the edge that this set-up grinds, square to the chamfer, from the cam's own curve");
    static final Rule STILL = derived("y_still", "-f_θ", "mm", "reading on the chamfer, cam at rest, once ground");
    static final Rule FOUND = Rule.given("α_found", "deg", "static relief found on the tap, square to the edge");
    static final Rule WORKING_GROUND =
            derived("y_work", "cos(κ)*f_top*s_θ - f_θ", "mm", "reading on the chamfer, cam at work, once ground");
    static final Rule WORKING_FOUND = derived(
            "y_work",
            "cos(κ)*f_top*s_θ - r*tan(α_found)*θ*pi/180",
            "mm",
            "reading on the chamfer as found, cam at work");

    private static final double STEP_DEG = 5;

    private final Grinding grinding;
    private final Setting setting;
    private final double topMm;
    private final Tap tap;
    private final @Nullable Angle found;

    DialTargets(Grinding grinding, Setting setting, double topMm, Tap tap, @Nullable Angle found) {
        this.grinding = grinding;
        this.setting = setting;
        this.topMm = topMm;
        this.tap = tap;
        this.found = found;
    }

    private static Rule derived(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, GEOMETRY, Trust.DERIVED, means);
    }

    /** Edge, every five degrees, heel; every place at each. */
    List<DialTarget> all(Pen pen) {
        List<DialTarget> targets = new ArrayList<>();
        double land = grinding.place().land().deg();
        for (int i = 0; i * STEP_DEG < land - 1e-9; i++) {
            add(i * STEP_DEG, targets, pen);
        }
        add(land, targets, pen);
        return List.copyOf(targets);
    }

    private void add(double deg, List<DialTarget> targets, Pen pen) {
        Angle at = Angle.ofDeg(pen.write(AT, deg));
        double share = share(at, pen);
        double ground = ground(at, pen);
        double a = setting.rises().axial().mm();
        double b = setting.rises().radial().mm();
        double lead = tap.thread().lead().perTurn().mm();
        put(Place.END, at, pen.write(END, a * share), targets);
        put(Place.SHANK, at, pen.write(SHANK, b * share), targets);
        put(Place.FLANK, at, pen.write(FLANK, a * share - lead * deg / 360), targets);
        put(Place.CREST, at, crest(at, b * share, pen), targets);
        put(Place.CHAMFER_STILL, at, pen.write(STILL, 0.0 - ground), targets);
        put(Place.CHAMFER_WORKING, at, working(at, share, ground, pen), targets);
    }

    private static void put(Place place, Angle at, double mm, List<DialTarget> targets) {
        targets.add(new DialTarget(place, at, Length.ofMm(mm)));
    }

    private double share(Angle at, Pen pen) {
        CamCurve curve = grinding.fixture().cam().curve();
        Lobe lobe = grinding.fixture().cam().lobe();
        double share =
                cam().since(at) / CamProfile.whole(curve, lobe.riseAngle()).rad();
        return pen.write(curve instanceof CamCurve.Straight ? CAM_SHARE_STRAIGHT : CAM_SHARE, share);
    }

    private double ground(Angle at, Pen pen) {
        CamCurve curve = grinding.fixture().cam().curve();
        double cosine = Math.cos(grinding.place().kappa().rad());
        if (curve instanceof CamCurve.Straight) {
            return pen.write(
                    GROUND_STRAIGHT,
                    cosine * grinding.fall().perRadian().mm() * cam().ground().since(at));
        }
        double share = cam().ground().since(at)
                / CamProfile.whole(curve, grinding.fixture().cam().lobe().riseAngle())
                        .rad();
        return pen.write(GROUND, cosine * topMm * share);
    }

    private CamProfile cam() {
        return CamProfile.of(grinding.fixture().cam(), grinding.phase().bareMargin());
    }

    private double crest(Angle at, double radialMm, Pen pen) {
        ThreadRelief relief = tap.cutting().relief();
        pen.write(CREST_SLOPE, relief.slope().deg());
        pen.write(CREST_MARGIN, relief.margin().deg());
        Length fall = CrestFall.of(tap.thread().major(), relief).at(at);
        return pen.write(CREST, radialMm - fall.mm());
    }

    private double working(Angle at, double share, double ground, Pen pen) {
        double cam = Math.cos(grinding.place().kappa().rad()) * topMm * share;
        if (found == null) {
            return pen.write(WORKING_GROUND, cam - ground);
        }
        double tangent = Math.tan(Math.toRadians(pen.write(FOUND, found.deg())));
        return pen.write(WORKING_FOUND, cam - grinding.place().midRadius().mm() * tangent * at.rad());
    }
}
