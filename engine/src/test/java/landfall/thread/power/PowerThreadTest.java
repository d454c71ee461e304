// SPDX-License-Identifier: Apache-2.0
package landfall.thread.power;

import static landfall.thread.ReferenceRows.inch;
import static landfall.thread.ReferenceRows.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import landfall.thread.Answers;
import landfall.thread.ReferenceRows;
import landfall.thread.SideLimits;
import landfall.thread.callout.CallOuts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Acme and trapezoidal threads against published rows, and what holds for all of them. */
class PowerThreadTest {
    private static final double NOTHING = 1e-9;

    static Stream<String> everyCallOut() {
        return Stream.concat(
                Stream.concat(AcmeReader.callOuts().stream(), TrapezoidalReader.callOuts().stream()),
                Stream.of(
                        "1/2-10 STUB ACME",
                        "1.0000-0.2P-0.4L ACME",
                        "5/8-6 ACME",
                        "Tr40x14(P7)",
                        "Tr30x5",
                        "Tr300x24"));
    }

    @Test
    void acme2GAgreesWithThePublishedListToTheLastDigit() {
        ReferenceRows rows = new ReferenceRows();
        for (Map<String, String> row : ReferenceRows.of("acme.csv")) {
            SideLimits side = Answers.outside(row.get("callout"));
            rows.cell(
                    row.get("callout"),
                    "major_max",
                    row.get("major_max"),
                    inch(side.major().max()));
            rows.cell(
                    row.get("callout"),
                    "major_min",
                    row.get("major_min"),
                    inch(side.major().min()));
            rows.cell(
                    row.get("callout"),
                    "pitch_max",
                    row.get("pitch_max"),
                    inch(side.pitch().max()));
            rows.cell(
                    row.get("callout"),
                    "pitch_min",
                    row.get("pitch_min"),
                    inch(side.pitch().min()));
            rows.cell(
                    row.get("callout"),
                    "minor_max",
                    row.get("minor_max"),
                    inch(side.minor().max()));
            rows.cell(
                    row.get("callout"),
                    "minor_min",
                    row.get("minor_min"),
                    inch(side.minor().min()));
        }
        assertThat(rows.parted()).isEmpty();
        assertThat(rows.agreement()).containsEntry("pitch_min", "7/7");
    }

    @Test
    void trapezoidal7eAgreesWithThePublishedTableToTheLastDigit() {
        for (Map<String, String> row : ReferenceRows.of("trapezoidal.csv")) {
            SideLimits side = Answers.outside(row.get("callout"));
            assertThat(mm(side.major().min())).isEqualTo(Double.parseDouble(row.get("major_min")), within(NOTHING));
            assertThat(mm(side.pitch().max())).isEqualTo(Double.parseDouble(row.get("pitch_max")), within(NOTHING));
            assertThat(mm(side.pitch().min())).isEqualTo(Double.parseDouble(row.get("pitch_min")), within(NOTHING));
            assertThat(mm(side.minor().max())).isEqualTo(Double.parseDouble(row.get("minor_max")), within(NOTHING));
            assertThat(mm(side.minor().min())).isEqualTo(Double.parseDouble(row.get("minor_min")), within(NOTHING));
        }
    }

    @Test
    void trapezoidalBasicSizesAreThePublishedOnes() {
        for (Map<String, String> row : ReferenceRows.of("trapezoidal-basic.csv")) {
            SideLimits inside = Answers.inside(row.get("callout"));
            SideLimits outside = Answers.outside(row.get("callout"));
            assertThat(mm(inside.pitch().min())).isEqualTo(Double.parseDouble(row.get("d2")), within(NOTHING));
            assertThat(mm(inside.major().min())).isEqualTo(Double.parseDouble(row.get("D4")), within(NOTHING));
            assertThat(mm(outside.minor().max())).isEqualTo(Double.parseDouble(row.get("d3")), within(NOTHING));
            assertThat(mm(inside.minor().min())).isEqualTo(Double.parseDouble(row.get("D1")), within(NOTHING));
        }
    }

    @ParameterizedTest
    @MethodSource("everyCallOut")
    void everyPrintedFormulaGivesItsFigureAndTheSidesClear(String callOut) {
        Answers.workingHolds(callOut);
        SideLimits inside = Answers.inside(callOut);
        SideLimits outside = Answers.outside(callOut);
        assertThat(mm(outside.pitch().max())).isLessThan(mm(inside.pitch().min()));
        assertThat(mm(outside.major().max())).isLessThan(mm(inside.major().min()));
        assertThat(mm(outside.minor().max())).isLessThan(mm(inside.minor().min()));
        assertThat(CallOuts.read(callOut).orThrow().normal()).isEqualTo(callOut);
        assertThat(Answers.to(callOut + "-LH").internal())
                .isEqualTo(Answers.to(callOut).internal());
    }

    @Test
    void closerAcmeClassesNestInsideLooserOnes() {
        for (List<String> pair : List.of(List.of("2G", "3G"), List.of("3G", "4G"))) {
            for (String size : AcmeReader.callOuts()) {
                SideLimits loose = Answers.inside(size + "-" + pair.get(0));
                SideLimits close = Answers.inside(size + "-" + pair.get(1));
                assertThat(inch(close.pitch().max()))
                        .isLessThan(inch(loose.pitch().max()));
                assertThat(inch(Answers.outside(size + "-" + pair.get(1))
                                .pitch()
                                .max()))
                        .isGreaterThan(inch(Answers.outside(size + "-" + pair.get(0))
                                .pitch()
                                .max()));
            }
        }
    }

    @Test
    void severalStartsAdvanceByTheLead() {
        var thread = CallOuts.read("Tr40x14P7-LH").orThrow().thread();
        assertThat(thread.lead().starts()).isEqualTo(2);
        assertThat(thread.lead().perTurn().mm()).isEqualTo(14);
        assertThat(thread.pitchDiameter().mm()).isEqualTo(36.5);
    }
}
