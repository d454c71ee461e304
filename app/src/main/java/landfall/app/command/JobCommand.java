// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import landfall.cards.words.Words;

/** {@code landfall job ...}: the holes of a drawing as a route, and what is done of them. */
final class JobCommand extends DeskCommand {
    JobCommand() {
        super(
                "job",
                "job.part.",
                List.of(
                        new JobAdd(),
                        new JobPlanned(),
                        new JobList(),
                        new JobShow(),
                        new JobDone(),
                        new JobUndo(),
                        new JobPaper()));
    }

    @Override
    public String summary() {
        return Words.of("noun.job");
    }
}
