// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import landfall.fault.Answer;
import landfall.quantity.Torque;
import landfall.quantity.UnitSystem;

/** Torques. A bare number is N·m on metric work; on inch work it is refused, since both in·lb and ft·lb are in use. */
public final class TorqueEntry {
    static final Reader<Torque> READER = new Reader<>(
            "a torque",
            "12 N·m or 106 in·lb",
            "N·m, N·cm, in·lb or ft·lb",
            units(),
            (shape, system) -> system == UnitSystem.METRIC ? Optional.of(Torque::ofNm) : Optional.empty());

    private TorqueEntry() {}

    public static Answer<Torque> read(String text, UnitSystem bare) {
        return READER.read(text, bare);
    }

    private static Map<String, DoubleFunction<Torque>> units() {
        Map<String, DoubleFunction<Torque>> units = new HashMap<>();
        Names.put(units, Torque::ofNm, "nm");
        Names.put(units, ncm -> Torque.ofNm(ncm / 100), "ncm");
        Names.put(units, Torque::ofInchPound, "inlb", "inlbs", "inlbf", "lbin", "lbfin", "lbsin");
        Names.put(units, ft -> Torque.ofInchPound(ft * 12), "ftlb", "ftlbs", "ftlbf", "lbft", "lbfft", "lbsft");
        return units;
    }
}
