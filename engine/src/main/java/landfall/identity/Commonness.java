// SPDX-License-Identifier: Apache-2.0
package landfall.identity;

import landfall.thread.CallOut;
import landfall.thread.Family;

/** How common a tap is in a mixed shop, coarse metric as 1: an estimate of ours, no source. */
final class Commonness {
    private Commonness() {}

    static double of(CallOut callOut) {
        String name = callOut.normal();
        Family family = callOut.thread().family();
        return switch (family) {
            case METRIC -> isCoarse(callOut) ? 1 : 0.3;
            case UNIFIED -> unified(name);
            case WHITWORTH -> name.contains("BSW") ? 0.15 : 0.1;
            case BA -> 0.1;
            case G -> 0.25;
            case R -> 0.15;
            case NPT -> 0.3;
            case NPTF -> 0.08;
            case STI_INCH, STI_METRIC -> 0.08;
            default -> 0.04;
        };
    }

    private static double unified(String name) {
        if (name.contains("UNC")) {
            return 1;
        }
        if (name.contains("UNEF")) {
            return 0.1;
        }
        return name.contains("UNF") ? 0.6 : 0.04;
    }

    /** Coarse pitches are the greatest of their diameter in the series. */
    private static boolean isCoarse(CallOut callOut) {
        return Catalogue.greatestPitch(callOut.thread().major())
                <= callOut.thread().pitch().mm() + 1e-9;
    }
}
