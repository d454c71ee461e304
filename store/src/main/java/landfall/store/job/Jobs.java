// SPDX-License-Identifier: Apache-2.0
package landfall.store.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.Told;
import landfall.cards.job.DoneMark;
import landfall.cards.job.JobCard;
import landfall.cards.job.JobState;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.Event;
import landfall.history.EventKind;
import landfall.history.Happening;
import landfall.history.ItemKind;
import landfall.history.JobNumber;
import landfall.history.Mark;
import landfall.quantity.UnitSystem;
import landfall.store.Store;
import landfall.store.crib.Crib;
import landfall.store.crib.Item;
import landfall.store.crib.KeptEvent;
import landfall.store.crib.Logged;
import landfall.store.crib.Numbers;
import landfall.store.crib.Saying;
import landfall.store.crib.TicketRows;
import org.jdbi.v3.core.Handle;

/** The jobs that a shop keeps, and what is done of them. */
public final class Jobs {
    private final Store store;

    public Jobs(Store store) {
        this.store = store;
    }

    /** Keeps a job under the next number. */
    public JobNumber add(JobCard card, KeptJob.Made made) {
        return store.write(handle -> {
            Numbers numbers = new Numbers(handle);
            while (true) {
                JobNumber number = JobNumber.numbered(numbers.next("job"));
                if (JobRows.addIfFree(handle, new JobRows.RawJob(number.text(), made, card))) {
                    return number;
                }
            }
        });
    }

    public Optional<KeptJob> find(JobNumber number) {
        return store.read(handle -> find(handle, number));
    }

    /** The newest first. */
    public List<KeptJob> list(int most) {
        return store.read(handle -> JobRows.newest(handle, most).stream()
                .flatMap(number -> find(handle, new JobNumber(number)).stream())
                .toList());
    }

    private static Optional<KeptJob> find(Handle handle, JobNumber number) {
        return JobRows.find(handle, number.text())
                .map(raw -> new KeptJob(new JobState(raw.number(), raw.card(), marks(handle, number)), raw.made()));
    }

    /** What the histories of the taps say of the events that belong to the job, in the order they happened. */
    private static List<DoneMark> marks(Handle handle, JobNumber number) {
        Map<String, Set<Long>> takenBack = new HashMap<>();
        List<DoneMark> marks = new ArrayList<>();
        for (JobRows.RawDone done : JobRows.done(handle, number.text())) {
            Mark tap = new Mark(done.mark());
            Event event = TicketRows.event(handle, tap, done.ticket())
                    .map(KeptEvent::event)
                    .orElseThrow(() ->
                            new IllegalStateException("no event of " + tap + " with the ticket " + done.ticket()));
            if (event.what() instanceof Happening.Tapped tapped) {
                marks.add(new DoneMark(
                        done.line(),
                        new DoneMark.ByTap(done.mark(), event.seq()),
                        tapped.holes().count(),
                        new DoneMark.Said(event.at(), event.by()),
                        takenBack
                                .computeIfAbsent(done.mark(), mark -> TicketRows.takenBack(handle, tap))
                                .contains(event.seq())));
            }
        }
        marks.sort(Comparator.comparing((DoneMark mark) -> mark.said().at())
                .thenComparing(mark -> mark.tap().mark())
                .thenComparing(mark -> mark.tap().seq()));
        return marks;
    }

    /**
     * Marks holes as done: an event of the tap, and what it belongs to, in one transaction. Refused: an unknown tap or
     * line, a tap of another thread, more holes than are left. The answer is the job as it then stands.
     */
    public Answer<KeptJob> done(Done done) {
        return store.write(handle -> done(handle, done));
    }

    private static Answer<KeptJob> done(Handle handle, Done done) {
        boolean held = JobRows.hold(handle, done.place().job(), done.place().line());
        Optional<KeptJob> job = find(handle, done.place().job());
        if (job.isEmpty()) {
            return Answer.refused(unknown(done.place().job()));
        }
        String ticket = done.ticket() == null ? "job " + UUID.randomUUID() : done.ticket();
        if (TicketRows.event(handle, done.tap(), ticket).isPresent()) {
            return Answer.of(job.get());
        }
        List<Finding> findings = new ArrayList<>();
        JobState state = job.get().state();
        if (!held) {
            int lines = state.card().holes().size();
            findings.add(new Finding(
                    "line",
                    String.valueOf(done.place().line()),
                    "is not a line of " + done.place().job(),
                    lines == 1 ? "write 1" : "write a number from 1 to " + lines));
        }
        Optional<Item> tap = Crib.item(handle, done.tap());
        if (tap.isEmpty()) {
            findings.add(Crib.unknown(done.tap()));
        }
        if (!findings.isEmpty()) {
            return Answer.refused(findings);
        }
        findings.addAll(fits(done, state, tap.get()));
        findings.addAll(counts(done, state));
        return findings.isEmpty() ? write(handle, done, state, ticket) : Answer.refused(findings);
    }

    private static List<Finding> fits(Done done, JobState state, Item tap) {
        String callOut = state.card().holes().get(done.place().line() - 1).getOrDefault("callout", "");
        String size = ItemForms.thread(Map.of("thread", callOut))
                .map(read -> read.withoutClass().normal())
                .orElse("");
        if (tap.kind() == ItemKind.TAP && tap.size().equals(size)) {
            return List.of();
        }
        String is = (tap.kind().word() + " " + tap.size()).strip();
        return List.of(new Finding(
                "tap",
                done.tap().text(),
                "is a " + is + ", and line " + done.place().line() + " is " + callOut,
                "read the mark and the line again"));
    }

    private static List<Finding> counts(Done done, JobState state) {
        long left = state.left(done.place().line());
        Integer count = done.count();
        if (left == 0) {
            return List.of(new Finding(
                    "line",
                    String.valueOf(done.place().line()),
                    "is done: all " + state.wanted(done.place().line()) + " holes are marked",
                    "take a mark back if it is wrong, or log other holes with landfall crib log"));
        }
        return count == null || count <= left
                ? List.of()
                : List.of(new Finding(
                        "count",
                        String.valueOf(count),
                        "is more than the " + left + " that are left of line "
                                + done.place().line(),
                        "write " + left + ", and log other holes with landfall crib log"));
    }

    private static Answer<KeptJob> write(Handle handle, Done done, JobState state, String ticket) {
        Map<String, String> hole = state.card().holes().get(done.place().line() - 1);
        Integer told = done.count();
        long count = told == null ? state.left(done.place().line()) : told;
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("holes", String.valueOf(count));
        fields.put("material", hole.getOrDefault("material", ""));
        fields.put("depth", hole.getOrDefault("depth", ""));
        fields.put("note", done.place().job() + " line " + done.place().line());
        Told what = Told.read(EventKind.TAPPED, fields, UnitSystem.METRIC).orThrow();
        Answer<Logged> logged = Crib.log(handle, new Saying(done.tap(), what, done.who(), ticket, null));
        if (!(logged instanceof Answer.Of<Logged>)) {
            return Answer.refused(logged.findings());
        }
        JobRows.addDone(
                handle,
                new JobRows.RawDone(
                        done.place().job().text(),
                        done.place().line(),
                        done.tap().text(),
                        ticket));
        return Answer.of(find(handle, done.place().job()).orElseThrow());
    }

    /** Takes the last mark of a line back that still counts, by a correcting event of its tap. */
    public Answer<KeptJob> takeBack(Done.Place place, String because, Saying.Who who) {
        return store.write(handle -> {
            JobRows.hold(handle, place.job(), place.line());
            Optional<KeptJob> job = find(handle, place.job());
            if (job.isEmpty()) {
                return Answer.refused(unknown(place.job()));
            }
            Optional<DoneMark> last = job.get().state().done().stream()
                    .filter(mark -> mark.line() == place.line() && !mark.takenBack())
                    .reduce((first, second) -> second);
            return last.isEmpty()
                    ? Answer.refused(new Finding(
                            "line",
                            String.valueOf(place.line()),
                            "has no mark that could be taken back",
                            "look at the job: landfall job show " + place.job()))
                    : takeBack(handle, place.job(), last.get(), new Correction(because, who));
        });
    }

    private record Correction(String because, Saying.Who who) {}

    private static Answer<KeptJob> takeBack(Handle handle, JobNumber job, DoneMark mark, Correction correction) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("takes-back", String.valueOf(mark.tap().seq()));
        fields.put("because", correction.because);
        return Told.read(EventKind.CORRECTED, fields, UnitSystem.METRIC)
                .then(told ->
                        Crib.log(handle, new Saying(new Mark(mark.tap().mark()), told, correction.who, null, null)))
                .map(kept -> find(handle, job).orElseThrow());
    }

    /** What is said of a number that no job has. */
    public static Finding unknown(JobNumber number) {
        return new Finding("number", number.text(), "is not the number of a job here", "look with landfall job list");
    }
}
