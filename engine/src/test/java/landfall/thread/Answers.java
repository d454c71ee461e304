// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import landfall.working.WorkingCheck;

/** Answers to call-outs that tests know to be right. */
public final class Answers {
    private Answers() {}

    public static LimitsOfSize to(String callOut) {
        return LimitsOfSize.of(CallOuts.read(callOut).orThrow(), Pen.NONE);
    }

    public static SideLimits inside(String callOut) {
        return to(callOut).internal().orElseThrow();
    }

    public static SideLimits outside(String callOut) {
        return to(callOut).external().orElseThrow();
    }

    /** Every formula behind the answer gives its figure. */
    public static void workingHolds(String callOut) {
        WorkingCheck.everyFormulaGivesItsFigure(
                LimitsOfSize.worked(CallOuts.read(callOut).orThrow(), MinorRounding.CURRENT)
                        .steps());
    }
}
