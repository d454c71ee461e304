// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import landfall.chip.ChipFlow;
import landfall.fault.Caution;
import landfall.hole.HoleEnd;
import landfall.material.Materials;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.FluteKind;
import landfall.thread.CallOut;
import landfall.thread.Side;
import landfall.thread.callout.CallOuts;
import landfall.thread.unified.UnifiedPairs;
import landfall.working.Pen;
import landfall.working.WorkingCheck;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Which tap")
class TapAdviceTest {
    private static TapWish wish(String callOut, @Nullable String material, HoleEnd end, boolean byHand) {
        WorkMaterial found =
                material == null ? null : Materials.find("material", material).orThrow();
        CallOut read = CallOuts.read(callOut).orThrow();
        return new TapWish(read, found, new TapWish.Place(read.thread().major(), end), new TapWish.Drive(byHand, null));
    }

    private static TapAdvice advice(TapWish wish) {
        return TapAdvice.of(wish).orThrow().value();
    }

    /** What practice takes first; common practice without a source. */
    @ParameterizedTest(name = "{0} in {1}, {2}, by hand {3}: {4}")
    @CsvSource({
        "M8x1.25-6H, 1018, BLIND, false, SPIRAL_RIGHT",
        "M8x1.25-6H, 1018, THROUGH, false, SPIRAL_POINT",
        "M8x1.25-6H, EN-GJL-250, BLIND, false, STRAIGHT",
        "M8x1.25-6H, C360 brass, BLIND, false, STRAIGHT",
        "M8x1.25-6H, 1018, BLIND, true, STRAIGHT",
        "1/4-20 UNC-2B, 1018, THROUGH, true, STRAIGHT",
        "1/4-20 UNC-2B, 304, BLIND, false, SPIRAL_RIGHT",
        "1/4-20 UNC-2B, 6061-T6, THROUGH, false, SPIRAL_POINT"
    })
    void theFirstChoice(String callOut, String material, HoleEnd end, boolean byHand, FluteKind expected) {
        assertThat(advice(wish(callOut, material, end, byHand)).choices().get(0).flutes())
                .isEqualTo(expected);
    }

    @Test
    void inABlindHoleATapThatPushesItsChipsAheadComesLastOfTheCuttingOnes() {
        for (WorkMaterial material : Materials.all()) {
            List<TapChoice> choices = advice(wish("M10x1.5-6H", material.id(), HoleEnd.BLIND, false))
                    .choices();
            List<ChipFlow> cutting = choices.stream()
                    .filter(choice -> choice.flutes() != FluteKind.FORMING)
                    .map(TapChoice::flow)
                    .toList();
            assertThat(cutting.subList(2, 4)).as(material.id()).containsOnly(ChipFlow.FORWARD);
        }
    }

    @Test
    void whatCannotBeFormedIsFormedLast() {
        for (WorkMaterial material : Materials.all()) {
            TapChoice last = advice(wish("M10x1.5-6H", material.id(), HoleEnd.THROUGH, false))
                    .choices()
                    .get(4);
            assertThat(last.flutes() == FluteKind.FORMING).as(material.id()).isEqualTo(!material.canBeFormed());
        }
    }

    @Test
    void everyChoiceSaysWhyOrWhyNot() {
        for (HoleEnd end : HoleEnd.values()) {
            for (boolean byHand : new boolean[] {true, false}) {
                for (TapChoice choice :
                        advice(wish("M10x1.5-6H", null, end, byHand)).choices()) {
                    assertThat(choice.reasons().size() + choice.cautions().size())
                            .isPositive();
                }
            }
        }
    }

    /** Limits of M10 class 2 as published: 42 to 70 um over the basic pitch diameter 9.026. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "M10x1.5-6H, class 2 (ISO 2), 9.068, 9.096",
        "M10x1.5-4H, class 1 (ISO 1), 9.040, 9.068",
        "M10x1.5-6G, class 3 (ISO 3), 9.096, 9.124"
    })
    void metricTapsAreMarkedByClass(String callOut, String mark, double min, double max) {
        TapLimit limit = advice(wish(callOut, null, HoleEnd.BLIND, false)).limit();
        assertThat(limit.words()).isEqualTo(mark);
        Limits pitch = Objects.requireNonNull(limit.pitch());
        assertThat(Objects.requireNonNull(pitch.min()).mm()).isCloseTo(min, within(0.0006));
        assertThat(Objects.requireNonNull(pitch.max()).mm()).isCloseTo(max, within(0.0006));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"1/4-20 UNC-2B, H5", "1/4-20 UNC-3B, H3", "10-32 UNF-2B, H3", "1/2-13 UNC-3B-LH, H4", "0-80 UNF-2B, H2"
    })
    void inchTapsAreMarkedAsTheCatalogueRecommends(String callOut, String mark) {
        assertThat(advice(wish(callOut, null, HoleEnd.BLIND, false)).limit().words())
                .isEqualTo(mark);
    }

    @Test
    void theRuleOfTheMiddleIsWithinOneNumberOfTheCatalogueToTheHalfInch() {
        for (String callOut : UnifiedPairs.callOuts()) {
            CallOut thread = CallOuts.read(callOut + "-2B").orThrow();
            if (thread.thread().major().inch() > 0.5) {
                continue;
            }
            int rule = TapLimit.byRule(thread.limits(Side.INTERNAL, Pen.NONE).orElseThrow());
            String mark = TapLimit.of(thread, Pen.NONE).words();
            assertThat(Math.abs(Integer.parseInt(mark.substring(1)) - rule))
                    .as(callOut)
                    .isLessThanOrEqualTo(1);
        }
    }

    @Test
    void noLimitTakesTheTapOverTheHolesOwnGreatestPitchDiameter() {
        for (String callOut : UnifiedPairs.callOuts()) {
            for (String fit : new String[] {"-2B", "-3B"}) {
                CallOut thread = CallOuts.read(callOut + fit).orThrow();
                Length most = Objects.requireNonNull(
                        Objects.requireNonNull(TapLimit.of(thread, Pen.NONE).pitch())
                                .max());
                assertThat(most)
                        .as(callOut + fit)
                        .isLessThan(Objects.requireNonNull(thread.limits(Side.INTERNAL, Pen.NONE)
                                .orElseThrow()
                                .pitch()
                                .max()));
            }
        }
    }

    @Test
    void aShankThinnerThanTheHoleReachesToItsSquare() {
        Reach half = advice(wish("1/2-13 UNC-2B", null, HoleEnd.BLIND, false))
                .reach()
                .orElseThrow();
        // blank 3.38 overall, square .44, shank .367 in a hole of .417
        assertThat(half.depth().inch()).isCloseTo(2.94, within(1e-9));
        Reach quarter = advice(wish("1/4-20 UNC-2B", null, HoleEnd.BLIND, false))
                .reach()
                .orElseThrow();
        assertThat(quarter.depth().inch()).isCloseTo(1.0, within(1e-9));
        assertThat(quarter.shankEnters()).isFalse();
    }

    @Test
    void aDeepHoleOnAThickShankIsSaidToBeOutOfReach() {
        TapWish wish = new TapWish(
                CallOuts.read("M6x1-6H").orThrow(),
                null,
                new TapWish.Place(Length.ofMm(20), HoleEnd.BLIND),
                TapWish.Drive.UNKNOWN);
        assertThat(advice(wish).choices().get(0).cautions())
                .contains("Its point must go 22.500 mm (0.8858 in) deep, a usual tap reaches 15.000 mm"
                        + " (0.5906 in): take a"
                        + " long one.");
    }

    @Test
    void magnesiumAndWaterAreKeptApart() {
        assertThat(advice(wish("M6x1-6H", "AZ91", HoleEnd.BLIND, false)).choices())
                .allSatisfy(
                        choice -> assertThat(choice.cautions()).anyMatch(caution -> caution.contains("never water")));
    }

    @Test
    void aTaperThreadIsRefusedWithTheMend() {
        assertThat(TapAdvice.of(wish("M8x1.25-6g", null, HoleEnd.BLIND, false))
                        .findings()
                        .get(0)
                        .why())
                .isEqualTo("names the external thread only");
        assertThat(TapAdvice.of(wish("1/2-14 NPT", null, HoleEnd.BLIND, false))
                        .findings()
                        .get(0)
                        .sentence())
                .isEqualTo("thread: \"1/2-14 NPT\" is a taper thread: its whole body cuts, and one tap is"
                        + " made for it. To mend:"
                        + " take the tap of that pipe thread, and give it the larger torque of a taper tap.");
    }

    @Test
    void whatWasNotToldIsSaid() {
        TapWish bare =
                new TapWish(CallOuts.read("M8x1.25").orThrow(), null, TapWish.Place.UNKNOWN, TapWish.Drive.UNKNOWN);
        assertThat(advice(bare).cautions().stream().map(Caution::code))
                .contains("endAssumed", "driveAssumed", "materialAssumed");
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        for (String callOut :
                List.of("M8x1.25-6H", "M36x4-6H", "1/4-20 UNC-2B", "1 1/8-7 UNC-3B", "G 1/2", "STI M6x1")) {
            WorkingCheck.everyFormulaGivesItsFigure(TapAdvice.of(wish(callOut, "304", HoleEnd.BLIND, false))
                    .orThrow()
                    .steps());
        }
    }

    /** Area of the groove, hole at the minor diameter: Tr20x4 2*1.464 + 4*tan 15 = 4.0; M20x2.5 .2368*6.25 = 1.48. */
    @ParameterizedTest
    @ValueSource(strings = {"Tr20x4-7H", "1-5 ACME-2G"})
    void aTrapezoidalThreadIsCutWithStraightFlutesInSteps(String thread) {
        TapAdvice advice = advice(wish(thread, "1045", HoleEnd.BLIND, false));
        assertThat(advice.choices().get(0).flutes()).isEqualTo(FluteKind.STRAIGHT);
        assertThat(advice.reach()).isEmpty();
        assertThat(advice.cautions()).extracting(Caution::code).contains("powerThread", "noBlank");
    }

    @Test
    void anInsertHoleWantsAMarkedTap() {
        TapAdvice advice = advice(wish("STI M8x1.25-5H", "6061-T6", HoleEnd.BLIND, false));
        assertThat(advice.cautions()).extracting(Caution::code).contains("insertTap", "noBlank");
    }
}
