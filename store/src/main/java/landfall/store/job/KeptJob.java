// SPDX-License-Identifier: Apache-2.0
package landfall.store.job;

import java.time.Instant;
import landfall.cards.job.JobState;

/** A job as it lies in the store, with what is done of it. */
public record KeptJob(JobState state, Made made) {
    public record Made(Instant at, String by) {}
}
