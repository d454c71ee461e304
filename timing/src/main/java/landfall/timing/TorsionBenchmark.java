// SPDX-License-Identifier: Apache-2.0
package landfall.timing;

import java.util.concurrent.TimeUnit;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.torsion.Outline;
import landfall.torsion.Place;
import landfall.torsion.Section;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The torsion of one section with round flutes, on one core. Asked for: under 50 ms to 0.1 %. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class TorsionBenchmark {
    private static final double CORE = 0.5;
    private static final double FLUTE = 0.35;

    @Param({"2", "3", "4"})
    public int flutes;

    private Outline outline = Outline.from(Place.polar(Length.ofMm(1), Angle.ZERO))
            .arc(Place.AXIS, Angle.ofDeg(360))
            .repeated(1);

    @Setup
    public void draw() {
        double centre = CORE + FLUTE;
        double rim = Math.toDegrees(Math.acos((1 + centre * centre - FLUTE * FLUTE) / (2 * centre)));
        double inside = Math.toDegrees(Math.acos((FLUTE * FLUTE + centre * centre - 1) / (2 * FLUTE * centre)));
        double division = 360.0 / flutes;
        outline = Outline.from(Place.polar(Length.ofMm(1), Angle.ofDeg(rim)))
                .arc(Place.AXIS, Angle.ofDeg(division - 2 * rim))
                .arc(Place.polar(Length.ofMm(centre), Angle.ofDeg(division)), Angle.ofDeg(-2 * inside))
                .repeated(flutes);
    }

    @Benchmark
    public Section section() {
        return Section.of(outline, Length.ofMm(2));
    }
}
