// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import java.util.Optional;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.job.JobDocument;
import landfall.cards.job.JobState;
import landfall.cards.job.RouteText;

/** {@code job plan FILE|-}: plans the holes of a drawing and keeps nothing. */
final class JobPlanned implements CribPart {
    @Override
    public String word() {
        return "plan";
    }

    @Override
    public String usage() {
        return "plan FILE.csv|.json|-";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return JobTyped.options(options);
    }

    @Override
    public Exit run(CribDesk desk) {
        Optional<JobTyped.Ready> ready = JobTyped.read(desk);
        if (ready.isEmpty()) {
            return Exit.REFUSED;
        }
        JobState state = JobState.planned(ready.get().card());
        return desk.say(
                JsonAnswer.write(JobDocument.of(state, ready.get().route())),
                RouteText.write(state, ready.get().route().value()));
    }
}
