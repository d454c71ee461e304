// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.grind.Passes.Pass;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * A regrind set-up: everything that is set, read and taken to sharpen one tap on its chamfer on one fixture.
 *
 * @param shape lead angles, land, relief and fall
 * @param motion setting, phase, gap and dial targets
 * @param work stock, passes, wheel, procedure
 * @param assumed what was not told and what was taken instead
 */
public record GrindSetup(
        Tap tap,
        Fixture fixture,
        ChamferShape shape,
        Motion motion,
        Work work,
        List<Caution> assumed,
        List<Caution> cautions) {

    /** What moves, and what the dials show. */
    public record Motion(
            Setting setting, Phase phase, Gap gap, Clearance clearance, List<DialTarget> dial, Length division) {}

    /** What is taken, with which wheel, in which order. */
    public record Work(Stock stock, List<Pass> passes, WheelCheck wheel, List<ProcedureStep> procedure) {}

    /** The set-up, or every reason why this tap cannot be ground so. */
    public static Answer<Worked<GrindSetup>> of(Tap tap, Fixture fixture, GrindWish wish) {
        List<Finding> findings = GrindRefusals.of(tap, fixture);
        if (!findings.isEmpty()) {
            return Answer.refused(findings);
        }
        try {
            return Answer.of(Worked.of(pen -> compute(tap, fixture, wish, pen)));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    /**
     * What does not fit between a tap and a cam, told even where the rest of the fixture cannot be: lobes for flutes, a
     * rise that reaches the heel.
     */
    public static List<Finding> misfits(Tap tap, int lobes, Lobe lobe) {
        return GrindRefusals.cam(tap, lobes, lobe);
    }

    private static GrindSetup compute(Tap tap, Fixture fixture, GrindWish wish, Pen pen) {
        List<Caution> assumed = new ArrayList<>();
        ChamferShape shape = ChamferShape.of(tap, wish, assumed, pen);
        ChamferPlace place = shape.place();
        if (wish.wear() == null) {
            assumed.add(new Caution(
                    "wearAssumed",
                    "Wear not told: the wear land of a tap that is due is taken, common practice.",
                    "w_wear"));
        }
        Phase phase = Phase.of(place, shape.relief(), shape.fall(), fixture, pen);
        Grinding grinding =
                new Grinding(place, shape.relief(), shape.fall(), fixture, phase, division(tap, fixture, assumed));
        Setting setting = SettingChoice.of(grinding, fluteLead(tap), pen);
        double top = setting.rises().axial().mm() * Math.tan(setting.swivel().rad())
                + setting.rises().radial().mm();
        Gap gap = Gap.of(grinding, tap.flutes().count(), top, pen);
        Clearance clearance = Clearance.of(tap.chamfer(), tap.thread().pitch(), setting, pen);
        List<DialTarget> dial = new DialTargets(grinding, setting, top, tap, wish.foundRelief()).all(pen);
        Stock stock = Stock.of(tap, shape.relief(), wish, pen);
        List<Pass> passes = Passes.of(stock, place.kappa(), pen);
        WheelCheck wheel = WheelCheck.of(fixture.wheel(), tap.make().material(), pen);
        Motion motion = new Motion(setting, phase, gap, clearance, dial, grinding.division());
        return new GrindSetup(
                tap,
                fixture,
                shape,
                motion,
                new Work(stock, passes, wheel, Procedure.of(tap, fixture, setting, passes)),
                List.copyOf(assumed),
                GrindCautions.of(tap, grinding, motion, wheel));
    }

    private static @Nullable Length fluteLead(Tap tap) {
        return tap.flutes().kind().isSpiral() ? ChamferRelief.fluteLead(tap.thread(), tap.flutes(), Pen.NONE) : null;
    }

    private static Length division(Tap tap, Fixture fixture, List<Caution> assumed) {
        if (fixture.dialResolution() != null) {
            return fixture.dialResolution();
        }
        boolean inch = tap.thread().family().system() == UnitSystem.INCH;
        assumed.add(new Caution(
                "dialDivisionAssumed",
                inch ? "Dial division not told: 0.0005 in taken." : "Dial division not told: 0.01 mm taken.",
                "dial.resolution"));
        return inch ? Length.ofInch(0.0005) : Length.ofMm(0.01);
    }

    /** Which way the tap turns to cut, as seen from the shank. */
    public String cuttingSense() {
        return Procedure.cuttingSense(tap.thread().hand());
    }

    /** Angle of the land, edge to heel. */
    public Angle land() {
        return shape.land();
    }

    /** Lead angles, and the advance over the land. */
    public LeadAngle lead() {
        return shape.lead();
    }
}
