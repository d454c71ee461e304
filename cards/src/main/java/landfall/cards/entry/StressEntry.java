// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import landfall.fault.Answer;
import landfall.quantity.Stress;
import landfall.quantity.UnitSystem;

/**
 * Stresses and strengths. A bare number is N/mm² on metric work and refused on inch work: psi and ksi are both in use.
 */
public final class StressEntry {
    static final Reader<Stress> READER = new Reader<>(
            "a stress",
            "650 N/mm2, 650 MPa or 95 ksi",
            "N/mm2, MPa, psi or ksi",
            units(),
            (shape, system) -> system == UnitSystem.METRIC ? Optional.of(Stress::ofNPerMm2) : Optional.empty());

    private StressEntry() {}

    public static Answer<Stress> read(String text, UnitSystem bare) {
        return READER.read(text, bare);
    }

    private static Map<String, DoubleFunction<Stress>> units() {
        Map<String, DoubleFunction<Stress>> units = new HashMap<>();
        Names.put(units, Stress::ofNPerMm2, "n/mm2", "mpa");
        Names.put(units, gpa -> Stress.ofNPerMm2(gpa * 1000), "gpa", "kn/mm2");
        Names.put(units, Stress::ofPsi, "psi", "lbf/in2", "lb/in2");
        Names.put(units, ksi -> Stress.ofPsi(ksi * 1000), "ksi", "kpsi");
        return units;
    }
}
