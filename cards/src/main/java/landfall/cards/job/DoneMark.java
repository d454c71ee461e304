// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.time.Instant;

/**
 * Holes of a line that are done.
 *
 * @param line of the job
 * @param tap its mark and the number of the event in its history
 * @param takenBack whether that event was taken back: the holes count no more
 */
public record DoneMark(int line, ByTap tap, int count, Said said, boolean takenBack) {
    public record ByTap(String mark, long seq) {}

    public record Said(Instant at, String by) {}
}
