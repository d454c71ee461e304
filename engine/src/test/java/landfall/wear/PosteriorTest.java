// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import landfall.quantity.Band;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class PosteriorTest {
    private static final Prior.Life LIFE = new Prior.Life(new Band(150, 450, 1350), false);

    /** Laws drawn from the prior and weighed by the evidence, with nothing of the grid in it. */
    @Test
    void agreesWithPlainDrawingAndWeighing() {
        List<Evidence> evidence = List.of(
                new Evidence(Math.log(200), 0.3, true),
                new Evidence(Math.log(260), 0.15, true),
                new Evidence(Math.log(150), 0.4, true),
                new Evidence(Math.log(300), 0.3, false));
        Random chance = new Random(5);
        NormalDistribution normal = new NormalDistribution();
        double sum = 0;
        double first = 0;
        double second = 0;
        for (int i = 0; i < 300_000; i++) {
            double mu = Math.log(450) + LIFE.spread() * chance.nextGaussian();
            double sigma = 0.35 * Math.exp(0.35 * chance.nextGaussian());
            double weight = 1;
            for (Evidence one : evidence) {
                double whole = Math.hypot(sigma, one.noise());
                double z = (mu - one.lnLife()) / whole;
                weight *= one.known() ? Math.exp(-z * z / 2) / whole : normal.cumulativeProbability(z);
            }
            sum += weight;
            first += weight * mu;
            second += weight * mu * mu;
        }
        double mean = first / sum;
        Moments grid = Posterior.of(LIFE, evidence).middle();
        assertThat(grid.mean()).isCloseTo(mean, within(0.005));
        assertThat(grid.sd()).isCloseTo(Math.sqrt(second / sum - mean * mean), within(0.005));
    }

    @Test
    void withoutEvidenceItIsThePrior() {
        Posterior posterior = Posterior.of(LIFE, List.of());
        assertThat(posterior.middle().mean()).isCloseTo(Math.log(450), within(1e-9));
        assertThat(posterior.middle().sd()).isCloseTo(LIFE.spread(), within(1e-6));
        assertThat(posterior.lnScatter().mean()).isCloseTo(Math.log(0.35), within(1e-9));
        assertThat(posterior.lnScatter().sd()).isCloseTo(0.35, within(1e-5));
    }

    @Test
    void tenThousandRunsAreResolved() {
        Random chance = new Random(6);
        List<Evidence> evidence = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            double life = Math.log(20) + 0.3 * chance.nextGaussian() + 0.1 * chance.nextGaussian();
            evidence.add(new Evidence(life, 0.1, true));
        }
        Posterior posterior = Posterior.of(LIFE, evidence);
        assertThat(posterior.middle().mean()).isCloseTo(Math.log(20), within(0.013));
        assertThat(posterior.middle().sd()).isCloseTo(Math.hypot(0.3, 0.1) / 100, within(2e-4));
        assertThat(posterior.lnScatter().mean()).isCloseTo(Math.log(0.3), within(0.04));
    }

    @Test
    void leavingOneOutIsAsIfItHadNeverBeen() {
        List<Evidence> few = List.of(new Evidence(5.2, 0.3, true), new Evidence(5.6, 0.3, true));
        Evidence more = new Evidence(6.5, 0.3, false);
        List<Evidence> all = new ArrayList<>(few);
        all.add(more);
        LifeCurve without = LifeCurve.of(Posterior.of(LIFE, all).columnsWithout(more), Evidence.NONE);
        LifeCurve never = LifeCurve.of(Posterior.of(LIFE, few).columns(), Evidence.NONE);
        for (double share : new double[] {0.1, 0.5, 0.9}) {
            assertThat(without.life(share) / never.life(share)).isCloseTo(1, within(0.005));
        }
    }

    @Test
    void theTableOfTheNormalTailIsTheNormalTail() {
        NormalDistribution normal = new NormalDistribution();
        for (double z = -29.99; z < 12; z += 0.0317) {
            double exact = Math.log(normal.cumulativeProbability(z));
            assertThat(NormalTail.ln(z)).isCloseTo(exact, within(2e-6));
        }
        assertThat(NormalTail.ln(-38 + 1e-9)).isCloseTo(NormalTail.ln(-38 - 1e-9), within(1e-4));
        assertThat(NormalTail.ln(-30 + 1e-9)).isCloseTo(NormalTail.ln(-30 - 1e-9), within(1e-4));
    }

    @Test
    void aRunToDueCountsOneRunOfDangerAndOneToSpentMuchMore() {
        assertThat(Hazard.at(0)).isZero();
        assertThat(Hazard.at(1)).isEqualTo(1);
        assertThat(Hazard.at(0.5)).isCloseTo((Math.pow(1.25, 5) - 1) / 2.5 / 2.6375, within(1e-12));
        assertThat(Hazard.at(1.5)).isGreaterThan(4);
        double before = 0;
        for (double share = 0.01; share < 3; share += 0.01) {
            assertThat(Hazard.at(share)).isGreaterThan(before);
            before = Hazard.at(share);
        }
    }

    @Test
    void theDangerOfBreakingIsFoundFromManyRuns() {
        Breakage many = Breakage.of(new Prior.Breaks(0.04, 1), 120, 1000);
        assertThat(many.perRun()).isCloseTo(121.0 / 1025, within(1e-12));
        assertThat(many.band().low()).isBetween(0.10, many.perRun());
        assertThat(many.band().high()).isBetween(many.perRun(), 0.14);
        assertThat(many.survival(1)).isCloseTo(Math.exp(-many.perRun()), within(1e-3));
    }
}
