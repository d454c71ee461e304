// SPDX-License-Identifier: Apache-2.0
package landfall.thread.insert;

import static landfall.thread.ReferenceRows.inch;
import static landfall.thread.ReferenceRows.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import landfall.thread.Answers;
import landfall.thread.Family;
import landfall.thread.ReferenceRows;
import landfall.thread.SideLimits;
import landfall.thread.callout.CallOuts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Insert holes, and MJ and UNJ threads. */
class InsertTest {
    private static final double NOTHING = 1e-9;

    @Test
    void metricInsertHolesAgreeWithTheRows() {
        for (Map<String, String> row : ReferenceRows.of("insert-metric.csv")) {
            String name = "STI " + row.get("nominal");
            SideLimits hole = Answers.inside(name);
            assertThat(hole.className()).isEqualTo("5H");
            assertThat(mm(hole.major().min()))
                    .as(name)
                    .isCloseTo(Double.parseDouble(row.get("major_min")), within(0.00101));
            assertThat(mm(hole.pitch().min()))
                    .as(name)
                    .isCloseTo(Double.parseDouble(row.get("pitch_min")), within(0.00101));
            assertThat(mm(hole.pitch().max()))
                    .as(name)
                    .isCloseTo(Double.parseDouble(row.get("pitch_max_5H")), within(0.00101));
            assertThat(mm(hole.minor().min()))
                    .as(name)
                    .isCloseTo(Double.parseDouble(row.get("minor_min")), within(0.00101));
            assertThat(mm(hole.minor().max()))
                    .as(name)
                    .isCloseTo(Double.parseDouble(row.get("minor_max_5H")), within(0.00101));
            assertThat(mm(Answers.inside(name + "-4H5H").pitch().max()))
                    .isCloseTo(Double.parseDouble(row.get("pitch_max_4H")), within(0.00101));
        }
    }

    @Test
    void inchInsertHolesAgreeWithTheRows() {
        for (Map<String, String> row : ReferenceRows.of("insert-inch.csv")) {
            SideLimits hole = Answers.inside("STI " + row.get("nominal"));
            assertThat(inch(hole.major().min())).isCloseTo(Double.parseDouble(row.get("major")), within(0.000101));
            assertThat(inch(hole.pitch().min())).isCloseTo(Double.parseDouble(row.get("pitch")), within(0.000101));
            assertThat(inch(hole.minor().min())).isCloseTo(Double.parseDouble(row.get("minor")), within(0.000101));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "STI 1/4-20 UNC-2B",
                "STI 10-32 UNF-3B-LH",
                "STI M6x1-5H",
                "STI M10x1.5",
                "MJ6x1",
                "MJ6x1-4h6h",
                "1/4-28 UNJF-3A",
                "1/4-28 UNJF-3B",
                "3/8-16 UNJC"
            })
    void everyPrintedFormulaGivesItsFigureAndTheCallOutReadsBack(String callOut) {
        Answers.workingHolds(callOut);
        assertThat(CallOuts.read(callOut).orThrow().normal()).isEqualTo(callOut);
    }

    @Test
    void theHoleIsTheNominalThreadGrownByItsWire() {
        var hole = CallOuts.read("STI M6x1").orThrow().thread();
        assertThat(hole.pitchDiameter().mm()).isCloseTo(6.649519, within(1e-6));
        assertThat(hole.minorDiameter().mm()).isCloseTo(6.216506, within(1e-6));
        assertThat(Answers.to("STI M6x1").external()).isEmpty();
        assertThat(CallOuts.read("1/4-20 STI").orThrow().normal()).isEqualTo("STI 1/4-20 UNC");
    }

    @Test
    void aScrewsClassIsRefusedForAnInsertHole() {
        assertThat(CallOuts.read("STI 1/4-20 UNC-2A").findings().get(0).sentence())
                .isEqualTo("thread: \"STI 1/4-20 UNC-2A\" gives an insert hole the class of a screw. "
                        + "To mend: give 2B or 3B, 4H5H or 5H, or none.");
    }

    @Test
    void jThreadsAreFamiliesOfTheirOwnAndTakeNoInsert() {
        assertThat(CallOuts.read("MJ6x1").orThrow().thread().family()).isEqualTo(Family.MJ);
        assertThat(CallOuts.read("1/4-28 UNJF").orThrow().thread().family()).isEqualTo(Family.UNJ);
        // 6 - 0.97427858 and 0.25 - 0.97427858 / 28
        assertThat(CallOuts.read("MJ6x1").orThrow().thread().minorDiameter().mm())
                .isCloseTo(5.025721, within(1e-6));
        assertThat(CallOuts.read("1/4-28 UNJF")
                        .orThrow()
                        .thread()
                        .minorDiameter()
                        .inch())
                .isCloseTo(0.2152043, within(1e-7));
        assertThat(CallOuts.read("STI MJ6x1").findings().get(0).why())
                .isEqualTo("asks for an insert hole of a thread that has none at character 5");
    }

    @Test
    void mjHolesAgreeWithTheRows() {
        for (Map<String, String> row : ReferenceRows.of("mj.csv")) {
            SideLimits hole = Answers.inside(row.get("callout"));
            assertThat(mm(hole.minor().min())).isCloseTo(Double.parseDouble(row.get("minor_min")), within(0.00101));
            assertThat(mm(hole.minor().max())).isCloseTo(Double.parseDouble(row.get("minor_max")), within(0.00101));
        }
    }

    @Test
    void jThreadsKeepThePitchDiameterAndRaiseTheMinor() {
        assertThat(Answers.inside("MJ6x1-6H").pitch())
                .isEqualTo(Answers.inside("M6x1-6H").pitch());
        assertThat(mm(Answers.inside("MJ6x1-6H").minor().min())
                        - mm(Answers.inside("M6x1-6H").minor().min()))
                .isCloseTo(0.108253, within(0.0011));
        SideLimits unj = Answers.inside("1/4-28 UNJF");
        assertThat(unj.className()).isEqualTo("3B");
        assertThat(unj.pitch()).isEqualTo(Answers.inside("1/4-28 UNF-3B").pitch());
        // by hand: 0.25 - 0.97427858 / 28 = 0.2152
        assertThat(inch(unj.minor().min())).isEqualTo(0.2152, within(NOTHING));
        assertThat(unj.minor().max()).isNull();
    }
}
