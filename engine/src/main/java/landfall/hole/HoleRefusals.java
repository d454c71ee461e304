// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.fault.Finding;
import landfall.hole.Drilled.Against;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.CallOut;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.working.Pen;

/** Why a hole cannot be answered for. */
final class HoleRefusals {
    private HoleRefusals() {}

    static List<Finding> of(HoleWish wish) {
        List<Finding> findings = new ArrayList<>();
        CallOut callOut = wish.callOut();
        Optional<Limits> minor = callOut.limits(Side.INTERNAL, Pen.NONE).map(SideLimits::minor);
        if (callOut.taper(Pen.NONE).isPresent()) {
            findings.add(new Finding(
                    "thread",
                    callOut.normal(),
                    "is a taper thread, whose hole is not one diameter with limits",
                    PipeDrill.of(callOut)
                            .map(drill -> "drill straight to " + drill.words()
                                    + ", tap without a reamer, and gauge by the plug")
                            .orElse("drill by a chart of that pipe thread, and gauge by the plug")));
        } else if (minor.isEmpty()) {
            findings.add(new Finding(
                    "thread",
                    callOut.normal(),
                    "names the external thread only",
                    "give the class of the hole, or leave the class out"));
        }
        insert(wish, findings);
        if (HoleChoice.drills(wish).isEmpty()) {
            findings.add(
                    new Finding("drills", "", "names no drill", "name a drawer: number, letter, fraction, metric"));
        }
        ScrewThread thread = callOut.thread();
        if (wish.tools().forming() && thread.profile().includedAngle().deg() != 60) {
            findings.add(new Finding(
                    "forming",
                    callOut.normal(),
                    "has no rule for forming: only threads of 60 degrees have one",
                    "use a cutting tap"));
        }
        if (findings.isEmpty() && wish.tools().forming()) {
            forming(wish, thread, findings);
        }
        hole(wish, thread, findings);
        return findings;
    }

    private static void insert(HoleWish wish, List<Finding> findings) {
        Length insert = wish.place().insert();
        if (insert == null) {
            return;
        }
        Optional<Length> diameter = InsertSeat.diameter(wish.callOut());
        if (diameter.isEmpty()) {
            findings.add(new Finding(
                    "insert",
                    insert.words(),
                    "is for a hole with a wire insert, which " + wish.callOut().normal() + " is not",
                    "write the call-out as STI " + wish.callOut().normal() + ", or leave the insert out"));
        } else if (insert.compareTo(diameter.get()) < 0) {
            findings.add(new Finding(
                    "insert",
                    insert.words(),
                    "is shorter than one diameter, " + diameter.get().words() + ": none is made",
                    "take 1, 1.5, 2, 2.5 or 3 diameters"));
        }
    }

    private static void forming(HoleWish wish, ScrewThread thread, List<Finding> findings) {
        FormingHole forming = FormingHole.of(thread, WantedShare.of(wish, Pen.NONE), Pen.NONE);
        Against against = new Against(thread.major(), ShareBasis.FORMED.twice(thread, Pen.NONE), forming.limits());
        if (DrillChoice.forming(HoleChoice.drills(wish), against, 0.65, forming.least(), Pen.NONE)
                .isEmpty()) {
            findings.add(new Finding(
                    "drills",
                    "",
                    "holds no drill large enough: below " + forming.least().words() + " a forming tap can jam",
                    "name more drawers"));
        }
    }

    private static void hole(HoleWish wish, ScrewThread thread, List<Finding> findings) {
        Length hole = wish.hole();
        if (hole != null
                && (hole.compareTo(thread.major()) >= 0
                        || hole.mm()
                                < thread.minorDiameter().mm()
                                        - 0.2 * thread.pitch().mm())) {
            findings.add(new Finding(
                    "hole",
                    hole.words(),
                    "must be from "
                            + thread.minorDiameter()
                                    .minus(thread.pitch().times(0.2))
                                    .words() + " to under " + thread.major().words(),
                    "measure the hole before tapping, or leave it out"));
        }
    }
}
