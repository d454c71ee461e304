// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import landfall.quantity.Length;
import landfall.quantity.Stress;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What the thread holds")
class StrengthTest {
    private static Strength strength(String callOut) {
        return HoleChoiceTest.hole(HoleChoiceTest.wish(callOut)).strength().orElseThrow();
    }

    /** Computed apart from this code from the same published limits; areas in in2, in2/in and in to the last digit. */
    @ParameterizedTest(name = "{0}: tensile {1}, shear {2} and {3}, engagement {4}")
    @CsvSource({
        "1/4-20 UNC-2B, .0318, .3680, .5390, .173, .683",
        "3/8-16 UNC-2B, .0775, .5760, .8281, .269, .696",
        "1/2-13 UNC-2B, .1419, .7789, 1.1235, .364, .693"
    })
    void agreesWithTheWorkedInchThreads(
            String callOut, double area, double outside, double inside, double engagement, double ratio) {
        Strength strength = strength(callOut);
        assertThat(strength.tensileArea().inch2()).isCloseTo(area, within(0.00005));
        assertThat(strength.externalPerLength().inch()).isCloseTo(outside, within(0.0006));
        assertThat(strength.internalPerLength().inch()).isCloseTo(inside, within(0.0006));
        assertThat(strength.engagement().inch()).isCloseTo(engagement, within(0.0006));
        assertThat(strength.ratio()).isCloseTo(ratio, within(0.0006));
    }

    /** Nominal stress areas of ISO 898-1, from memory, to three figures. */
    @ParameterizedTest(name = "{0}: {1} mm2")
    @CsvSource({
        "M5x0.8, 14.2",
        "M6x1, 20.1",
        "M8x1.25, 36.6",
        "M10x1.5, 58.0",
        "M12x1.75, 84.3",
        "M16x2, 157",
        "M20x2.5, 245"
    })
    void metricTensileAreasAreTheNominalOnes(String callOut, double area) {
        assertThat(strength(callOut).tensileArea().mm2()).isCloseTo(area, within(area * 0.0025));
    }

    @Test
    void aHardScrewInSoftMetalNeedsLongerThread() {
        HoleWish soft = HoleChoiceTest.wish("1/2-13 UNC-2B")
                .with(new HoleWish.Strengths(Stress.ofPsi(90_000), Stress.ofPsi(22_500)));
        Strength strength = HoleChoiceTest.hole(soft).strength().orElseThrow();
        // 0.693 x 4 = 2.77, times .364 in = 1.01 in
        assertThat(strength.ratio()).isCloseTo(2.773, within(0.002));
        assertThat(strength.engagement().inch()).isCloseTo(1.0104, within(0.001));
    }

    @Test
    void aScrewOverAHundredThousandPsiHasASmallerTensileArea() {
        HoleWish hard = HoleChoiceTest.wish("1/2-13 UNC-2B")
                .with(new HoleWish.Strengths(Stress.ofPsi(180_000), Stress.ofPsi(180_000)));
        assertThat(HoleChoiceTest.hole(hard)
                        .strength()
                        .orElseThrow()
                        .tensileArea()
                        .inch2())
                .isCloseTo(0.13757, within(0.00001));
    }

    @Test
    void aLargerHoleShearsTheScrewsThreadOnALesserArea() {
        double before = Double.POSITIVE_INFINITY;
        for (double hole = 6.6; hole < 7.6; hole += 0.1) {
            HoleWish wish = HoleChoiceTest.wish("M8x1.25-6H");
            HoleWish found =
                    new HoleWish(wish.callOut(), null, wish.place(), wish.tools(), wish.strengths(), Length.ofMm(hole));
            double area = HoleChoiceTest.hole(found)
                    .strength()
                    .orElseThrow()
                    .externalPerLength()
                    .mm();
            assertThat(area).isLessThan(before);
            before = area;
        }
    }

    @Test
    void moreThreadMeansMoreTorqueAndLessEngagement() {
        var curve = HoleChoiceTest.hole(HoleChoiceTest.wish("M8x1.25-6H")).curve();
        assertThat(curve).hasSize(7);
        for (int i = 1; i < curve.size(); i++) {
            assertThat(curve.get(i).torque()).isGreaterThan(curve.get(i - 1).torque());
            assertThat(curve.get(i).engagement()).isLessThan(curve.get(i - 1).engagement());
        }
        assertThat(curve.stream().filter(TradeOff::chosen).map(TradeOff::share)).containsExactly(0.75);
        // groove area times radius, 72 against 60 per cent of M10: a third more
        var m10 = HoleChoiceTest.hole(HoleChoiceTest.wish("M10x1.5-6H").with(new HoleWish.Tools(null, 0.6, null, null)))
                .curve();
        assertThat(m10.get(4).torque()).isCloseTo(1.27, within(0.02));
    }
}
