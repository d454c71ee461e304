// SPDX-License-Identifier: Apache-2.0
package landfall.timing;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import landfall.quantity.Rounding;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** What it costs to round in decimal, which every published limit does, against rounding a double as it lies. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class RoundingBenchmark {
    private static final int SIZES = 1000;

    private final double[] inches = new Random(20261125).doubles(SIZES, 0.05, 4).toArray();

    @Benchmark
    @OperationsPerInvocation(SIZES)
    public void inDecimal(Blackhole figures) {
        for (double inch : inches) {
            figures.consume(Rounding.halfUp(inch, 4));
        }
    }

    @Benchmark
    @OperationsPerInvocation(SIZES)
    public void asItLies(Blackhole figures) {
        for (double inch : inches) {
            figures.consume(Math.round(inch * 1e4) / 1e4);
        }
    }
}
