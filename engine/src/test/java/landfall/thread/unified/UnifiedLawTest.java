// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import static landfall.thread.ReferenceRows.inch;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import landfall.thread.CallOut;
import landfall.thread.LimitsOfSize;
import landfall.thread.MinorRounding;
import landfall.thread.SideLimits;
import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every Unified thread. */
class UnifiedLawTest {
    private static final double NOTHING = 1e-9;

    static Stream<String> everySize() {
        return Stream.concat(
                UnifiedPairs.callOuts().stream(),
                Stream.of("10-28 UNS", "1/4-24 UNS", "5 3/4-10 UNS", "0.3000-27 UNS", "0.2500-0.05P-0.1L UNS"));
    }

    private static SideLimits side(String callOut) {
        LimitsOfSize answer = LimitsOfSize.of(CallOuts.read(callOut).orThrow(), Pen.NONE);
        return answer.external().or(answer::internal).orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("everySize")
    void closerClassesNestInsideLooserOnes(String size) {
        for (List<String> pair : List.of(List.of("1B", "2B"), List.of("2B", "3B"))) {
            SideLimits loose = side(size + "-" + pair.get(0));
            SideLimits close = side(size + "-" + pair.get(1));
            assertThat(inch(close.pitch().max())).isLessThan(inch(loose.pitch().max()));
            assertThat(inch(close.pitch().min())).isEqualTo(inch(loose.pitch().min()), within(NOTHING));
            assertThat(inch(close.minor().min())).isEqualTo(inch(loose.minor().min()), within(NOTHING));
        }
        SideLimits two = side(size + "-2A");
        SideLimits three = side(size + "-3A");
        SideLimits one = side(size + "-1A");
        assertThat(inch(three.pitch().max())).isGreaterThan(inch(two.pitch().max()));
        assertThat(inch(three.pitch().min())).isGreaterThan(inch(two.pitch().min()));
        assertThat(inch(one.pitch().min())).isLessThan(inch(two.pitch().min()));
        assertThat(inch(one.major().min())).isLessThan(inch(two.major().min()));
    }

    @ParameterizedTest
    @MethodSource("everySize")
    void basicSizesPartTheTwoSides(String size) {
        CallOut callOut = CallOuts.read(size).orThrow();
        LimitsOfSize answer = LimitsOfSize.of(callOut, Pen.NONE);
        SideLimits inside = answer.internal().orElseThrow();
        SideLimits outside = answer.external().orElseThrow();
        double basicPitch = callOut.thread().pitchDiameter().inch();
        assertThat(inch(inside.pitch().min())).isEqualTo(basicPitch, within(1.01e-4));
        assertThat(inch(outside.pitch().max())).isLessThan(inch(inside.pitch().min()));
        assertThat(inch(outside.major().max())).isLessThan(inch(inside.major().min()));
        assertThat(inch(outside.minor().max())).isLessThan(inch(inside.minor().min()) + 0.0006);
        assertThat(inside.major().max()).isNull();
        assertThat(outside.minor().min()).isNull();
        var extras = answer.extras().orElseThrow();
        assertThat(callOut.thread().major().minus(extras.allowance()).inch())
                .isEqualTo(inch(outside.major().max()), within(0.5001e-4));
        assertThat(extras.roundedRootMinorMax().inch())
                .isLessThan(inch(outside.minor().max()));
    }

    @ParameterizedTest
    @MethodSource("everySize")
    void theLeftHandHasTheSameLimits(String size) {
        CallOut left = CallOuts.read(size + "-LH").orThrow();
        CallOut right = CallOuts.read(size).orThrow();
        assertThat(LimitsOfSize.of(left, Pen.NONE).internal())
                .isEqualTo(LimitsOfSize.of(right, Pen.NONE).internal());
        assertThat(LimitsOfSize.of(left, Pen.NONE).external())
                .isEqualTo(LimitsOfSize.of(right, Pen.NONE).external());
    }

    @ParameterizedTest
    @MethodSource("everySize")
    void everyPrintedFormulaGivesItsFigure(String size) {
        for (String fit : List.of("", "-1A", "-3A", "-1B", "-3B", " LE 0.7", "-2A/3B")) {
            for (MinorRounding rounding : MinorRounding.values()) {
                WorkingCheck.everyFormulaGivesItsFigure(
                        LimitsOfSize.worked(CallOuts.read(size + fit).orThrow(), rounding)
                                .steps());
            }
        }
    }

    @Test
    void aLongerEngagementOpensThePitchDiameter() {
        // worked by hand in the method note's formula, 1/4-20 2B
        assertThat(inch(side("1/4-20 UNC-2B LE 0.125").pitch().max())).isEqualTo(0.2221, within(NOTHING));
        assertThat(inch(side("1/4-20 UNC-2B LE 0.25").pitch().max())).isEqualTo(0.2224, within(NOTHING));
        assertThat(inch(side("1/4-20 UNC-2B LE 0.375").pitch().max())).isEqualTo(0.2226, within(NOTHING));
        assertThat(inch(side("1/4-20 UNC-2B LE 0.5").pitch().max())).isEqualTo(0.2228, within(NOTHING));
    }

    /** Its pitch is .07692308 to eight places, over 1/13 by a hair: it belongs to the finer rule all the same. */
    @Test
    void thirteenAnInchTakesTheFineRuleOfTheMinorDiameterInClass3B() {
        // 0.23/13 - 1.5/169 = .00882 against 0.12/13 = .00923; D1 = 2 - 1.08253175/13 = 1.916728
        assertThat(inch(side("2-13 UNS-3B").minor().max())).isEqualTo(1.9255, within(NOTHING));
        assertThat(inch(side("2-12 UN-3B").minor().max())).isEqualTo(1.9198, within(NOTHING));
    }

    @Test
    void aRoundedRootMovesTheMinorDiameterOnly() {
        SideLimits flat = side("1/2-13 UNC-2A");
        SideLimits rounded = side("1/2-13 UNRC-2A");
        assertThat(rounded.pitch()).isEqualTo(flat.pitch());
        assertThat(inch(rounded.minor().max())).isLessThan(inch(flat.minor().max()));
    }

    @Test
    void unfinishedStockOfClass2AHasAWiderMajorDiameter() {
        // Machinery's Handbook, 31st edition: 2 1/2-8 UN unfinished 2.4751
        LimitsOfSize answer = LimitsOfSize.of(CallOuts.read("2 1/2-8 UN-2A").orThrow(), Pen.NONE);
        assertThat(answer.extras()
                        .orElseThrow()
                        .unfinishedMajorMin()
                        .orElseThrow()
                        .inch())
                .isEqualTo(2.4751, within(NOTHING));
    }
}
