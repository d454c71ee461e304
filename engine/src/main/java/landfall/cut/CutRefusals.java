// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.chip.Evenness;
import landfall.fault.Finding;
import landfall.material.CuttingFluid;
import landfall.material.WorkGroup;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.working.Pen;

/** What has no forecast: judged all at once, before anything is computed. */
final class CutRefusals {
    private static final double MOST_OFF_LEAD = 0.1;

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
        evenness(tap, wish.how().evenness(), findings);
        driven(tap, wish, findings);
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

    private static void evenness(Tap tap, Evenness evenness, List<Finding> findings) {
        int told = evenness.heights().size();
        if (told > 0 && told != tap.flutes().count()) {
            findings.add(new Finding(
                    "heights",
                    told + " heights",
                    "must be one for each of the " + tap.flutes().count() + " lands",
                    "give them in cutting order, backwards from land 1, 0 where a land is even"));
        }
        if (tap.make().interrupted() && evenness.isTold()) {
            findings.add(new Finding(
                    evenness.heights().isEmpty() ? "run-out" : "heights",
                    evenness.heights().isEmpty() ? evenness.runOut().words() : told + " heights",
                    "is not shared out for a tap with every second tooth gone",
                    "leave it out"));
        }
    }

    private static void driven(Tap tap, CutWish wish, List<Finding> findings) {
        Driven driven = wish.how().driven();
        if (driven.byHand() && driven.holder() != null) {
            findings.add(new Finding(
                    "holder",
                    driven.holder().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    "is of a machine, but the tap is turned by hand",
                    "leave the holder out; give the bar of the wrench as bar"));
        }
        if (driven.bar() != null && driven.by() != null && !driven.byHand()) {
            findings.add(new Finding(
                    "bar", driven.bar().words(), "is of a hand wrench, but a machine turns the tap", "leave it out"));
        }
        double lead = tap.thread().lead().perTurn().mm();
        if (driven.feed() != null && Math.abs(driven.feed().mm() / lead - 1) > MOST_OFF_LEAD) {
            findings.add(new Finding(
                    "feed",
                    driven.feed().words(),
                    "must lie within a tenth of the lead, "
                            + tap.thread().lead().perTurn().words() + ": else the thread is torn out",
                    "give the feed of one turn that the machine is set to"));
        }
    }
}
