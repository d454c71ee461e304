// SPDX-License-Identifier: Apache-2.0
package landfall.timing;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.cards.ask.GrindTrial;
import landfall.envelope.ChamferGrid;

/**
 * The numerical grind beside a general kernel for bodies (manifold-3d, from npm) on the same chamfer: both are probed
 * at the same seeded places against brute force, each at its coarsest setting that is within a micrometre there.
 *
 * <pre>java -cp timing.jar landfall.timing.Peers SCRIPT FOLDER OUT</pre>
 */
public final class Peers {
    private static final int WARM = 3000;
    private static final int RUNS = 2000;
    private static final double GOAL = 50;

    private Peers() {}

    /** @param args the script of the other side, the folder of its kernel, the file to write what was found */
    public static void main(String[] args) throws IOException, InterruptedException {
        GrindTrial uneven = Work.trial(false);
        GrindTrial even = Work.trial(true);
        List<Work.Probe> probes = Work.probes(uneven);
        double own = milliseconds(uneven);
        double alike = milliseconds(even);
        ChamferGrid grid = uneven.ground().grid(Work.between(uneven));
        double error = Work.error(grid, probes, uneven.setup());
        if (error > 1) {
            throw new IllegalStateException("own error is " + error + " micrometres");
        }
        Path work = Files.createTempFile("chamfer", ".json");
        Files.writeString(work, Work.json(uneven, probes));
        String said = other(args[0], args[1], work);
        double peer = number(said, "milliseconds");
        String text = String.format(
                Locale.ROOT,
                "1/2-13, 4 flutes, chamfer of 4 threads at 9 deg, lobes off by up to 0.1 deg; 2,000 probes%n"
                        + "numerical grind  %7.3f ms, largest error %.4f um: %d lands by %d heights by %d places%n"
                        + "  lobes even     %7.3f ms: one land worked out, the others alike%n"
                        + "manifold-3d      %7.1f ms, largest error %.3f um: a step of %s deg, facets of %s mm, %s"
                        + " triangles%n"
                        + "ratio            %7.0f (goal %.0f)%n",
                own,
                error,
                grid.lands(),
                grid.rows(),
                grid.places(),
                alike,
                peer,
                number(said, "error"),
                number(said, "step"),
                number(said, "facet"),
                (long) number(said, "triangles"),
                peer / own,
                GOAL);
        Files.writeString(Path.of(args[2]), text);
    }

    /** Mean of a run in processor time, kernel only: the whole chamfer on its grid. */
    private static double milliseconds(GrindTrial trial) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        double kept = 0;
        long began = 0;
        for (int i = -WARM; i < RUNS; i++) {
            if (i == 0) {
                began = clock.getCurrentThreadCpuTime();
            }
            kept += trial.ground().grid(Work.between(trial)).radius(3, 7, 11).mm();
        }
        double spent = (clock.getCurrentThreadCpuTime() - began) / 1e6 / RUNS;
        if (!(kept > 0)) {
            throw new IllegalStateException("nothing was ground");
        }
        return spent;
    }

    private static String other(String script, String folder, Path work) throws IOException, InterruptedException {
        Process process = new ProcessBuilder("node", script, folder, work.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException("the other side failed");
        }
        return said;
    }

    private static double number(String json, String key) {
        Matcher found = Pattern.compile("\"" + key + "\":([-0-9.eE]+)").matcher(json);
        if (!found.find()) {
            throw new IllegalStateException(key + " is missing in " + json);
        }
        return Double.parseDouble(found.group(1));
    }
}
