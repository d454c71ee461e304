// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.function.ToDoubleFunction;
import landfall.grind.CamProfile;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The 95 % uncertainties, over 10,000 sets of readings made from known errors")
class CoverageTest {
    private static final int TRIALS = 10_000;
    private static final double LEAST = 94.0;
    private static final double MOST = 96.5;

    /** lands x angles, terms, dial division in mm, shake of the hand in mm. */
    @ParameterizedTest(name = "{0} lands, {1} angles, {2}, dial {3}, shake {4}")
    @CsvSource({
        "3, 4, HEIGHTS,     0.01,  0.006",
        "3, 4, HEIGHTS,     0.001, 0.003",
        "3, 4, HEIGHTS,     0.01,  0.002",
        "3, 4, COMMON_ZERO, 0.01,  0.004",
        "4, 6, HEIGHTS,     0.01,  0.005",
        "4, 6, HEIGHTS,     0.001, 0.0002",
        "4, 6, COMMON_ZERO, 0.0127, 0.005",
        "3, 3, HEIGHTS,     0.002, 0.004",
        "2, 6, COMMON_ZERO, 0.01,  0.008",
        "6, 4, HEIGHTS,     0.01,  0.004"
    })
    void holdForSlopeRunOutAndEveryHeight(int lands, int angles, Terms terms, double division, double shake) {
        Random random = new Random(20261125L + lands * 100L + angles);
        LandModel model = new LandModel(
                some(lands, terms, random).exact(degrees(angles), division), CamProfile.straight(), terms);
        Count slope = new Count();
        Count cosine = new Count();
        Count sine = new Count();
        Count[] heights = new Count[lands];
        for (int i = 0; i < lands; i++) {
            heights[i] = new Count();
        }
        for (int trial = 0; trial < TRIALS; trial++) {
            KnownTap truth = some(lands, terms, random);
            double[] values =
                    truth.read(degrees(angles), division, shake, random).values();
            DialFit fit = DialFit.of(new Solution(model, values, division));
            RunOut runOut = requireNonNull(fit.runOut());
            slope.add(fit.slope(), truth.k());
            cosine.add(runOut.cosine(), truth.e());
            sine.add(runOut.sine(), truth.f());
            for (DialFit.LandHeight land : fit.heights()) {
                heights[land.land() - 1].add(land.height(), truth.heights()[land.land() - 1]);
            }
        }
        slope.holds("slope");
        cosine.holds("E");
        sine.holds("F");
        if (terms == Terms.HEIGHTS) {
            for (int i = 0; i < lands; i++) {
                heights[i].holds("height of land " + (i + 1));
            }
        }
    }

    @ParameterizedTest(name = "{0} lands, {1} angles, {2}, dial {3}, shake {4}, eccentricity {5}")
    @CsvSource({
        "3, 4, COMMON_ZERO, 0.001, 0.003, 0.03",
        "4, 6, COMMON_ZERO, 0.01,  0.005, 0.05",
        "4, 6, HEIGHTS,     0.001, 0.002, 0.08",
        "3, 6, HEIGHTS,     0.001, 0.001, 0.05"
    })
    void holdForEccentricityAndDirectionWellAboveZero(
            int lands, int angles, Terms terms, double division, double shake, double eccentricity) {
        Random random = new Random(7L * lands + angles);
        LandModel model = new LandModel(
                some(lands, terms, random).exact(degrees(angles), division), CamProfile.straight(), terms);
        Count length = new Count();
        int towards = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            double direction = 2 * Math.PI * random.nextDouble();
            KnownTap truth = some(lands, terms, random)
                    .runningOut(eccentricity * Math.cos(direction), eccentricity * Math.sin(direction));
            double[] values =
                    truth.read(degrees(angles), division, shake, random).values();
            RunOut found = DialFit.runOut(new Solution(model, values, division));
            length.add(found.eccentricity(), eccentricity);
            FittedAngle angle = found.direction();
            if (angle != null) {
                double off = Math.IEEEremainder(angle.value().deg() - Math.toDegrees(direction), 360);
                towards += Math.abs(off) <= angle.uncertainty().deg() ? 1 : 0;
            }
        }
        length.holds("eccentricity");
        assertThat(100.0 * towards / TRIALS).as("direction, % covered").isBetween(LEAST, 97.0);
    }

    @ParameterizedTest(name = "eccentricity {0} times its standard deviation")
    @CsvSource({"0", "0.5", "1", "1.5", "2", "2.5", "3", "4"})
    void neverFallShortForAnEccentricityNearZero(double times) {
        double shake = 0.004;
        Random random = new Random(3);
        LandModel model = new LandModel(
                KnownTap.even(3, 0, 0, 0).exact(degrees(4), 0.001), CamProfile.straight(), Terms.COMMON_ZERO);
        double one = shake * Math.sqrt(model.design.covariance(model.cosine(), model.cosine()));
        double eccentricity = times * one;
        int covered = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            double direction = 2 * Math.PI * random.nextDouble();
            KnownTap truth = KnownTap.even(3, -0.4, 0, 0)
                    .runningOut(eccentricity * Math.cos(direction), eccentricity * Math.sin(direction));
            double[] values = truth.read(degrees(4), 0.001, shake, random).values();
            Fitted found = DialFit.runOut(new Solution(model, values, 0.001)).eccentricity();
            covered += Math.abs(found.value().mm() - eccentricity)
                            <= found.uncertainty().mm()
                    ? 1
                    : 0;
        }
        assertThat(100.0 * covered / TRIALS).isGreaterThan(LEAST);
    }

    @Test
    void areNoNarrowerThanRoundingWhenAllReadingsFallOnOneDivision() {
        Readings readings = KnownTap.even(3, 0, 0, 0).exact(degrees(4), 0.01);
        DialFit fit = DialFit.of(Fits.fullest(readings, CamProfile.straight()));
        assertThat(fit.spread().mm()).isEqualTo(0.01 / Math.sqrt(12));
        assertThat(fit.slope().uncertainty().mm()).isGreaterThan(0.006);
    }

    private static KnownTap some(int lands, Terms terms, Random random) {
        ToDoubleFunction<Random> error = from -> 0.05 * (2 * from.nextDouble() - 1);
        double[] heights = new double[lands];
        if (terms == Terms.HEIGHTS) {
            double sum = 0;
            for (int i = 0; i < lands - 1; i++) {
                heights[i] = error.applyAsDouble(random);
                sum += heights[i];
            }
            heights[lands - 1] = -sum;
        }
        double k = -0.5 + error.applyAsDouble(random);
        return new KnownTap(
                error.applyAsDouble(random), k, error.applyAsDouble(random), error.applyAsDouble(random), heights);
    }

    private static double[] degrees(int angles) {
        return KnownTap.even(40, angles);
    }

    private static final class Count {
        private int covered;
        private int of;

        void add(Fitted found, double truth) {
            of++;
            covered +=
                    Math.abs(found.value().mm() - truth) <= found.uncertainty().mm() ? 1 : 0;
        }

        void holds(String what) {
            assertThat(100.0 * covered / of).as(what + ", % covered").isBetween(LEAST, MOST);
        }
    }
}
