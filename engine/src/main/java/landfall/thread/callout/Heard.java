// SPDX-License-Identifier: Apache-2.0
package landfall.thread.callout;

import java.util.List;
import landfall.fault.Caution;
import landfall.thread.CallOut;

/**
 * A call-out as it was read, and what was taken for granted on the way: an old series, a class without its letter,
 * words of the drawing that were set aside.
 */
public record Heard(CallOut callOut, List<Caution> assumed) {
    public Heard {
        assumed = List.copyOf(assumed);
    }
}
