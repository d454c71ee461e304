// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.fault.OutOfRange;
import landfall.history.Happening;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What one tap did from sharp to its end.
 *
 * @param mark of the tap, or any name that tells runs apart
 * @param cuts in the order they happened
 * @param lands wear lands as measured
 */
public record Run(String mark, Span span, List<Happening.Tapped> cuts, List<Land> lands) {
    /** How a run began. */
    public enum Start {
        NEW,
        SHARPENED,
        /** The tap was in use before its records began. */
        UNKNOWN
    }

    /** How a run ended. */
    public enum End {
        SHARPENED,
        BROKEN,
        SCRAPPED,
        /** Not yet. */
        OPEN
    }

    /**
     * From where to where.
     *
     * @param from first moment told of it; null when nothing has happened
     */
    public record Span(Start start, End end, @Nullable Instant from) {}

    /**
     * A wear land as measured.
     *
     * @param after how many of the run's cuts
     */
    public record Land(int after, Length width) {
        public Land {
            if (width.mm() < 0) {
                throw new OutOfRange(
                        "wear land", width.words(), "0 or more", "correct the event in which it was measured");
            }
        }
    }

    public Run {
        cuts = List.copyOf(cuts);
        lands = List.copyOf(lands);
    }

    /** Its first cuts, told up. */
    Tally until(int first) {
        return Brief.of(new Run(mark, span, cuts.subList(0, first), List.of()))
                .course()
                .whole();
    }

    /** Holes, as counted or guessed. */
    public long holes() {
        return cuts.stream().mapToLong(cut -> cut.holes().count()).sum();
    }

    /** Whether a guess is among the counts. */
    public boolean about() {
        return cuts.stream().anyMatch(cut -> cut.holes().about());
    }

    public boolean isOpen() {
        return span.end == End.OPEN;
    }

    /** The material of most of its holes; empty where nobody told any. */
    public String material() {
        Map<String, Long> holes = new LinkedHashMap<>();
        for (Happening.Tapped cut : cuts) {
            String material = cut.work().material();
            if (material != null) {
                holes.merge(material, (long) cut.holes().count(), Long::sum);
            }
        }
        return holes.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
    }
}
