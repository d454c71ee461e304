// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.List;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.working.Pen;

/** What is different about a taper (pipe) tap. */
final class TaperCautions {
    private TaperCautions() {}

    /** A taper tap cuts with every tooth of its body, so its chamfer is not the whole of its wear. */
    static void wear(Tap tap, List<Caution> cautions) {
        if (isTaper(tap)) {
            cautions.add(new Caution(
                    "wholeBodyCuts",
                    "A taper tap cuts with its whole body: every tooth is worn, and grinding the"
                            + " chamfer alone often is no cure. The chamfer angle counts from the axis, not"
                            + " from the taper.",
                    "thread"));
        }
    }

    /**
     * With the end cut back by s the gauge plane lies s nearer the end: the depth stop and the tap's mark move by s.
     */
    static void depthStop(Tap tap, Length cut, List<Caution> cautions) {
        if (isTaper(tap)) {
            cautions.add(new Caution(
                    "depthStopMoves",
                    ("The end is cut back, so the same size now lies nearer to it: stop the tap %s earlier,"
                                    + " counted at its end, and move its depth mark by as much.")
                            .formatted(cut.words()),
                    "s_off"));
        }
    }

    private static boolean isTaper(Tap tap) {
        return tap.callOut().taper(Pen.NONE).isPresent();
    }
}
