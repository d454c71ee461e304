// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import landfall.fault.Answer;
import landfall.history.JobNumber;
import landfall.store.crib.Saying;
import landfall.store.job.Done;
import landfall.store.job.Jobs;
import landfall.store.job.KeptJob;

/** {@code job undo NUMBER LINE}: takes the last done mark of a line back, by a correcting event of its tap. */
final class JobUndo implements CribPart {
    @Override
    public String word() {
        return "undo";
    }

    @Override
    public String usage() {
        return "undo NUMBER LINE";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.word("NUMBER").word("LINE").text("because").text("by");
    }

    @Override
    public Exit run(CribDesk desk) {
        return JobKept.with(desk, job -> {
            Answer<Integer> line = JobDone.line(desk);
            if (!(line instanceof Answer.Of<Integer> of)) {
                return desk.refuse(line.findings());
            }
            Answer<KeptJob> undone = new Jobs(desk.store())
                    .takeBack(
                            new Done.Place(new JobNumber(job.state().number()), of.value()),
                            desk.written().text("because").orElse("marked by mistake"),
                            new Saying.Who(desk.by(), desk.now().toInstant()));
            return undone instanceof Answer.Of<KeptJob> then
                    ? JobKept.say(desk, then.value())
                    : desk.refuse(undone.findings());
        });
    }
}
