// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.ArrayList;
import java.util.List;
import landfall.grind.Passes.Kind;
import landfall.grind.Passes.Pass;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.thread.Hand;

/** The set-up as numbered steps, in the order of work. Common practice, with the targets of this set-up put in. */
final class Procedure {
    private Procedure() {}

    static List<ProcedureStep> of(Tap tap, Fixture fixture, Setting setting, List<Pass> passes) {
        List<ProcedureStep> steps = new ArrayList<>();
        prepare(tap, fixture, steps);
        align(tap, fixture.cam().lobe(), steps);
        set(tap, setting, steps);
        grind(passes, steps);
        finish(Holding.of(tap), steps);
        return List.copyOf(steps);
    }

    /** Sense of turning in use, as seen from the shank. */
    static String cuttingSense(Hand hand) {
        return hand == Hand.RIGHT ? "clockwise seen from the shank" : "counter-clockwise seen from the shank";
    }

    private static void prepare(Tap tap, Fixture fixture, List<ProcedureStep> steps) {
        steps.add(ProcedureStep.tick(
                "clean", "Clean and demagnetise the tap, strip the old burr, look at every tooth at 10 x."));
        steps.add(ProcedureStep.tick(
                "wheel",
                "Look the wheel over and ring-test it; flanges and blotters right; run it up behind the "
                        + "hood; dress it."));
        steps.add(ProcedureStep.tick(
                "cam",
                "Fit the cam with %d lobes, hand %s: the tap turns %s to cut."
                        .formatted(
                                fixture.cam().lobes(),
                                tap.thread().hand().word(),
                                cuttingSense(tap.thread().hand()))));
        steps.add(ProcedureStep.tick("chuck", Holding.of(tap).words()));
    }

    private static void align(Tap tap, Lobe lobe, List<ProcedureStep> steps) {
        steps.add(new ProcedureStep(
                "run-out",
                "Dial the full-thread crests behind the chamfer with a flat anvil over two crests or more; re-seat "
                        + "until the"
                        + " run-out is under this. It counts against the thread, not against the spindle.",
                null,
                Length.ofMm(0.01),
                true));
        steps.add(ProcedureStep.tick("land-one", "Find land 1 by a stop on the face, never on the heel. Mark it."));
        steps.add(ProcedureStep.set(
                "timing",
                "Time the cam: its rise begins with this much of the land past the centre line (0: with the"
                        + " edge on it), and"
                        + " the whole return lies in the flute.",
                lobe.riseStart()));
        steps.add(ProcedureStep.tick(
                "prove",
                "Wheel stopped and drawn back: blue the heel and turn the tap one full turn by hand. Nothing "
                        + "touches."));
        if (tap.flutes().kind().isSpiral()) {
            steps.add(ProcedureStep.tick(
                    "spiral",
                    "Spiral flutes: keep the cam's timing for one place along the chamfer; the edge runs "
                            + "round with it."));
        }
    }

    private static void set(Tap tap, Setting setting, List<ProcedureStep> steps) {
        Angle swivel = setting.swivel();
        steps.add(ProcedureStep.set("swivel", "Set the swivel.", swivel));
        steps.add(ProcedureStep.reading(
                "swivel-check",
                ("Dial square to the chamfer, plunger at centre height: move the table along the edge%s."
                                        + " The reading stands")
                                .formatted(tap.flutes().kind().isSpiral() ? ", turning with it" : "")
                        + " still when the swivel is right."));
        if (setting.rises().axial().mm() > 0) {
            steps.add(ProcedureStep.set(
                    "axial",
                    "Set the axial rise over the whole lobe.",
                    setting.rises().axial()));
        }
        if (setting.rises().radial().mm() > 0) {
            steps.add(ProcedureStep.set(
                    "radial",
                    "Set the radial rise over the whole lobe.",
                    setting.rises().radial()));
        }
        steps.add(ProcedureStep.reading(
                "dial",
                "Turn from edge to heel in the cutting sense and note the dial at each angle; compare with "
                        + "the targets."));
    }

    private static void grind(List<Pass> passes, List<ProcedureStep> steps) {
        steps.add(ProcedureStep.tick("touch", "Touch off on the highest land. Go round all lands before any infeed."));
        for (Pass pass : passes) {
            if (pass.kind() == Kind.SPARK_OUT) {
                steps.add(ProcedureStep.tick(
                        "spark-out", "Spark out: %d turns of all lands, no infeed.".formatted(pass.count())));
            } else {
                steps.add(ProcedureStep.set(
                        pass.kind().name().toLowerCase(java.util.Locale.ROOT),
                        "%s: %d x this infeed, square to the chamfer, all lands at each setting."
                                .formatted(pass.kind() == Kind.ROUGH ? "Rough" : "Re-dress, then finish", pass.count()),
                        pass.infeed()));
            }
        }
    }

    private static void finish(Holding holding, List<ProcedureStep> steps) {
        steps.add(ProcedureStep.reading(
                "measure", "Measure each land: chamfer length and fall to the heel, equal all round."));
        steps.add(ProcedureStep.tick("hone", "Hone the burr off the face, never off the chamfer."));
        steps.add(ProcedureStep.tick("end", holding.atTheEnd()));
        steps.add(ProcedureStep.tick("mark", "Wash, oil, and mark the sharpening on the tap."));
    }
}
