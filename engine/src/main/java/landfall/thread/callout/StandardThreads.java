// SPDX-License-Identifier: Apache-2.0
package landfall.thread.callout;

import java.util.List;
import landfall.thread.CallOut;

/** Every standard size of every family, as a call-out without a class. */
public final class StandardThreads {
    private StandardThreads() {}

    private static final class Held {
        static final List<CallOut> ALL = Nearest.standard().stream()
                .map(text -> CallOuts.read(text).orThrow())
                .filter(callOut -> callOut.classes().isEmpty())
                .toList();
    }

    public static List<CallOut> all() {
        return Held.ALL;
    }
}
