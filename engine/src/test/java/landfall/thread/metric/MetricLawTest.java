// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

import static landfall.thread.ReferenceRows.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import landfall.thread.LimitsOfSize;
import landfall.thread.MinorRounding;
import landfall.thread.SideLimits;
import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every metric thread. */
class MetricLawTest {
    private static final double NOTHING = 1e-9;

    static Stream<String> everySize() {
        return Stream.concat(
                MetricSize.standard().stream().map(MetricSize::label),
                Stream.of("M10x0.9", "M12.5x1.3", "M300x6", "M16xPh3P1.5", "M20xPh15P2.5"));
    }

    private static SideLimits side(String callOut) {
        LimitsOfSize answer = LimitsOfSize.of(CallOuts.read(callOut).orThrow(), Pen.NONE);
        return answer.external().or(answer::internal).orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("everySize")
    void finerGradesNestInsideCoarserOnes(String size) {
        for (int grade = 4; grade < 8; grade++) {
            SideLimits fine = side(size + "-" + grade + "H");
            SideLimits coarse = side(size + "-" + (grade + 1) + "H");
            assertThat(mm(fine.pitch().max())).isLessThan(mm(coarse.pitch().max()));
            assertThat(mm(fine.minor().max())).isLessThan(mm(coarse.minor().max()));
            assertThat(fine.pitch().min()).isEqualTo(coarse.pitch().min());
        }
        for (int grade = 3; grade < 9; grade++) {
            SideLimits fine = side(size + "-" + grade + "g6g");
            SideLimits coarse = side(size + "-" + (grade + 1) + "g6g");
            assertThat(mm(fine.pitch().min())).isGreaterThan(mm(coarse.pitch().min()));
            assertThat(fine.major()).isEqualTo(coarse.major());
        }
    }

    @ParameterizedTest
    @MethodSource("everySize")
    void positionsStandInOrderAndClearEachOther(String size) {
        double h = mm(side(size + "-6h").pitch().max());
        double g = mm(side(size + "-6g").pitch().max());
        double f = mm(side(size + "-6f").pitch().max());
        double e = mm(side(size + "-6e").pitch().max());
        double H = mm(side(size + "-6H").pitch().min());
        double G = mm(side(size + "-6G").pitch().min());
        assertThat(List.of(e, f, g, h)).isSorted();
        assertThat(H).isEqualTo(h, within(NOTHING));
        assertThat(G - H).isEqualTo(h - g, within(NOTHING));
    }

    @ParameterizedTest
    @MethodSource("everySize")
    void aBareSizeHasBothSidesAndTheyClear(String size) {
        LimitsOfSize answer = LimitsOfSize.of(CallOuts.read(size).orThrow(), Pen.NONE);
        SideLimits inside = answer.internal().orElseThrow();
        SideLimits outside = answer.external().orElseThrow();
        assertThat(mm(outside.pitch().max()))
                .isLessThanOrEqualTo(mm(inside.pitch().min()));
        assertThat(mm(outside.minor().max()))
                .isLessThanOrEqualTo(mm(inside.minor().min()));
        assertThat(mm(inside.minor().max())).isLessThan(mm(outside.major().min()));
        assertThat(inside.major().max()).isNull();
    }

    @ParameterizedTest
    @MethodSource("everySize")
    void theLeftHandHasTheSameLimits(String size) {
        assertThat(side(size + "-6H-LH")).isEqualTo(side(size + "-6H"));
        assertThat(side(size + "-6g-LH")).isEqualTo(side(size + "-6g"));
    }

    @ParameterizedTest
    @MethodSource("everySize")
    void everyPrintedFormulaGivesItsFigure(String size) {
        for (String fit : List.of("", "-4H", "-8G", "-3h4h", "-9e8e", "-6f", "-5H6H/5g6g")) {
            WorkingCheck.everyFormulaGivesItsFigure(
                    LimitsOfSize.worked(CallOuts.read(size + fit).orThrow(), MinorRounding.CURRENT)
                            .steps());
        }
    }

    @Test
    void usualZonesFollowSizeAndEngagement() {
        assertThat(zones("M8")).containsExactly("6H", "6g");
        assertThat(zones("M1.4")).containsExactly("5H", "6h");
        assertThat(zones("M1.6")).containsExactly("6H", "6g");
        assertThat(zones("M8-S")).containsExactly("5H", "5g6g");
        assertThat(zones("M8-L")).containsExactly("7H", "7g6g");
        assertThat(zones("M8-8")).containsExactly("6H", "6g");
        assertThat(zones("M8-30")).containsExactly("7H", "7g6g");
    }

    private static List<String> zones(String callOut) {
        LimitsOfSize answer = LimitsOfSize.of(CallOuts.read(callOut).orThrow(), Pen.NONE);
        return List.of(
                answer.internal().orElseThrow().className(),
                answer.external().orElseThrow().className());
    }

    @Test
    void severalStartsWidenOnlyThePitchDiameter() {
        SideLimits one = side("M16x1.5-6H");
        SideLimits two = side("M16xPh3P1.5-6H");
        assertThat(two.minor()).isEqualTo(one.minor());
        // 190 um by ISO 965-1 for M16x1.5 6H, times the remembered 1.12: 213 um
        assertThat(mm(one.pitch().max()) - mm(one.pitch().min())).isEqualTo(0.190, within(NOTHING));
        assertThat(mm(two.pitch().max()) - mm(two.pitch().min())).isEqualTo(0.213, within(NOTHING));
    }
}
