// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import landfall.cards.crib.EventForms;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.Moments;
import landfall.cards.form.Nearest;
import landfall.cards.job.JobForms;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.Mark;

/** What the columns of a table are called here; empty for a column that is passed over. */
record Columns(List<String> names) {
    static final String EVENT = "event";
    static final String JOB = "job";
    static final Set<String> OF_JOBS = Set.of(JOB, "row", "line", "at", "by", "mark", "ticket");
    static final Set<String> OF_EVENTS = Set.of("mark", EVENT, "at", "by", "ticket");
    static final Set<String> OF_THINGS = Set.of("mark", "kind", "set", "place", "price", "supplier");

    /** Whether the table tells jobs. */
    boolean tellJobs() {
        return names.contains(JOB);
    }

    /** Whether the table tells events. */
    boolean tellEvents() {
        return names.contains(EVENT);
    }

    /** What the cell in that place is called; {@code line} beyond the last column and in one that is passed over. */
    String name(int place) {
        return place < names.size() && !names.get(place).isEmpty() ? names.get(place) : "line";
    }

    Line line(long number, List<String> cells, ZonedDateTime now) {
        Map<String, String> told = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(cells.size(), names.size()); i++) {
            String cell = Cell.read(cells.get(i));
            if (!cell.isBlank() && !names.get(i).isEmpty()) {
                told.put(names.get(i), cell);
            }
        }
        String at = told.getOrDefault("at", "");
        return new Line(
                number,
                told,
                Mark.read(told.getOrDefault("mark", "")),
                at.isEmpty() ? Answer.of(now.toInstant()) : Moments.read("at", at, now));
    }

    /** Judges the head: every unknown column at once, columns that stand twice, a missing mark. */
    static Answer<Columns> read(List<String> head, Map<String, String> called) {
        List<String> names = new ArrayList<>();
        for (String typed : head) {
            String name = typed.strip();
            names.add(called.getOrDefault(name, name));
        }
        boolean jobs = names.stream().anyMatch(JOB::equalsIgnoreCase);
        Set<String> known = jobs ? ofJobs() : known(names.stream().anyMatch(EVENT::equalsIgnoreCase));
        List<Finding> findings = new ArrayList<>();
        List<String> ours = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            String found = match(name, known);
            if (!name.isEmpty() && found.isEmpty()) {
                findings.add(unknown(name, known));
            }
            if (!found.isEmpty() && !seen.add(found)) {
                findings.add(new Finding("columns", name, "stands twice", "leave one of the two out"));
            }
            ours.add(found);
        }
        if (!seen.contains("mark") && findings.isEmpty()) {
            findings.add(new Finding(
                    "columns",
                    String.join(",", head),
                    "have no mark",
                    "name the column of the marks mark, or tell which it is: --map \"their name=mark\""));
        }
        return findings.isEmpty() ? Answer.of(new Columns(ours)) : Answer.refused(findings);
    }

    private static String match(String name, Set<String> known) {
        return known.stream()
                .filter(one -> one.equalsIgnoreCase(name.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElse("");
    }

    private static Finding unknown(String name, Set<String> known) {
        return new Finding(
                "columns",
                name,
                "is not a column that is known here",
                "write " + Nearest.of(name, List.copyOf(known)) + ", the nearest, or tell what it is: --map \"" + name
                        + "=..\"; --map \"" + name + "=\" passes it over");
    }

    private static Set<String> ofJobs() {
        Set<String> known = new TreeSet<>(OF_JOBS);
        known.addAll(JobForms.JOB.paths());
        known.addAll(JobForms.HOLE.paths());
        return known;
    }

    private static Set<String> known(boolean events) {
        Set<String> known = new TreeSet<>(events ? OF_EVENTS : OF_THINGS);
        if (events) {
            for (EventKind kind : EventKind.values()) {
                known.addAll(EventForms.of(kind).paths());
            }
        } else {
            for (ItemKind kind : ItemKind.values()) {
                known.addAll(ItemForms.of(kind).paths());
            }
        }
        return known;
    }
}
