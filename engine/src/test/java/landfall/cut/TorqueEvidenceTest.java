// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import landfall.material.CuttingFluid;
import landfall.quantity.Band;
import landfall.tap.FluteKind;
import landfall.tap.Make;
import landfall.tap.Wear;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Model and evidence side by side; what the model misses is held here too, so that nobody can forget it. */
@DisplayName("Torque against evidence")
class TorqueEvidenceTest {
    private static final double[][] COARSE = {
        {3, .5}, {4, .7}, {5, .8}, {6, 1}, {8, 1.25}, {10, 1.5}, {12, 1.75}, {16, 2}, {20, 2.5}
    };

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/cut/measured-torque.csv", delimiter = ';')
    void measuredTorqueLiesInTheBand(
            String id,
            String material,
            String thread,
            double hole,
            int flutes,
            double threads,
            String wear,
            CuttingFluid fluid,
            double measured) {
        Wear state = wear.equals("fresh") ? Wear.FRESH : Wear.SPENT;
        CutWish wish = Bench.wish(material, hole, 3, state, Bench.fluid(fluid));
        Band torque = Bench.cut(usualRake(thread, flutes, threads, wish), wish)
                .load()
                .torque()
                .full();
        assertThat(measured).as(id).isBetween(torque.low(), torque.high());
    }

    /** Steels and stainless of two makers' formulas, M3 to M20: nine in ten in the band, the mean within a fifth. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/cut/makers-formulas.csv", delimiter = ';')
    void makersFormulasLieInTheBandOfTheirGroup(String material, double kcA, double factorA, double kcB) {
        List<Double> ratios = new ArrayList<>();
        int inside = 0;
        for (double[] size : COARSE) {
            Band model = forecast(material, size[0], size[1]);
            double hole = size[0] - size[1];
            double a = Math.tan(Math.PI / 6) * kcA * factorA * size[1] * size[1] * (size[0] + 2 * hole) / 24000;
            double b = kcB * size[1] * size[1] * size[0] / 8000;
            for (double formula : new double[] {a, b}) {
                ratios.add(Math.log(formula / model.expected()));
                inside += formula >= model.low() && formula <= model.high() ? 1 : 0;
            }
        }
        double mean = Math.exp(ratios.stream().mapToDouble(r -> r).average().orElseThrow());
        assertThat(mean).as("formula over model").isBetween(0.75, 1.25);
        assertThat(inside).isGreaterThanOrEqualTo((int) (0.8 * ratios.size()));
    }

    /**
     * A miss: 72 % against 60 % thread is told to double the torque in 1020; the areas give 1.33 (rubbing is not in
     * it).
     */
    @Test
    void perCentThreadIsAMiss() {
        double low = hole(0.60);
        double high = hole(0.72);
        double ratio = forecast("1018", 10, 1.5, high).expected()
                / forecast("1018", 10, 1.5, low).expected();
        assertThat(ratio).isCloseTo(1.33, within(0.03));
    }

    /**
     * Spiral point over straight, measured .60 to .65 on M10 in S50C, rake and chamfer not told: at one rake and
     * chamfer the factor .80 is all there is, a miss of a quarter.
     */
    @Test
    void spiralPointAtOneRakeIsAMiss() {
        CutWish wish = Bench.wish("C45", 6.8, 8);
        double straight = Bench.cut(Bench.m8(), wish).load().torque().full().expected();
        double point = Bench.cut(Bench.m8(FluteKind.SPIRAL_POINT, "M8x1.25-6H", Make.PLAIN_HSS), wish)
                .load()
                .torque()
                .full()
                .expected();
        assertThat(point / straight).isCloseTo(0.80, within(1e-9));
    }

    /**
     * The same with the rakes that the two kinds have, 15 and 5 degrees, and 3 flutes for 4: over chamfers of 3 to 5
     * threads on either the ratio runs through what was measured.
     */
    @Test
    void spiralPointWithItsOwnRakeComesDownToTheMeasuredRatio() {
        CutWish wish = Bench.wish("C45", 8.5, 10);
        double low = Double.MAX_VALUE;
        double high = 0;
        for (double threads : new double[] {3, 4, 5}) {
            for (double pointThreads : new double[] {3, 4, 5}) {
                double straight = full(Bench.raked("M10x1.5-6H", 4, threads, 5), wish);
                double point = 0.8 * full(Bench.raked("M10x1.5-6H", 3, pointThreads, 15), wish);
                low = Math.min(low, point / straight);
                high = Math.max(high, point / straight);
            }
        }
        assertThat(low).isCloseTo(0.58, within(0.005));
        assertThat(high).isCloseTo(0.72, within(0.005));
    }

    private static double full(landfall.tap.Tap tap, CutWish wish) {
        return Bench.cut(tap, wish).load().torque().full().expected();
    }

    private static double hole(double share) {
        return 10 - 2 * share * 0.6495 * 1.5;
    }

    private static Band forecast(String material, double d, double pitch) {
        return forecast(material, d, pitch, d - pitch);
    }

    private static Band forecast(String material, double d, double pitch, double hole) {
        CutWish wish = Bench.wish(material, hole, d / 2);
        return Bench.cut(usualRake("M" + d + "x" + pitch, d > 10 ? 4 : 3, 5, wish), wish)
                .load()
                .torque()
                .full();
    }

    /** A tap with the usual rake of its material, as the makers' formulas and tests had. */
    private static landfall.tap.Tap usualRake(String thread, int flutes, double threads, CutWish wish) {
        var rake = wish.material().cutting().rake().value();
        return Bench.raked(
                thread, flutes, threads, (rake.least().deg() + rake.greatest().deg()) / 2);
    }
}
