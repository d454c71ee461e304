// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import landfall.thread.metric.Tolerances.Entry;
import landfall.thread.metric.Tolerances.Kind;
import org.junit.jupiter.api.Test;

/** The tables of ISO 965-1 against the formulas behind them. */
class MetricToleranceTest {
    private static final int[] PITCHES = {
        2000, 2500, 3000, 3500, 4000, 4500, 5000, 6000, 7000, 7500, 8000, 10000, 12500, 15000, 17500, 20000, 25000,
        30000, 35000, 40000, 45000, 50000, 55000, 60000, 80000
    };
    private static final int[] DIAMETERS = {12000, 20000, 40000, 80000, 160000, 300000, 600000, 1200000, 3000000};

    /**
     * {@code table range pitch grade: tabulated, by formula}, of every entry that is not the formula's preferred
     * number.
     */
    private static List<String> apart(List<Integer> steps) {
        List<String> apart = new ArrayList<>();
        int entries = 0;
        for (Kind kind : Kind.values()) {
            boolean ranged = kind == Kind.TD2 || kind == Kind.Td2;
            for (int diameter : ranged ? DIAMETERS : new int[] {300000}) {
                for (int pitch : PITCHES) {
                    for (int grade = 3; grade <= 9; grade++) {
                        MetricSize size = new MetricSize(diameter, pitch, 1);
                        Entry entry = Tolerances.tolerance(kind, size, grade);
                        if (!entry.isBlank()) {
                            entries++;
                            int formula = ToleranceFormula.preferred(ToleranceFormula.raw(kind, size, grade));
                            if (formula != entry.um()) {
                                apart.add(kind + " " + diameter + " " + pitch + " " + grade);
                                steps.add(
                                        (int) Math.round(Math.log((double) entry.um() / formula) / Math.log(10) * 40));
                            }
                        }
                    }
                }
            }
        }
        apart.add(0, "entries " + entries);
        return apart;
    }

    @Test
    void theTablesAreTheFormulasPreferredNumberOrItsNeighbour() {
        List<Integer> steps = new ArrayList<>();
        List<String> apart = apart(steps);
        assertThat(apart.get(0)).isEqualTo("entries 612");
        assertThat(apart).hasSize(67);
        assertThat(steps).allMatch(step -> Math.abs(step) == 1);
    }

    /** The farthest is e at pitch 0.5: 50 in the table, 56 by formula. */
    @Test
    void deviationsFollowTheirFormulaWithinSixMicrometres() {
        for (int pitch : PITCHES) {
            MetricSize size = new MetricSize(300000, pitch, 1);
            for (char position : new char[] {'e', 'f', 'g', 'G'}) {
                Entry entry = Tolerances.deviation(position, size);
                if (!entry.isBlank()) {
                    assertThat(Math.abs(entry.um() - ToleranceFormula.deviation(position, size.pitchMm())))
                            .as("%s at pitch %s", position, pitch)
                            .isLessThanOrEqualTo(6);
                }
            }
        }
    }
}
