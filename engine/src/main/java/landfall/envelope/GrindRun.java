// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;
import landfall.grind.GrindSetup;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;

/**
 * A set-up run before the wheel touches the tap: the middle of the chamfer land by land, and the whole of it.
 *
 * @param middle of the chamfer: relief, gap, clipping and load of every land
 * @param ground the whole chamfer, place by place
 * @param found the chamfer that comes out
 */
public record GrindRun(NumericGrind middle, ChamferGround ground, ChamferFound found) {
    /** An angle that differs by more is worth a word: half of it can be read off a swivel of quarter degrees. */
    private static final double ANGLE_WORTH_SAYING = 0.25;

    /** A gap that is smaller than this is taken for contact in the words, not in the figures. */
    private static final double TOUCH_MM = 0.001;

    /** Runs a set-up without an error in chucking, cam or wheel, or with those that are told. */
    public static GrindRun of(GrindSetup setup, Errors errors) {
        ChamferGround ground = ChamferGround.of(setup, errors);
        return new GrindRun(NumericGrind.of(setup, errors), ground, ChamferFound.of(setup, ground, errors));
    }

    /** The most that the lobe before has taken off any edge. */
    public Length clipped() {
        double most = 0;
        for (LandGround land : middle.lands()) {
            most = Math.max(most, land.clipped().mm());
        }
        return Length.ofMm(most);
    }

    /** Writes its figures, and returns itself. */
    public GrindRun told(Pen pen) {
        pen.write(RunRules.ANGLE, found.angle().deg());
        pen.write(RunRules.SWIVEL, found.swivel().deg());
        pen.write(RunRules.CLIPPED, clipped().mm());
        pen.write(RunRules.GAP, found.least().gap().mm());
        pen.write(RunRules.GAP_AT, found.least().at().deg());
        pen.write(RunRules.GAP_HEIGHT, found.least().fromPoint().mm());
        for (int i = 0; i < middle.lands().size(); i++) {
            LandGround land = middle.lands().get(i);
            pen.write(RunRules.EDGE, land.edge().mm());
            pen.write(RunRules.WORKING, land.working().deg());
            pen.write(RunRules.FALL, land.fall().mm());
            pen.write(RunRules.LAND_GAP, land.leastGap().mm());
            pen.write(RunRules.LENGTH, found.lands().get(i).length().mm());
            pen.write(RunRules.SHARE, 100 * middle.shares().get(i).share());
        }
        return this;
    }

    /** What the run shows that the closed forms do not. */
    public List<Caution> cautions(GrindSetup setup) {
        List<Caution> cautions = new ArrayList<>(middle.cautions());
        boolean notSaid =
                middle.cautions().stream().noneMatch(caution -> caution.code().equals("landDrags"));
        if (notSaid && found.least().gap().mm() < -TOUCH_MM) {
            cautions.add(new Caution(
                    "landDrags",
                    ("Run numerically, land %d drags on the cut surface by %s, %s from the point: relief is missing"
                                    + " there.")
                            .formatted(
                                    found.least().land(),
                                    found.least().gap().times(-1).words(),
                                    found.least().fromPoint().words()),
                    "g_least"));
        }
        Angle wanted = setup.tap().chamfer().angle();
        if (Math.abs(found.angle().deg() - wanted.deg()) > ANGLE_WORTH_SAYING) {
            cautions.add(new Caution(
                    "chamferComesOutAt",
                    ("Run numerically, this setting grinds a chamfer of %.2f deg where %.2f are wanted; a swivel of"
                                    + " %.2f deg mends it.")
                            .formatted(
                                    found.angle().deg(),
                                    wanted.deg(),
                                    found.swivel().deg()),
                    "κ_run"));
        }
        return cautions;
    }
}
