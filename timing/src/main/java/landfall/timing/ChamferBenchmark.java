// SPDX-License-Identifier: Apache-2.0
package landfall.timing;

import java.util.concurrent.TimeUnit;
import landfall.cards.ask.GrindTrial;
import landfall.envelope.ChamferGrid;
import landfall.envelope.GrindRun;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** All lands of a chamfer with four flutes at 0.25 degree by P/40 to a micrometre. Asked for: under 20 ms, one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ChamferBenchmark {
    private final GrindTrial uneven = Work.trial(false);
    private final GrindTrial even = Work.trial(true);

    /** Every land worked out by itself. */
    @Benchmark
    public ChamferGrid chamferWithUnevenLobes() {
        return uneven.ground().grid(Work.between(uneven));
    }

    /** Lobes that are even: lands alike. */
    @Benchmark
    public ChamferGrid chamfer() {
        return even.ground().grid(Work.between(even));
    }

    /** What each answer of {@code grind} pays for its run. */
    @Benchmark
    public GrindRun run() {
        return even.run();
    }
}
