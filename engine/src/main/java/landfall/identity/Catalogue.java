// SPDX-License-Identifier: Apache-2.0
package landfall.identity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import landfall.quantity.Length;
import landfall.thread.CallOut;
import landfall.thread.Family;
import landfall.thread.callout.CallOuts;
import landfall.thread.callout.StandardThreads;

/** The threads that a tap may be for: every standard size, and the insert holes of the common ones. */
final class Catalogue {
    private Catalogue() {}

    private static final class Held {
        static final List<CallOut> ALL = load();
        static final Map<Long, Double> GREATEST = greatest();
    }

    static List<CallOut> all() {
        return Held.ALL;
    }

    /** Greatest metric pitch of a diameter, mm; 0 when the diameter is in no series. */
    static double greatestPitch(Length major) {
        return Held.GREATEST.getOrDefault(key(major), 0.0);
    }

    private static long key(Length major) {
        return Math.round(major.mm() * 1000);
    }

    /** External pipe threads are cut by dies, so R stays out; Rp and G are one tap. */
    private static List<CallOut> load() {
        List<CallOut> all = new ArrayList<>();
        for (CallOut callOut : StandardThreads.all()) {
            String name = callOut.normal();
            if (!name.matches("R \\S.*|R\\d.*|Rp.*")) {
                all.add(callOut);
            }
            boolean common = name.contains("UNC")
                    || name.contains("UNF")
                    || callOut.thread().family() == Family.METRIC;
            if (common && CallOuts.read("STI " + name) instanceof landfall.fault.Answer.Of<CallOut> insert) {
                all.add(insert.value());
            }
        }
        return List.copyOf(all);
    }

    private static Map<Long, Double> greatest() {
        Map<Long, Double> greatest = new HashMap<>();
        for (CallOut callOut : StandardThreads.all()) {
            if (callOut.thread().family() == Family.METRIC) {
                greatest.merge(
                        key(callOut.thread().major()), callOut.thread().pitch().mm(), Math::max);
            }
        }
        return greatest;
    }
}
