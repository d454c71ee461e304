// SPDX-License-Identifier: Apache-2.0
package landfall.store.bulk;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * A shop that never was, of any size: tables of taps and of what happened to them, written line by line from a seed in
 * the order of time. Nothing in it is measured anywhere: lives are drawn, to have something to import.
 */
final class MadeShop {
    static final List<String> THREADS = List.of(
            "M3x0.5-6H",
            "M4x0.7-6H",
            "M5x0.8-6H",
            "M6x1-6H",
            "M8x1.25-6H",
            "M8x1-6H",
            "M10x1.5-6H",
            "M12x1.75-6H",
            "M16x2-6H",
            "M20x2.5-6H",
            "1/4-20 UNC-2B",
            "5/16-18 UNC-2B",
            "3/8-16 UNC-2B",
            "1/2-13 UNC-2B",
            "10-32 UNF-2B",
            "1/4-28 UNF-2B");

    private static final List<String> FLUTES = List.of("straight", "spiral-point", "spiral-right");
    private static final List<String> MATERIALS = List.of("1045", "4140 annealed", "304", "6061-T6");
    private static final Instant BEGIN = Instant.parse("2016-01-04T06:00:00Z");

    /** One row in so many is broken, where that is wanted. */
    static final int BROKEN_EVERY = 997;

    private static final List<String> BROKEN = List.of(
            "T%d,tapped,%s,Ida,b%d,two,1045,,,,",
            "T%d,tapd,%s,Ida,b%d,4,1045,,,,",
            "NOBODY-%d,tapped,%s,Ida,b%d,4,1045,,,,",
            "T%d,tapped,%s,Ida,b%d,4,1045,,,,,,more",
            "T%d,tapped,%s,Ida,b%d,4,\"1045,,,,",
            "T%d,tapped,%s,Ida,b%d,4,10\u000045,,,,",
            "T%d,sharpened,%s,Ida,b%d,,,,,,");

    private final Random random;
    private final int taps;
    private final int[] since;
    private final double[] life;
    private long told;
    private long broken;

    MadeShop(long seed, int taps) {
        this.random = new Random(seed);
        this.taps = taps;
        this.since = new int[taps];
        this.life = new double[taps];
    }

    static String mark(int tap) {
        return "T" + (tap + 1);
    }

    void things(Path file) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            out.write("mark,thread,flutes.kind\n");
            for (int tap = 0; tap < taps; tap++) {
                // taps of one thread lie together, as their marks were given when they were bought
                String thread = THREADS.get((int) ((long) tap * THREADS.size() / taps));
                out.write(mark(tap) + "," + thread + "," + FLUTES.get(tap % 3) + "\n");
            }
        }
    }

    /** The number of broken rows among them. */
    long events(Path file, long rows, boolean withBroken) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            out.write("mark,event,at,by,ticket,holes,material,depth,way,wear-land,to\n");
            Arrays.setAll(life, tap -> 60 * Math.exp(0.6 * random.nextGaussian()));
            for (long row = 0; row < rows; row++) {
                String at = BEGIN.plus(Duration.ofSeconds(row * 300_000_000L / Math.max(1, rows)))
                        .toString();
                int tap = random.nextInt(taps);
                if (withBroken && row % BROKEN_EVERY == BROKEN_EVERY - 1) {
                    String line = BROKEN.get((int) (broken % BROKEN.size()));
                    out.write(line.formatted(tap + 1, at, broken));
                    broken++;
                } else {
                    out.write(mark(tap) + "," + happening(tap, at));
                }
                out.write('\n');
            }
        }
        return broken;
    }

    private String happening(int tap, String at) {
        String about = at + ",Ida,r" + ++told;
        if (since[tap] > life[tap]) {
            since[tap] = 0;
            return random.nextBoolean()
                    ? "sharpened," + about + ",,,,chamfer,,"
                    : "measured," + about + ",,,,,0." + (10 + random.nextInt(30)) + " mm,";
        }
        if (random.nextInt(12) == 0) {
            return "issued," + about + ",,,,,,bench " + random.nextInt(5);
        }
        int holes = 1 + random.nextInt(30);
        since[tap] += holes;
        String material = MATERIALS.get(tap % MATERIALS.size());
        return "tapped," + about + "," + holes + "," + material + "," + (8 + random.nextInt(17)) + " mm,,,";
    }
}
