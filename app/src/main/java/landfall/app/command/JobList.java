// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import java.util.stream.Collectors;
import landfall.app.job.JobJson;
import landfall.cards.words.Words;
import landfall.store.job.Jobs;
import landfall.store.job.KeptJob;

/** {@code job list}: the newest first. */
final class JobList implements CribPart {
    private static final int MOST = 1000;

    @Override
    public String word() {
        return "list";
    }

    @Override
    public String usage() {
        return "list";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options;
    }

    @Override
    public Exit run(CribDesk desk) {
        List<KeptJob> jobs = new Jobs(desk.store()).list(MOST);
        String people = jobs.isEmpty()
                ? Words.of("job.none")
                : jobs.stream().map(JobList::line).collect(Collectors.joining("\n"));
        return desk.say(JobJson.list(jobs), people);
    }

    private static String line(KeptJob job) {
        return Words.of(
                "job.listLine",
                job.state().number(),
                job.state().card().name(),
                job.state().holesDone(),
                job.state().holes());
    }
}
