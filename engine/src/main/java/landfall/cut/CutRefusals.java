// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Finding;
import landfall.material.CuttingFluid;
import landfall.material.WorkGroup;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.working.Pen;

/** What has no forecast: judged all at once, before anything is computed. */
final class CutRefusals {
    private CutRefusals() {}

    static List<Finding> of(Tap tap, CutWish wish) {
        List<Finding> findings = new ArrayList<>();
        if (tap.flutes().kind() == FluteKind.FORMING) {
            findings.add(new Finding(
                    "flutes.kind",
                    tap.flutes().kind().code(),
                    "has no cutting edge: a forming tap presses its thread and makes no chip",
                    "ask for the hole with --forming; its torque is two to three times that of a cutting tap"));
        }
        if (tap.callOut().taper(Pen.NONE).isPresent()) {
            findings.add(new Finding(
                    "thread",
                    tap.callOut().normal(),
                    "is a taper thread: its tap cuts along the whole body, with torque rising to the very end",
                    "no torque of a straight tap is given for it; turn by feel, with oil, and"
                            + " stop at the gauge's mark"));
        }
        hole(tap, wish, findings);
        CuttingFluid fluid = wish.how().fluid();
        if (wish.material().group() == WorkGroup.MAGNESIUM && fluid != null && fluid.hasWater()) {
            findings.add(new Finding(
                    "fluid",
                    fluid.code(),
                    "has water in it: on magnesium water feeds fire and frees hydrogen",
                    "use mineral oil (light-oil), or cut dry with the chips kept apart"));
        }
        if (tap.make().interrupted() && wish.how().runOut().mm() > 0) {
            findings.add(new Finding(
                    "run-out",
                    wish.how().runOut().words(),
                    "is not shared out for a tap with every second tooth gone",
                    "leave the run-out out"));
        }
        return findings;
    }

    private static void hole(Tap tap, CutWish wish, List<Finding> findings) {
        Length point = tap.chamfer().pointDiameter();
        if (wish.hole().mm() <= point.mm()) {
            findings.add(new Finding(
                    "hole",
                    wish.hole().words(),
                    "must be over the diameter at the tap's point, " + point.words() + ": the tap would not start",
                    "open the hole, or take a tap with a longer chamfer"));
        } else if (wish.hole().mm() >= tap.thread().major().mm()) {
            findings.add(new Finding(
                    "hole",
                    wish.hole().words(),
                    "must be under the major diameter, " + tap.thread().major().words() + ": there is nothing to cut",
                    "measure the hole, or look at the drill and the call-out again"));
        }
    }
}
