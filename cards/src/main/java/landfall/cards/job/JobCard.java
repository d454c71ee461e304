// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.Lasting;
import landfall.cards.form.Entries;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.UnitSystem;
import landfall.route.HoleLine;

/**
 * A job as it is kept: texts that read the same for ever.
 *
 * @param fields of the job itself
 * @param holes line by line, the first is line 1
 */
public record JobCard(Map<String, String> fields, List<Map<String, String>> holes) {
    private static final int MOST = 500;

    public JobCard {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
        holes = holes.stream()
                .map(hole -> Collections.unmodifiableMap(new LinkedHashMap<>(hole)))
                .toList();
    }

    /** A card, or everything that is amiss with what was given. */
    public sealed interface Read permits Good, Bad {}

    public record Good(JobCard card) implements Read {}

    public record Bad(List<Amiss> amiss) implements Read {}

    /** Judges every field of the job and of every line at once. */
    public static Read of(JobGiven given) {
        List<Amiss> amiss = new ArrayList<>(given.amiss());
        if (given.rows().isEmpty() && amiss.isEmpty()) {
            amiss.add(new Amiss(
                    0, new Finding("holes", "", "are needed: a job has one line at least", "give a call-out")));
        }
        if (given.rows().size() > MOST) {
            amiss.add(new Amiss(
                    0,
                    new Finding(
                            "holes",
                            given.rows().size() + " lines",
                            "are more than " + MOST,
                            "part the drawing into several jobs")));
            return new Bad(amiss);
        }
        JobForms.JOB
                .judge(given.fields(), UnitSystem.METRIC)
                .findings()
                .forEach(found -> amiss.add(new Amiss(0, found)));
        List<Map<String, String>> holes = new ArrayList<>();
        for (HoleRow row : given.rows()) {
            UnitSystem bare = bare(row.cells());
            Answer<Entries> judged = JobForms.HOLE.judge(row.cells(), bare);
            judged.findings().forEach(found -> amiss.add(new Amiss(row.at(), found)));
            if (judged instanceof Answer.Of<Entries>) {
                holes.add(Lasting.of(JobForms.HOLE, row.cells(), bare));
            }
        }
        return amiss.isEmpty()
                ? new Good(new JobCard(Lasting.of(JobForms.JOB, given.fields(), UnitSystem.METRIC), holes))
                : new Bad(amiss);
    }

    /** The system of a line's call-out, metric where it cannot be read. */
    private static UnitSystem bare(Map<String, String> cells) {
        return ItemForms.bare(Map.of("thread", cells.getOrDefault("callout", "")));
    }

    public String name() {
        return fields.getOrDefault("name", "");
    }

    Entries judged() {
        return JobForms.JOB.judge(fields, UnitSystem.METRIC).orThrow();
    }

    /** Its lines for the engine; they were judged good before. */
    public List<HoleLine> lines() {
        List<HoleLine> lines = new ArrayList<>();
        for (Map<String, String> hole : holes) {
            Entries entries = JobForms.HOLE.judge(hole, bare(hole)).orThrow();
            lines.add(new HoleLine(
                    new HoleLine.Named(
                            lines.size() + 1,
                            entries.get(JobForms.LABEL).orElse(""),
                            entries.get(JobForms.NOTE).orElse("")),
                    entries.need(JobForms.CALLOUT),
                    entries.need(JobForms.MATERIAL),
                    new HoleLine.Place(entries.need(JobForms.DEPTH), entries.need(JobForms.KIND)),
                    entries.need(JobForms.COUNT)));
        }
        return lines;
    }

    /** What was typed, as a page or a file gives it. */
    public JobGiven given() {
        return new JobGiven(fields, JobGiven.filled(holes));
    }
}
