// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import java.util.Optional;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.job.JobDocument;
import landfall.cards.job.JobState;
import landfall.cards.job.RouteText;
import landfall.cards.words.Words;
import landfall.history.JobNumber;
import landfall.store.job.Jobs;
import landfall.store.job.KeptJob;

/** {@code job add FILE|-}: keeps the holes of a drawing as a job, and plans it. */
final class JobAdd implements CribPart {
    @Override
    public String word() {
        return "add";
    }

    @Override
    public String usage() {
        return "add FILE.csv|.json|-";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return JobTyped.options(options).text("by");
    }

    @Override
    public Exit run(CribDesk desk) {
        Optional<JobTyped.Ready> ready = JobTyped.read(desk);
        if (ready.isEmpty()) {
            return Exit.REFUSED;
        }
        KeptJob.Made made = new KeptJob.Made(desk.now().toInstant(), desk.by());
        JobNumber number = new Jobs(desk.store()).add(ready.get().card(), made);
        JobState state = new JobState(number.text(), ready.get().card(), List.of());
        return desk.say(
                JsonAnswer.write(JobDocument.of(state, ready.get().route())),
                Words.of("job.added", number) + "\n\n"
                        + RouteText.write(state, ready.get().route().value()));
    }
}
