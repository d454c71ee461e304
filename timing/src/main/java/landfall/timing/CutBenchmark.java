// SPDX-License-Identifier: Apache-2.0
package landfall.timing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.ask.CutAsk;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The whole question {@code cut}, from what was typed to JSON with its working. Asked for: under 150 ms, warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CutBenchmark {
    private final Map<String, String> typed = new LinkedHashMap<>(Map.of(
            "thread", "M8x1.25-6H",
            "flutes.count", "3",
            "flutes.core", "3.5 mm",
            "flutes.radius", "2.1 mm",
            "flutes.rake", "10 deg",
            "land.width", "2.6 mm",
            "chamfer.angle", "9 deg",
            "chamfer.pointDiameter", "6.4 mm",
            "cuts", "C45",
            "hole", "6.8 mm"));

    /** Another depth each time, so that nothing can be kept. */
    private int turn;

    @Benchmark
    public String cut() {
        turn = turn % 100 + 1;
        typed.put("depth", (5 + turn / 10.0) + " mm");
        return JsonAnswer.line(new CutAsk().answer(typed).orThrow(), true);
    }
}
