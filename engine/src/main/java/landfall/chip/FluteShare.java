// SPDX-License-Identifier: Apache-2.0
package landfall.chip;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import landfall.chip.ChipLoad.Steps;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * What one flute's teeth take of all that is cut in a turn, when the chamfer runs out or its lands are unequal.
 *
 * <p>Edge i stands proud by e_i: its height as told, or e_i = ε cos(360 i/N), ε half the total run-out. It cuts down to
 * i·a_r + e_i, less what the edges before it have already taken; the sum over a turn is one lead's worth whatever they
 * do.
 *
 * @param flute counted in cutting order; with a run-out the most proud is 1
 * @param percent of the sum; 100/N when all are alike
 */
public record FluteShare(int flute, double percent) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/chip-slices.md");
    public static final Rule RUN_OUT = Rule.given("TIR", "mm", "total run-out of the chamfer");
    public static final Rule IDLE_AT = new Rule(
            "TIR_0",
            "a_r/sin(180/N)",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "total run-out from which a tooth can cut nothing, lying worst");

    /** Whether the edges before it have taken its chip. */
    public boolean isIdle() {
        return percent <= 0;
    }

    static List<FluteShare> of(int flutes, Steps steps, Evenness evenness, Pen pen) {
        double[] proud = proud(flutes, steps, evenness, pen);
        List<FluteShare> shares = new ArrayList<>();
        double step = steps.radial().mm();
        for (int i = 0; i < flutes; i++) {
            double met = Double.NEGATIVE_INFINITY;
            for (int back = 1; back <= flutes; back++) {
                met = Math.max(met, proud[Math.floorMod(i - back, flutes)] - back * step);
            }
            double percent = 100 * Math.max(0, proud[i] - met) / (flutes * step);
            shares.add(new FluteShare(i + 1, pen.write(shareOf(i + 1), percent)));
        }
        return shares;
    }

    private static double[] proud(int flutes, Steps steps, Evenness evenness, Pen pen) {
        double[] proud = new double[flutes];
        for (int i = 0; i < evenness.heights().size(); i++) {
            proud[i] = pen.write(heightOf(i + 1), evenness.heights().get(i).mm());
        }
        if (evenness.runOut().mm() > 0) {
            double half = pen.write(RUN_OUT, evenness.runOut().mm()) / 2;
            if (flutes > 1) {
                pen.write(IDLE_AT, steps.radial().mm() / Math.sin(Math.PI / flutes));
            }
            for (int i = 0; i < flutes; i++) {
                proud[i] = half * Math.cos(2 * Math.PI * i / flutes);
            }
        }
        return proud;
    }

    static Rule heightOf(int land) {
        return Rule.given("e_h" + land, "mm", "how far land " + land + " stands proud");
    }

    /** Chip of the flute that takes most. */
    static Rule thickest(int flutes) {
        String all = IntStream.rangeClosed(1, flutes).mapToObj(i -> "q_" + i).collect(Collectors.joining(", "));
        return new Rule(
                "h_max",
                "h*N*max(" + all + ")/100",
                "mm",
                GEOMETRY,
                Trust.DERIVED,
                "thickness of the chip of the flute that takes most");
    }

    public static Rule shareOf(int flute) {
        return Rule.table("q_" + flute, "%", GEOMETRY, Trust.DERIVED, "share of flute " + flute + " in a turn");
    }
}
