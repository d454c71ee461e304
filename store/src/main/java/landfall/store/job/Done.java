// SPDX-License-Identifier: Apache-2.0
package landfall.store.job;

import landfall.history.JobNumber;
import landfall.history.Mark;
import landfall.store.crib.Saying;
import org.jspecify.annotations.Nullable;

/**
 * Somebody says that holes of a line are done.
 *
 * @param count how many; null for all that are left
 * @param ticket names the request, so that one sent twice counts once; null for one of its own
 */
public record Done(
        Place place,
        Mark tap,
        @Nullable Integer count,
        Saying.Who who,
        @Nullable String ticket) {
    /** @param line of the job, from 1 */
    public record Place(JobNumber job, int line) {}
}
