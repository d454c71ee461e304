// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Spreads that are known")
class KnownSpreadsTest {
    private static final long MANY = 400_000;

    private static Summary of(Law law) {
        return SpreadSamples.run(SpreadSamples.plan(3, MANY, 0, law), SpreadSamples.of(x -> x[0]), 2);
    }

    private static void agrees(Summary summary, double mean, double deviation) {
        Moments moments = summary.results().get(0).moments();
        double error = deviation / Math.sqrt(MANY);
        assertThat(moments.count()).isEqualTo(MANY);
        assertThat(moments.mean()).isCloseTo(mean, within(4 * error));
        assertThat(moments.deviation()).isCloseTo(deviation, within(4 * error));
    }

    @Test
    void aNormalLawIsRecovered() {
        Summary summary = of(new Law.Normal(9, 0.2));
        agrees(summary, 9, 0.2);
        Tally tally = summary.results().get(0);
        // quantiles of the normal law: 5 % at 1.644854 deviations, 0.1 % at 3.090232
        assertThat(tally.quantile(0.05)).isCloseTo(9 - 0.2 * 1.644854, within(0.003));
        assertThat(tally.quantile(0.999)).isCloseTo(9 + 0.2 * 3.090232, within(0.01));
    }

    @Test
    void anEvenLawIsRecovered() {
        agrees(of(new Law.Uniform(2, 5)), 3.5, 3 / Math.sqrt(12));
    }

    @Test
    void aListIsRecovered() {
        // of 1, 2 and 6: mean 3, variance (4 + 1 + 9)/3
        agrees(of(new Law.Choices(List.of(1.0, 2.0, 6.0))), 3, Math.sqrt(14.0 / 3));
    }

    @Test
    void readingsAreRecovered() {
        // straight from 0 to 1 and from 1 to 4, half each: mean 1.5; mean of squares 1/6 + 7/2
        agrees(of(new Law.Readings(List.of(4.0, 0.0, 1.0))), 1.5, Math.sqrt(1.0 / 6 + 3.5 - 2.25));
    }

    @Test
    void quantilesAreWithinTheWidthOfTheCountsOfThoseThatSortingFinds() {
        Random random = new Random(5);
        for (int round = 0; round < 20; round++) {
            double skew = 1 + 4 * random.nextDouble();
            Plan plan = SpreadSamples.plan(round, 5000, 0, new Law.Uniform(0, 1));
            Summary summary = SpreadSamples.run(plan, SpreadSamples.of(x -> Math.pow(x[0], skew) - 0.3), 2);
            double[] sorted = new double[5000];
            for (int k = 0; k < sorted.length; k++) {
                sorted[k] = Math.pow(new Draws(round).uniform(0, k), skew) - 0.3;
            }
            Arrays.sort(sorted);
            Tally tally = summary.results().get(0);
            for (double share : new double[] {0.001, 0.05, 0.3, 0.5, 0.9, 0.999}) {
                double sortedOne = sorted[(int) Math.ceil(share * sorted.length) - 1];
                assertThat(tally.quantile(share))
                        .as("round %d, share %s", round, share)
                        .isCloseTo(sortedOne, within(tally.frame().width()));
            }
        }
    }

    /**
     * Ishigami and Homma's function: V = a²/8 + bπ⁴/5 + b²π⁸/18 + 1/2, of which V_1 = (1 + bπ⁴/5)²/2, V_2 = a²/8, V_13
     * = 8b²π⁸/225.
     */
    @ParameterizedTest
    @CsvSource({"0, 0.313905, 0.557589", "1, 0.442411, 0.442411", "2, 0, 0.243684"})
    void theSensitivitiesOfIshigamisFunctionAreFound(int input, double first, double total) {
        Plan plan =
                SpreadSamples.plan(1, 262_144, 262_144, SpreadSamples.three().toArray(Law[]::new));
        Summary summary = SpreadSamples.run(plan, SpreadSamples.of(SpreadSamples::ishigami), 2);
        Sensitivity found = Objects.requireNonNull(summary.sensitivity(0, input));
        assertThat(found.first()).isCloseTo(first, within(4 * found.firstError()));
        assertThat(found.total()).isCloseTo(total, within(4 * found.totalError()));
        assertThat(found.firstError()).isBetween(1e-4, 0.005);
        assertThat(found.totalError()).isBetween(1e-5, 0.005);
    }

    /** The stated errors must be the spread that other seeds show. */
    @Test
    void theErrorsOfTheSensitivitiesAreWhatSeedsShow() {
        Moments total = new Moments();
        Moments stated = new Moments();
        for (int seed = 0; seed < 100; seed++) {
            Plan plan =
                    SpreadSamples.plan(seed, 4096, 4096, SpreadSamples.three().toArray(Law[]::new));
            Summary summary = SpreadSamples.run(plan, SpreadSamples.of(SpreadSamples::ishigami), 2);
            Sensitivity found = Objects.requireNonNull(summary.sensitivity(0, 0));
            total.add(found.total());
            stated.add(found.totalError());
        }
        assertThat(total.deviation()).isBetween(0.75 * stated.mean(), 1.33 * stated.mean());
    }

    /** Wilson's interval for 9 of 10, from its formula by hand: 0.5958 to 0.9821. */
    @Test
    void theIntervalOfAShare() {
        Proportion nine = Proportion.of(9, 10);
        assertThat(nine.low()).isCloseTo(0.5958, within(5e-5));
        assertThat(nine.high()).isCloseTo(0.9821, within(5e-5));
        assertThat(Proportion.of(0, 50).low()).isZero();
        assertThat(Proportion.of(50, 50).high()).isEqualTo(1);
        assertThat(Proportion.of(50, 50).low()).isBetween(0.92, 0.94);
    }

    @Test
    void theIntervalHoldsTheTrueShareAboutNineteenTimesOfTwenty() {
        Random random = new Random(2);
        int held = 0;
        for (int round = 0; round < 2000; round++) {
            long good = random.ints(200).filter(i -> (i & 0xFF) < 64).count();
            Proportion found = Proportion.of(good, 200);
            held += found.low() <= 0.25 && 0.25 <= found.high() ? 1 : 0;
        }
        assertThat(held).isBetween(1860, 1940);
    }

    @Test
    void aResultThatDoesNotMoveHasNoSpreadAndNoCause() {
        Plan plan = SpreadSamples.plan(1, 2000, 1024, new Law.Uniform(0, 1), new Law.Uniform(0, 1));
        Summary summary = SpreadSamples.run(plan, SpreadSamples.of(x -> 5), 2);
        assertThat(summary.results().get(0).moments().deviation()).isZero();
        assertThat(summary.results().get(0).quantile(0.5)).isEqualTo(5);
        assertThat(Objects.requireNonNull(summary.sensitivity(0, 0)).total()).isZero();
    }
}
