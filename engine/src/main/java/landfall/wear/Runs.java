// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.history.Event;
import landfall.history.Happening;
import landfall.history.History;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/** A tap's history cut into runs. Events that were taken back do not count; others count when they happened. */
public final class Runs {
    private Runs() {}

    /**
     * All runs of a tap, the last one open unless the tap is broken or scrapped. A tap that was never bought in its
     * records, nor ground, may have cut before: its first run has an unknown start. Runs without a hole are left out,
     * but for the open one.
     */
    public static List<Run> of(String mark, History history) {
        List<Event> inTime = new ArrayList<>(history.holding());
        inTime.sort(Comparator.comparing(Event::at).thenComparingLong(Event::seq));
        Keeping keeping = new Keeping(mark);
        RunWalk walk = new RunWalk(keeping);
        inTime.forEach(walk::take);
        if (!walk.hasEnded()) {
            keeping.keep(walk.open());
        }
        return List.copyOf(keeping.done);
    }

    /** The run that still goes on; null where the tap has ended. */
    public static @Nullable Run open(List<Run> runs) {
        return runs.isEmpty() || !runs.get(runs.size() - 1).isOpen() ? null : runs.get(runs.size() - 1);
    }

    /** Runs by the material of most of their holes, under the empty text where nobody told it. */
    public static Map<String, List<Run>> byMaterial(List<Run> runs) {
        Map<String, List<Run>> sorted = new LinkedHashMap<>();
        for (Run run : runs) {
            sorted.computeIfAbsent(run.material(), material -> new ArrayList<>())
                    .add(run);
        }
        return sorted;
    }

    private static final class Keeping implements RunWalk.Keeper {
        private final String mark;
        private final List<Run> done = new ArrayList<>();
        private final List<Happening.Tapped> cuts = new ArrayList<>();
        private final List<Run.Land> lands = new ArrayList<>();

        Keeping(String mark) {
            this.mark = mark;
        }

        @Override
        public boolean hasCut() {
            return !cuts.isEmpty();
        }

        @Override
        public void cut(Happening.Tapped cut) {
            cuts.add(cut);
        }

        @Override
        public void land(Length width) {
            lands.add(new Run.Land(cuts.size(), width));
        }

        @Override
        public void keep(Run.Span span) {
            done.add(new Run(mark, span, cuts, lands));
        }

        @Override
        public void begin() {
            cuts.clear();
            lands.clear();
        }
    }
}
