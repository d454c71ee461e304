// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.body;

import java.util.List;
import landfall.quantity.Length;

/** Steps of one ink by which a gap is told: the darker the tighter, and a hatch of its own where the land drags. */
public final class GapSteps {
    /** Upper ends of the steps; what is wider takes the last tone. */
    public static final List<Length> ENDS = List.of(
            Length.ofMm(0),
            Length.ofMm(0.01),
            Length.ofMm(0.02),
            Length.ofMm(0.05),
            Length.ofMm(0.1),
            Length.ofMm(0.2));

    private GapSteps() {}

    /** Number of the step that a gap lies in: 0 drags, the last is wider than all ends. */
    public static int of(Length gap) {
        int step = 0;
        while (step < ENDS.size() && gap.compareTo(ENDS.get(step)) >= 0) {
            step++;
        }
        return step;
    }

    /** Brightness of a step on paper, 0 black to 1 white. */
    public static double tone(int step) {
        return 0.12 + 0.8 * step / ENDS.size();
    }
}
