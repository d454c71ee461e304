// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.job.JobDocument;
import landfall.cards.job.RouteText;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.JobNumber;
import landfall.route.Route;
import landfall.store.job.Jobs;
import landfall.store.job.KeptJob;
import landfall.working.Worked;

/** What the commands on a job that is kept have in common. */
final class JobKept {
    private JobKept() {}

    static Answer<JobNumber> number(CribDesk desk) {
        return desk.written()
                .word(0)
                .map(JobNumber::read)
                .orElseGet(() -> Answer.refused(
                        new Finding("number", "", "is needed", "write the job's number, see landfall job list")));
    }

    /** Does it with the job of that number; no such job is exit 3. */
    static Exit with(CribDesk desk, Function<KeptJob, Exit> work) {
        Answer<JobNumber> number = number(desk);
        if (!(number instanceof Answer.Of<JobNumber> of)) {
            return desk.refuse(number.findings());
        }
        Optional<KeptJob> job = new Jobs(desk.store()).find(of.value());
        if (job.isEmpty()) {
            desk.refuse(List.of(Jobs.unknown(of.value())));
            return Exit.NO_RECORD;
        }
        return work.apply(job.get());
    }

    /** Says the job as it stands, planned with what the crib holds now. */
    static Exit say(CribDesk desk, KeptJob job) {
        Answer<Worked<Route>> route = JobTyped.plan(desk, job.state().card());
        return route instanceof Answer.Of<Worked<Route>> of
                ? desk.say(
                        JsonAnswer.write(JobDocument.of(job.state(), of.value())),
                        RouteText.write(job.state(), of.value().value()))
                : desk.refuse(route.findings());
    }
}
