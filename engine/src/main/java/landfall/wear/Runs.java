// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.time.Instant;
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
    private final String mark;
    private final List<Run> done = new ArrayList<>();
    private final List<Happening.Tapped> cuts = new ArrayList<>();
    private final List<Run.Land> lands = new ArrayList<>();
    private Run.Start start = Run.Start.UNKNOWN;
    private @Nullable Instant from;
    private boolean ended;

    private Runs(String mark) {
        this.mark = mark;
    }

    /**
     * All runs of a tap, the last one open unless the tap is broken or scrapped. A tap that was never bought in its
     * records, nor ground, may have cut before: its first run has an unknown start. Runs without a hole are left out,
     * but for the open one.
     */
    public static List<Run> of(String mark, History history) {
        List<Event> inTime = new ArrayList<>(history.holding());
        inTime.sort(Comparator.comparing(Event::at).thenComparingLong(Event::seq));
        Runs runs = new Runs(mark);
        inTime.forEach(runs::take);
        if (!runs.ended) {
            runs.close(Run.End.OPEN);
        }
        return List.copyOf(runs.done);
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

    private void take(Event event) {
        Happening what = event.what();
        if (what instanceof Happening.Bought && cuts.isEmpty() && start == Run.Start.UNKNOWN) {
            start = Run.Start.NEW;
        } else if (what instanceof Happening.Tapped tapped) {
            begin(event);
            cuts.add(tapped);
        } else if (what instanceof Happening.Measured measured) {
            Length land = measured.sizes().wearLand();
            if (land != null) {
                lands.add(new Run.Land(cuts.size(), land));
            }
        } else if (what instanceof Happening.Sharpened) {
            close(Run.End.SHARPENED);
            start = Run.Start.SHARPENED;
            from = event.at();
        } else if (what instanceof Happening.Broken || what instanceof Happening.Scrapped) {
            close(what instanceof Happening.Broken ? Run.End.BROKEN : Run.End.SCRAPPED);
            ended = true;
        }
    }

    private void begin(Event event) {
        if (from == null) {
            from = event.at();
        }
    }

    private void close(Run.End end) {
        if (end == Run.End.OPEN || end == Run.End.BROKEN || !cuts.isEmpty()) {
            done.add(new Run(mark, new Run.Span(start, end, from), cuts, lands));
        }
        cuts.clear();
        lands.clear();
        from = null;
    }
}
