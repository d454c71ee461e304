// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.util.List;

/**
 * A job with what is done of it.
 *
 * @param number empty for one that is only planned
 */
public record JobState(String number, JobCard card, List<DoneMark> done) {
    public JobState {
        done = List.copyOf(done);
    }

    public static JobState planned(JobCard card) {
        return new JobState("", card, List.of());
    }

    /** Holes of a line that are done and not taken back. */
    public long done(int line) {
        return done.stream()
                .filter(mark -> mark.line() == line && !mark.takenBack())
                .mapToLong(DoneMark::count)
                .sum();
    }

    /** Holes of a line in all. */
    public int wanted(int line) {
        return Integer.parseInt(card.holes().get(line - 1).getOrDefault("count", "0"));
    }

    public long left(int line) {
        return Math.max(0, wanted(line) - done(line));
    }

    public int holes() {
        int all = 0;
        for (int line = 1; line <= card.holes().size(); line++) {
            all += wanted(line);
        }
        return all;
    }

    public long holesDone() {
        long all = 0;
        for (int line = 1; line <= card.holes().size(); line++) {
            all += done(line);
        }
        return all;
    }
}
