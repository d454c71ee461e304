// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Finding;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.working.Pen;
import org.jspecify.annotations.Nullable;

/** What keeps a tap from being drawn as a body, every reason at once. */
final class BodyRefusals {
    private BodyRefusals() {}

    static List<Finding> of(Tap tap) {
        List<Finding> findings = new ArrayList<>();
        if (tap.flutes().kind() == FluteKind.FORMING) {
            findings.add(new Finding(
                    "flutes.kind",
                    "forming",
                    "has lobes and no flutes: its form is the maker's",
                    "draw a cutting tap"));
        }
        if (tap.callOut().taper(Pen.NONE).isPresent()) {
            findings.add(new Finding(
                    "thread",
                    tap.callOut().normal(),
                    "is a taper thread: only straight taps are drawn",
                    "draw a tap with a straight thread"));
        }
        told(tap.flutes().form().core(), "flutes.core", "measure the core across the flute floors", findings);
        told(tap.flutes().form().radius(), "flutes.radius", "measure the flute's arc with a radius gauge", findings);
        told(tap.body().threadLength(), "threadLength", "measure the thread from point to last crest", findings);
        core(tap, findings);
        lengths(tap, findings);
        return findings;
    }

    private static void told(@Nullable Length length, String field, String mend, List<Finding> findings) {
        if (length == null) {
            findings.add(new Finding(field, "left out", "is needed for the body", mend));
        }
    }

    private static void core(Tap tap, List<Finding> findings) {
        Length core = tap.flutes().form().core();
        Length point = tap.chamfer().pointDiameter();
        double least = Math.min(point.mm(), tap.thread().minorDiameter().mm());
        if (core != null && core.mm() >= least) {
            findings.add(new Finding(
                    "flutes.core",
                    core.words(),
                    "must be under the point diameter and the basic minor diameter, "
                            + Length.ofMm(least).words() + ", for the flutes to reach through",
                    "measure the core across the flute floors"));
        }
    }

    private static void lengths(Tap tap, List<Finding> findings) {
        Length thread = tap.body().threadLength();
        Length overall = tap.body().overallLength();
        double chamfer = tap.chamfer().threads() * tap.thread().pitch().mm();
        if (thread != null && thread.mm() <= chamfer) {
            findings.add(new Finding(
                    "threadLength",
                    thread.words(),
                    "must be over the chamfer's length, " + Length.ofMm(chamfer).words(),
                    "measure the thread from point to last crest"));
        }
        if (thread != null && overall != null && overall.mm() <= thread.mm()) {
            findings.add(new Finding(
                    "overallLength",
                    overall.words(),
                    "must be over the thread's length, " + thread.words(),
                    "measure the tap from end to end"));
        }
    }
}
