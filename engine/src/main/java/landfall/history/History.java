// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import landfall.fault.Finding;

/** The events of one thing, in the order they were recorded. */
public final class History {
    private final List<Event> all;
    private final Set<Long> takenBack;

    private History(List<Event> all) {
        this.all = all;
        this.takenBack = takenBack(all);
    }

    /** @throws IllegalArgumentException when two events bear one number */
    public static History of(List<Event> events) {
        List<Event> sorted = new ArrayList<>(events);
        sorted.sort(Comparator.comparingLong(Event::seq));
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).seq() == sorted.get(i - 1).seq()) {
                throw new IllegalArgumentException(
                        "two events numbered " + sorted.get(i).seq());
            }
        }
        return new History(List.copyOf(sorted));
    }

    /** Every event, taken back or not. */
    public List<Event> all() {
        return all;
    }

    /** Those that hold. */
    public List<Event> holding() {
        return all.stream().filter(event -> !isTakenBack(event.seq())).toList();
    }

    public boolean isTakenBack(long seq) {
        return takenBack.contains(seq);
    }

    /**
     * How the thing stands. Events count in the order they happened; those of one moment in the order they were
     * recorded.
     */
    public Standing standing() {
        List<Event> inTime = new ArrayList<>(holding());
        inTime.sort(Comparator.comparing(Event::at).thenComparingLong(Event::seq));
        Standing standing = Standing.NEW;
        for (Event event : inTime) {
            standing = Fold.after(standing, event.what());
        }
        Standing.Last last = all.isEmpty()
                ? Standing.NEW.last()
                : new Standing.Last(
                        all.get(all.size() - 1).seq(),
                        Collections.max(all, Comparator.comparing(Event::at)).at());
        return new Standing(standing.status(), standing.place(), standing.uses(), standing.condition(), last);
    }

    /** Why this cannot happen to the thing as it stands; empty when it can. */
    public Optional<Finding> against(ItemKind kind, Happening next) {
        Optional<Finding> never = never(kind, next);
        if (never.isPresent()) {
            return never;
        }
        if (next instanceof Happening.Corrected corrected) {
            return againstCorrection(corrected.takesBack());
        }
        Status status = standing().status();
        if (!status.ended()) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "event",
                next.kind().word(),
                "cannot happen to a " + kind.word() + " that is " + status.word(),
                "if it is not, take event " + lastOf(status) + " back: corrected --takes-back " + lastOf(status)));
    }

    /** Why this can never happen to a thing of that kind; empty when it can. */
    public static Optional<Finding> never(ItemKind kind, Happening next) {
        return kind.knows(next.kind())
                ? Optional.empty()
                : Optional.of(new Finding(
                        "event",
                        next.kind().word(),
                        "does not happen to a " + kind.word(),
                        "choose another event, or the mark of another thing"));
    }

    private Optional<Finding> againstCorrection(long seq) {
        boolean there = all.stream().anyMatch(event -> event.seq() == seq);
        if (there && !isTakenBack(seq)) {
            return Optional.empty();
        }
        String why = there ? "is taken back already" : "is not the number of an event of this mark";
        List<String> numbers =
                holding().stream().map(event -> String.valueOf(event.seq())).toList();
        List<String> newest = numbers.subList(Math.max(0, numbers.size() - 5), numbers.size());
        return Optional.of(new Finding(
                "takes-back",
                String.valueOf(seq),
                why,
                newest.isEmpty() ? "nothing has happened yet" : "write one of the last, " + String.join(", ", newest)));
    }

    private long lastOf(Status status) {
        EventKind kind = status == Status.BROKEN ? EventKind.BROKEN : EventKind.SCRAPPED;
        return holding().stream()
                .filter(event -> event.kind() == kind)
                .mapToLong(Event::seq)
                .max()
                .orElseThrow();
    }

    /** A correction counts unless a later one takes it back. */
    private static Set<Long> takenBack(List<Event> sorted) {
        Map<Long, Event> bySeq = new HashMap<>();
        sorted.forEach(event -> bySeq.put(event.seq(), event));
        Set<Long> gone = new HashSet<>();
        for (int i = sorted.size() - 1; i >= 0; i--) {
            Event event = sorted.get(i);
            if (event.what() instanceof Happening.Corrected corrected
                    && !gone.contains(event.seq())
                    && corrected.takesBack() < event.seq()
                    && bySeq.containsKey(corrected.takesBack())) {
                gone.add(corrected.takesBack());
            }
        }
        return Set.copyOf(gone);
    }
}
