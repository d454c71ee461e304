// SPDX-License-Identifier: Apache-2.0
package landfall.timing;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import landfall.cards.ask.GrindAsk;
import landfall.cards.card.Flat;
import landfall.grind.AsSet;
import landfall.grind.AsSetModel;
import landfall.grind.GrindSetup;
import landfall.spread.Draws;

/**
 * Our side of a run beside NumPy: the working relief of a fixture as it is set, a million settings ten times over, from
 * the same uniform draws on both sides. The draws are made first and timed apart; they lie in a file that the other
 * side reads. Time is that of the one thread that works, so that a busy machine does not count.
 *
 * <pre>java -cp timing/target/timing.jar landfall.timing.SpreadPeer FOLDER TAP.json FIXTURE.json</pre>
 */
public final class SpreadPeer {
    private static final int SIZE = 1_000_000;
    private static final int ROUNDS = 10;
    private static final int BLOCK = 512;
    private static final double[][] ENDS = {{8.5, 9.5}, {0, 0.1}, {0.40, 0.47}};

    private SpreadPeer() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        AsSetModel model = model(Path.of(args[1]), Path.of(args[2]));
        long drawn = cpu();
        double[][] uniform = draws();
        drawn = cpu() - drawn;
        write(folder.resolve("uniform.bin"), uniform);
        double[] working = new double[SIZE];
        double best = Double.POSITIVE_INFINITY;
        for (int round = 0; round < 2 * ROUNDS; round++) {
            long began = cpu();
            work(model, uniform, working);
            best = Math.min(best, cpu() - began);
        }
        write(folder.resolve("working.bin"), new double[][] {working});
        System.out.printf(
                Locale.ROOT,
                "ours: %.2f ns a setting; the draws apart: %.2f ns a setting%n",
                best / SIZE,
                (double) drawn / SIZE);
    }

    private static AsSetModel model(Path tap, Path fixture) throws IOException {
        Map<String, String> typed =
                new TreeMap<>(Flat.read(Files.readString(tap)).orThrow());
        typed.putAll(Flat.read(Files.readString(fixture)).orThrow());
        GrindSetup setup = new GrindAsk().setup(typed).orThrow().value();
        return AsSetModel.of(setup, new AsSet.Read(null, null, null), List.of(AsSetModel.Dial.values()));
    }

    private static double[][] draws() {
        Draws draws = new Draws(7);
        double[][] uniform = new double[ENDS.length][SIZE];
        for (int input = 0; input < uniform.length; input++) {
            for (int k = 0; k < SIZE; k++) {
                uniform[input][k] = draws.uniform(input, k);
            }
        }
        return uniform;
    }

    /** From draws to settings to reliefs, block by block as a run does it. */
    private static void work(AsSetModel model, double[][] uniform, double[] working) {
        for (int from = 0; from < SIZE; from += BLOCK) {
            int size = Math.min(BLOCK, SIZE - from);
            double[][] inputs = new double[ENDS.length][size];
            for (int input = 0; input < inputs.length; input++) {
                double low = ENDS[input][0];
                double range = ENDS[input][1] - low;
                for (int k = 0; k < size; k++) {
                    inputs[input][k] = low + range * uniform[input][from + k];
                }
            }
            double[][] results = new double[1][size];
            model.answer(inputs, results, why -> {});
            System.arraycopy(results[0], 0, working, from, size);
        }
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static void write(Path file, double[][] columns) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(8 * columns.length * SIZE).order(ByteOrder.LITTLE_ENDIAN);
        for (double[] column : columns) {
            for (double value : column) {
                bytes.putDouble(value);
            }
        }
        Files.write(file, bytes.array());
    }
}
