// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.OutOfRange;
import landfall.grind.Setting.Option;
import landfall.grind.Setting.Rises;
import landfall.grind.Setting.SwivelStep;
import landfall.grind.Setting.Way;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.working.Pen;
import landfall.working.Rule;
import org.jspecify.annotations.Nullable;

/**
 * Chooses how the fixture makes the fall: radial only where it reaches, else axial only, else radial at its limit and
 * axial for the rest.
 *
 * <p>Wheel line fixed, tap moved: f_r = a·tan κ_s + b, κ_s being the swivel. On spiral flutes the edge comes out at
 * another angle than the swivel, tan κ = tan κ_s − f'·2π/L_f: swivel and axial gain are solved together, and f' is
 * held.
 */
final class SettingChoice {
    /** Error of the swivel whose effect is shown. */
    static final Angle SWIVEL_ERROR = Angle.ofDeg(0.25);

    private final ChamferPlace place;
    private final Fall fall;
    private final Fixture fixture;
    private final @Nullable Length fluteLead;
    private final Length division;

    private SettingChoice(ChamferPlace place, Fall fall, Fixture fixture, Length division, @Nullable Length fluteLead) {
        this.place = place;
        this.fall = fall;
        this.fixture = fixture;
        this.division = division;
        this.fluteLead = fluteLead;
    }

    /** The setting; refused, with what is within reach, when the fixture cannot make the fall. */
    static Setting of(Grinding grinding, @Nullable Length fluteLead, Pen pen) {
        var choice = new SettingChoice(
                grinding.place(), grinding.fall(), grinding.fixture(), grinding.division(), fluteLead);
        return choice.choose(pen);
    }

    private Setting choose(Pen pen) {
        Solved solved = solve(pen);
        Way chosen = firstReached(solved);
        List<Option> ways = new ArrayList<>();
        for (Way way : Way.values()) {
            if (way != chosen && isThere(way) && isSensible(way, solved)) {
                ways.add(option(way, solved, pen));
            }
        }
        Option option = option(chosen, solved, pen);
        ways.add(0, option);
        return new Setting(chosen, Angle.ofRad(solved.swivelRad), option.rises(), step(option, solved, pen), ways);
    }

    /**
     * What all ways have in common: the swivel in radians, the cam's slope per radian and its share over the land,
     * f_top in mm.
     */
    private record Solved(double swivelRad, double slope, double share, double top) {}

    private Solved solve(Pen pen) {
        double tangent = Math.tan(place.kappa().rad());
        double perRadian = fall.perRadian().mm();
        double swivel = fluteLead == null
                ? pen.write(SettingRules.SWIVEL, place.kappa().deg())
                : pen.write(
                        SettingRules.SWIVEL_SPIRAL,
                        Math.toDegrees(Math.atan(tangent + perRadian * 2 * Math.PI / fluteLead.mm())));
        if (!(swivel > 0)) {
            throw new OutOfRange(
                    "flutes.helix",
                    "a swivel of %.2f deg".formatted(swivel),
                    "one over 0 deg",
                    "ask for less relief: on these flutes the edge would run out steeper than any swivel can follow");
        }
        Lobe lobe = fixture.cam().lobe();
        Angle atEdge = Angle.ofDeg(Math.max(0, -lobe.riseStart().deg()));
        CamCurve curve = fixture.cam().curve();
        boolean straight = curve instanceof CamCurve.Straight;
        double slope = slope(curve, atEdge, lobe, pen);
        if (!(slope > 0)) {
            throw new OutOfRange(
                    "cam.table",
                    "no rise at %.1f deg".formatted(atEdge.deg()),
                    "a cam that rises where the edge is ground",
                    "measure the cam again there, or start its rise earlier");
        }
        double share = pen.write(
                straight ? SettingRules.CAM_SHARE_STRAIGHT : SettingRules.CAM_SHARE,
                shareOverLand(curve, lobe, place.land()));
        return new Solved(Math.toRadians(swivel), slope, share, pen.write(SettingRules.TOP, perRadian / slope));
    }

    private static double slope(CamCurve curve, Angle atEdge, Lobe lobe, Pen pen) {
        double slope = curve.slope(atEdge, lobe.riseAngle());
        if (curve instanceof CamCurve.Circle circle) {
            pen.write(SettingRules.CIRCLE_PHASE, circle.phase().deg());
            pen.write(SettingRules.EDGE_ON_CAM, atEdge.deg());
            return pen.write(SettingRules.CAM_SLOPE_CIRCLE, slope);
        }
        return pen.write(
                curve instanceof CamCurve.Straight ? SettingRules.CAM_SLOPE_STRAIGHT : SettingRules.CAM_SLOPE, slope);
    }

    private static double shareOverLand(CamCurve curve, Lobe lobe, Angle land) {
        return curve.share(land.minus(lobe.riseStart()), lobe.riseAngle())
                - curve.share(Angle.ZERO.minus(lobe.riseStart()), lobe.riseAngle());
    }

    private boolean isThere(Way way) {
        boolean axial = fixture.cam().axial() != null;
        boolean radial = fixture.cam().radial() != null;
        return switch (way) {
            case RADIAL -> radial;
            case AXIAL -> axial;
            case BOTH -> axial && radial;
        };
    }

    /** Both slides together make sense only where the radial one alone falls short. */
    private boolean isSensible(Way way, Solved solved) {
        return way != Way.BOTH
                || solved.top > SettingRefusal.greatest(fixture.cam().radial());
    }

    private Way firstReached(Solved solved) {
        for (Way way : Way.values()) {
            if (isThere(way) && isReached(way, rises(way, solved, Pen.NONE))) {
                return way;
            }
        }
        throw SettingRefusal.of(place, fixture, solved.swivelRad, solved.top, solved.slope);
    }

    private boolean isReached(Way way, Rises rises) {
        Cam cam = fixture.cam();
        return switch (way) {
            case RADIAL -> holds(cam.radial(), rises.radial());
            case AXIAL -> holds(cam.axial(), rises.axial());
            case BOTH -> rises.axial().mm() >= 0 && holds(cam.axial(), rises.axial());
        };
    }

    private static boolean holds(@Nullable Limits reach, Length rise) {
        return reach != null && reach.holds(rise);
    }

    private Rises rises(Way way, Solved solved, Pen pen) {
        double tangent = Math.tan(solved.swivelRad);
        double a;
        double b;
        if (way == Way.RADIAL) {
            a = pen.write(SettingRules.NO_AXIAL, 0);
            b = pen.write(SettingRules.RADIAL_ONLY, solved.top);
        } else if (way == Way.AXIAL) {
            a = pen.write(SettingRules.AXIAL_ONLY, solved.top / tangent);
            b = pen.write(SettingRules.NO_RADIAL, 0);
        } else {
            double greatest = pen.write(
                    SettingRules.RADIAL_LIMIT,
                    SettingRefusal.greatest(fixture.cam().radial()));
            a = pen.write(SettingRules.AXIAL_REST, (solved.top - greatest) / tangent);
            b = pen.write(SettingRules.RADIAL_AT_LIMIT, greatest);
        }
        return new Rises(
                Length.ofMm(a),
                Length.ofMm(b),
                Length.ofMm(pen.write(SettingRules.AXIAL_OVER_LAND, a * solved.share)),
                Length.ofMm(pen.write(SettingRules.RADIAL_OVER_LAND, b * solved.share)));
    }

    private Option option(Way way, Solved solved, Pen pen) {
        Rises rises = rises(way, solved, pen);
        double error = pen.write(SettingRules.SWIVEL_OFF, SWIVEL_ERROR.deg());
        double tried = pen.write(SettingRules.SWIVEL_TRIED, Math.toDegrees(solved.swivelRad) + error);
        double atTried = workingAt(tried, rises, solved, pen);
        double right = ChamferRelief.working(fall.perRadian(), place.midRadius(), place.kappa(), place.leadFelt())
                .deg();
        double bySwivel = pen.write(SettingRules.BY_SWIVEL, atTried - right);
        return new Option(
                way, rises, isReached(way, rises), Angle.ofDeg(bySwivel), byDivision(way, solved.swivelRad, pen));
    }

    private double workingAt(double swivelDeg, Rises rises, Solved solved, Pen pen) {
        double tangent = Math.tan(Math.toRadians(swivelDeg));
        double perRadian = pen.write(
                SettingRules.FALL_TRIED,
                solved.slope * (rises.axial().mm() * tangent + rises.radial().mm()));
        double kappa = fluteLead == null
                ? pen.write(SettingRules.CHAMFER_TRIED, swivelDeg)
                : pen.write(
                        SettingRules.CHAMFER_TRIED_SPIRAL,
                        Math.toDegrees(Math.atan(tangent - perRadian * 2 * Math.PI / fluteLead.mm())));
        Angle working =
                ChamferRelief.working(Length.ofMm(perRadian), place.midRadius(), Angle.ofDeg(kappa), place.leadFelt());
        return pen.write(SettingRules.WORKING_TRIED, working.deg());
    }

    private Angle byDivision(Way way, double swivelRad, Pen pen) {
        double q = pen.write(SettingRules.DIVISION, division.mm());
        double gain = way == Way.AXIAL ? Math.tan(swivelRad) : 1;
        Rule rule = way == Way.AXIAL ? SettingRules.FALL_DIVISION_AXIAL : SettingRules.FALL_DIVISION_RADIAL;
        double more =
                pen.write(rule, fall.perRadian().mm() + q * gain / place.land().rad());
        double cosine = Math.cos(place.kappa().rad()) / place.midRadius().mm();
        return Angle.ofDeg(pen.write(
                SettingRules.BY_DIVISION,
                Math.toDegrees(Math.atan(cosine * more)
                        - Math.atan(cosine * fall.perRadian().mm()))));
    }

    private @Nullable SwivelStep step(Option option, Solved solved, Pen pen) {
        Angle step = fixture.swivelStep();
        if (step == null) {
            return null;
        }
        double nearest = Math.round(Math.toDegrees(solved.swivelRad) / step.deg()) * step.deg();
        pen.write(SettingRules.SWIVEL_STEP, nearest);
        return new SwivelStep(Angle.ofDeg(nearest), Angle.ofDeg(workingAt(nearest, option.rises(), solved, pen)));
    }
}
