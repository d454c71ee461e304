// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import landfall.history.Happening;
import landfall.material.Materials;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.thread.callout.CallOuts;
import org.jspecify.annotations.Nullable;

/** An invented shop that taps M8 in C45, 12 mm deep, by a law that the tests know. */
final class Shop {
    static final WorkMaterial C45 = Materials.find("material", "C45").orThrow();
    static final Length DEPTH = Length.ofMm(12);
    static final Prior PRACTICE =
            Prior.practice(CallOuts.read("M8x1.25-6H").orThrow().thread(), C45);
    private static final Instant START = Instant.parse("2026-01-05T07:00:00Z");

    private final Random chance;
    private final double middle;
    private final double scatter;

    /** @param middle holes between sharpenings, half of the runs having fewer */
    Shop(long seed, double middle, double scatter) {
        this.chance = new Random(seed);
        this.middle = middle;
        this.scatter = scatter;
    }

    /** A shop as practice thinks that shops are. */
    static Shop drawn(long seed) {
        Random chance = new Random(seed);
        double perHole = DEPTH.over(PRACTICE.subject().major());
        double middle = PRACTICE.life().diameters().expected()
                / perHole
                * Math.exp(PRACTICE.life().spread() * chance.nextGaussian());
        double scatter = 0.35 * Math.exp(0.35 * chance.nextGaussian());
        return new Shop(chance.nextLong(), middle, scatter);
    }

    double middle() {
        return middle;
    }

    double life() {
        return middle * Math.exp(scatter * chance.nextGaussian());
    }

    /** Runs that a person ended near the wear limit without measuring, as far off as people are. */
    List<Run> judged(int count) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double at = life() * Math.exp(Evidence.JUDGED * chance.nextGaussian());
            runs.add(run("J" + i, Run.End.SHARPENED, Math.max(1, (int) Math.round(at)), null));
        }
        return runs;
    }

    /** Runs that ended after so many holes at most with the wear land measured. */
    List<Run> measured(int count, int most) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int holes = 1 + chance.nextInt(most);
            double share = holes / life();
            double land = share * PRACTICE.subject().due().mm() * Math.exp(0.1 * chance.nextGaussian())
                    + 0.02 * chance.nextGaussian();
            runs.add(run("M" + i, Run.End.SHARPENED, holes, Length.ofMm(Math.max(0, land))));
        }
        return runs;
    }

    /**
     * Taps with so many holes each behind them, ground whenever somebody finds them due; the last run of each goes on.
     */
    List<Run> taps(int count, int holesEach) {
        List<Run> runs = new ArrayList<>();
        for (int tap = 0; tap < count; tap++) {
            int left = holesEach;
            while (left > 0) {
                double due = Math.max(1, life() * Math.exp(Evidence.JUDGED * chance.nextGaussian()));
                boolean ground = due < left;
                int holes = ground ? (int) Math.round(due) : left;
                runs.add(run("T" + tap, ground ? Run.End.SHARPENED : Run.End.OPEN, holes, null));
                left -= holes;
            }
        }
        return runs;
    }

    static Run run(String mark, Run.End end, int holes, @Nullable Length land) {
        Happening.Tapped cut = cut(holes, false, C45.id(), new Happening.Felt(null, null, null));
        List<Run.Land> lands = land == null ? List.of() : List.of(new Run.Land(1, land));
        return new Run(mark, new Run.Span(Run.Start.SHARPENED, end, START), List.of(cut), lands);
    }

    static Happening.Tapped cut(int holes, boolean about, @Nullable String material, Happening.Felt felt) {
        return new Happening.Tapped(new Happening.Holes(holes, about), new Happening.Work(material, DEPTH), felt);
    }

    static Run fresh(String mark) {
        return new Run(mark, new Run.Span(Run.Start.SHARPENED, Run.End.OPEN, null), List.of(), List.of());
    }
}
