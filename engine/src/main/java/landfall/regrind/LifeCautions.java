// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.List;
import landfall.fault.Caution;

/** What must be said with a count of sharpenings. */
final class LifeCautions {
    private LifeCautions() {}

    static void add(LeftByWay.ByChamfer chamfer, List<Caution> cautions) {
        Integer byChamfer = chamfer.count();
        if (byChamfer != null && byChamfer == 0) {
            cautions.add(new Caution(
                    "noneLeft", "Not one more sharpening of the chamfer leaves what this tap must keep.", "count"));
        }
        cautions.add(new Caution(
                "endsSooner",
                "These counts are geometry. Chips in the full threads, a worn coating, lost reach of a spiral point and"
                        + " unequal lands end most taps sooner: 3 to 10 chamfers and 2 to 5 faces by hand are usual"
                        + " (common practice).",
                "count"));
    }
}
