// SPDX-License-Identifier: Apache-2.0
package landfall.app.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import landfall.app.crib.CribDoor;
import landfall.app.crib.DueBoard;
import landfall.app.crib.DueText;
import landfall.cards.words.Words;
import landfall.store.crib.Wanted;
import landfall.store.job.Jobs;
import landfall.store.job.KeptJob;

/**
 * What waits in the shop today.
 *
 * @param due taps and gauges that are due, the first at the head
 * @param moreDue how many there are besides
 * @param jobs those that have holes left, the newest first
 * @param empty whether nothing is on record yet
 */
public record AtHand(List<Line> due, int moreDue, List<Line> jobs, boolean empty) {
    private static final int MOST = 6;
    private static final int LATEST_JOBS = 50;

    /** Nothing, for those who may not look into the records. */
    public static final AtHand NOTHING = new AtHand(List.of(), 0, List.of(), false);

    public AtHand {
        due = List.copyOf(due);
        jobs = List.copyOf(jobs);
    }

    /**
     * One thing that waits.
     *
     * @param name its mark or number
     * @param what it is
     * @param state in words
     */
    public record Line(String address, String name, String what, String state) {}

    /** What the records tell. */
    static AtHand of(CribDoor door, LocalDate today) {
        List<DueBoard.DueRow> rows =
                new DueBoard(door.crib(), door.due()).rows(null, today).rows();
        List<Line> due = rows.stream()
                .limit(MOST)
                .map(row -> new Line(
                        "/crib/" + row.row().item().mark(),
                        row.row().item().mark().text(),
                        row.row().item().words(),
                        DueText.words(row, today)))
                .toList();
        List<Line> jobs = new ArrayList<>();
        for (KeptJob job : new Jobs(door.store()).list(LATEST_JOBS)) {
            if (jobs.size() < MOST && job.state().holesDone() < job.state().holes()) {
                jobs.add(new Line(
                        "/job/" + job.state().number(),
                        job.state().number(),
                        job.state().card().name(),
                        Words.of(
                                "page.today.jobDone",
                                job.state().holesDone(),
                                job.state().holes())));
            }
        }
        boolean empty = rows.isEmpty() && jobs.isEmpty() && door.crib().count(Wanted.all()) == 0;
        return new AtHand(due, rows.size() - due.size(), jobs, empty);
    }
}
