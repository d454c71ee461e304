// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A run of many set-ups")
class RunTest {
    private static final Plan PLAN =
            new Plan(11, 20_000, 4096, SpreadSamples.three(), List.of(new Within(0, Double.POSITIVE_INFINITY)));
    private static final Model MODEL = SpreadSamples.of(x -> x[2] > 3 ? Double.NaN : SpreadSamples.ishigami(x));
    /** By one thread. Not a constant: the threads of a run would wait for this class to be ready. */
    private final byte[] one = SpreadSamples.bits(SpreadSamples.run(PLAN, MODEL, 1));

    @ParameterizedTest
    @ValueSource(ints = {2, 7})
    void threadsDoNotChangeABit(int threads) {
        assertThat(SpreadSamples.bits(SpreadSamples.run(PLAN, MODEL, threads))).isEqualTo(one);
    }

    @Test
    void anotherSeedGivesAnotherAnswer() {
        Plan other = new Plan(12, PLAN.samples(), PLAN.rows(), PLAN.laws(), PLAN.limits());
        assertThat(SpreadSamples.run(other, MODEL, 2).results().get(0).moments().mean())
                .isNotEqualTo(SpreadSamples.run(PLAN, MODEL, 2)
                        .results()
                        .get(0)
                        .moments()
                        .mean());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 8, 9, 30})
    void stoppedKeptAndGoneOnWithItIsTheSameToTheLastBit(int blocks) throws IOException {
        AtomicInteger seen = new AtomicInteger();
        Summary part =
                new Run(PLAN, MODEL, 2).go(Run.Watch.of(() -> seen.get() >= blocks, summary -> seen.incrementAndGet()));
        assertThat(part.blocks()).isEqualTo(blocks).isLessThan(PLAN.blocks());
        byte[] kept = SpreadSamples.bits(part);
        Summary read = Summary.read(PLAN, new DataInputStream(new ByteArrayInputStream(kept)));
        assertThat(SpreadSamples.bits(read)).isEqualTo(kept);
        Summary whole = new Run(PLAN, MODEL, 7).goOn(read, Run.Watch.NONE);
        assertThat(SpreadSamples.bits(whole)).isEqualTo(one);
    }

    @Test
    void whatIsKeptOfAnotherPlanIsNotRead() {
        Plan other = new Plan(12, PLAN.samples(), PLAN.rows(), PLAN.laws(), PLAN.limits());
        assertThatThrownBy(() -> Summary.read(other, new DataInputStream(new ByteArrayInputStream(one))))
                .isInstanceOf(IOException.class);
    }

    @Test
    void theSetUpsAreHandedOverInTheirOrderAndOnce() {
        List<Long> firsts = new ArrayList<>();
        List<Integer> sizes = new ArrayList<>();
        new Run(PLAN, MODEL, 7).go(new Run.Watch() {
            @Override
            public void rows(long first, double[][] inputs, double[][] results) {
                firsts.add(first);
                sizes.add(results[0].length);
            }
        });
        assertThat(firsts).isSorted().doesNotHaveDuplicates().hasSize((int) PLAN.blocks());
        assertThat(sizes.stream().mapToInt(Integer::intValue).sum()).isEqualTo(20_000);
    }

    @Test
    void whatWasRefusedIsCountedAndIsNotGood() {
        Summary all = SpreadSamples.run(PLAN, MODEL, 2);
        Tally tally = all.results().get(0);
        assertThat(all.refused()).containsOnlyKeys("no figure");
        assertThat(all.refusals() + tally.moments().count()).isEqualTo(PLAN.samples());
        assertThat(all.refusals()).isBetween(400L, 500L);
        assertThat(all.good())
                .isEqualTo(tally.inside())
                .isLessThan(tally.moments().count());
    }

    @Test
    void aFaultOfTheModelEndsTheRun() {
        Model faulty = (inputs, results, refused) -> {
            if (inputs[0][0] != new Law.Uniform(-Math.PI, Math.PI).at(new Draws(11).uniform(0, 0))) {
                throw new IllegalStateException("broken");
            }
        };
        assertThatThrownBy(() -> SpreadSamples.run(PLAN, faulty, 2)).hasMessageContaining("broken");
    }
}
