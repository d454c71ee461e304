// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import static landfall.thread.ReferenceRows.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import landfall.fault.Caution;
import landfall.thread.Answers;
import landfall.thread.ReferenceRows;
import landfall.thread.SideLimits;
import landfall.thread.Taper;
import landfall.thread.callout.CallOuts;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pipe threads against published rows, and what holds for all of them. */
class PipeTest {
    private static final Offset<Double> LAST_DIGIT = within(0.00101);
    private static final double NOTHING = 1e-9;

    static List<String> everyCallOut() {
        return PipeReader.callOuts();
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    @Test
    void taperPlanesOfNptAgreeWithThePublishedRows() {
        for (Map<String, String> row : ReferenceRows.of("pipe-npt.csv")) {
            Taper taper = Answers.to(row.get("size") + " " + row.get("family"))
                    .taper()
                    .orElseThrow();
            assertThat(taper.planes()).hasSize(4);
            Taper.Plane small = taper.planes().get(1);
            Taper.Plane hand = taper.planes().get(2);
            Taper.Plane effective = taper.planes().get(3);
            String size = row.get("size");
            assertThat(small.pitch().mm()).as(size).isCloseTo(number(row, "E0"), LAST_DIGIT);
            assertThat(hand.pitch().mm()).as(size).isCloseTo(number(row, "E1"), LAST_DIGIT);
            assertThat(hand.at().mm()).as(size).isCloseTo(number(row, "L1"), LAST_DIGIT);
            // L2 is printed to 0.0001 in
            assertThat(effective.at().mm()).as(size).isCloseTo(number(row, "L2"), within(0.0018));
            assertThat(CallOuts.read(size + " NPT")
                            .orThrow()
                            .thread()
                            .pitchDiameter()
                            .mm())
                    .isCloseTo(number(row, "pitch_dia"), LAST_DIGIT);
        }
    }

    @Test
    void britishSizesAgreeWithThePublishedRows() {
        for (Map<String, String> row : ReferenceRows.of("pipe-british.csv")) {
            String name = row.get("family") + " " + row.get("size");
            var thread = CallOuts.read(name).orThrow().thread();
            assertThat(thread.pitch().mm()).as(name).isEqualTo(number(row, "P"), within(NOTHING));
            assertThat(thread.major().mm()).as(name).isEqualTo(number(row, "major"), within(NOTHING));
            assertThat(thread.pitchDiameter().mm()).as(name).isCloseTo(number(row, "pitch"), LAST_DIGIT);
            if (row.get("family").equals("G")) {
                SideLimits inside = Answers.inside(name);
                assertThat(mm(inside.minor().min())).as(name).isEqualTo(number(row, "minor"), within(NOTHING));
                assertThat(mm(inside.minor().max())).as(name).isEqualTo(number(row, "minor_max"), within(NOTHING));
                assertThat(width(inside)).as(name).isEqualTo(number(row, "TD2"), within(NOTHING));
                assertThat(width(Answers.outside(name + " A"))).isEqualTo(number(row, "Td2A"), within(NOTHING));
                assertThat(width(Answers.outside(name + " B"))).isEqualTo(number(row, "Td2B"), within(NOTHING));
            } else {
                Taper taper = Answers.to(name).taper().orElseThrow();
                assertThat(taper.turns().handTight().mm()).isEqualTo(number(row, "gauge"), within(NOTHING));
                assertThat(taper.planes().get(1).pitch().mm()).isCloseTo(number(row, "pitch"), LAST_DIGIT);
            }
        }
    }

    private static double width(SideLimits side) {
        return mm(side.pitch().max()) - mm(side.pitch().min());
    }

    @ParameterizedTest
    @MethodSource("everyCallOut")
    void everyPrintedFormulaGivesItsFigure(String callOut) {
        Answers.workingHolds(callOut);
        Answers.workingHolds(callOut + "-LH");
    }

    @ParameterizedTest
    @MethodSource("everyCallOut")
    void aTaperGrowsOneInSixteenFromPlaneToPlane(String callOut) {
        Answers.to(callOut).taper().ifPresent(taper -> {
            List<Taper.Plane> planes = taper.planes();
            for (int i = 1; i < planes.size(); i++) {
                double length = planes.get(i).at().minus(planes.get(i - 1).at()).mm();
                double growth =
                        planes.get(i).pitch().minus(planes.get(i - 1).pitch()).mm();
                assertThat(growth).isCloseTo(length / 16, within(0.0011));
                assertThat(length).isPositive();
            }
        });
    }

    @ParameterizedTest
    @MethodSource("everyCallOut")
    void everyPipeThreadWarnsOfPressureAndOfMixing(String callOut) {
        assertThat(Answers.to(callOut).cautions()).extracting(Caution::code).contains("pressureJoint", "mixing");
    }

    @ParameterizedTest
    @MethodSource("everyCallOut")
    void everyCallOutReadsBackAsItself(String callOut) {
        assertThat(CallOuts.read(callOut).orThrow().normal()).isEqualTo(callOut);
    }

    @Test
    void aBareGHasBothSidesAndALetterOnlyTheOutside() {
        assertThat(Answers.to("G 1/2").internal()).isPresent();
        assertThat(Answers.outside("G 1/2").className()).isEqualTo("A");
        assertThat(Answers.to("G 1/2 B").internal()).isEmpty();
    }

    @Test
    void rpIsParallelAndSitsEitherSideOfBasic() {
        SideLimits hole = Answers.inside("Rp 1/2");
        // 1.25 turns of 1.814 over 16: 0.142 either way, ISO 7-1 from memory
        assertThat(mm(hole.pitch().min())).isEqualTo(19.793 - 0.142, within(NOTHING));
        assertThat(mm(hole.pitch().max())).isEqualTo(19.793 + 0.142, within(NOTHING));
        assertThat(Answers.to("Rp 1/2").taper()).isEmpty();
    }
}
