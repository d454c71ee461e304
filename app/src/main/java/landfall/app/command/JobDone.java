// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.JobNumber;
import landfall.history.Mark;
import landfall.store.crib.Crib;
import landfall.store.crib.Saying;
import landfall.store.job.Done;
import landfall.store.job.Jobs;
import landfall.store.job.KeptJob;
import org.jspecify.annotations.Nullable;

/** {@code job done NUMBER LINE --tap MARK [--count N]}: holes of a line are done, and the tap has cut them. */
final class JobDone implements CribPart {
    @Override
    public String word() {
        return "done";
    }

    @Override
    public String usage() {
        return "done NUMBER LINE --tap MARK";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.word("NUMBER")
                .word("LINE")
                .text("tap")
                .text("count")
                .text("by")
                .text("at")
                .text("ticket");
    }

    @Override
    public Exit run(CribDesk desk) {
        return JobKept.with(desk, job -> done(desk, job));
    }

    private static Exit done(CribDesk desk, KeptJob job) {
        List<Finding> findings = new ArrayList<>();
        Answer<Integer> line = line(desk);
        findings.addAll(line.findings());
        Answer<Mark> tap = desk.written()
                .text("tap")
                .map(Mark::read)
                .orElseGet(() -> Answer.refused(
                        new Finding("tap", "", "is needed: the tap that cut the holes", "write --tap and its mark")));
        findings.addAll(tap.findings());
        Optional<String> count = desk.written().text("count");
        if (count.isPresent() && !count.get().matches("[1-9]\\d{0,6}")) {
            findings.add(new Finding("count", count.get(), "is not a count of holes", "write how many, such as 4"));
        }
        Answer<Instant> at = desk.at();
        findings.addAll(at.findings());
        if (!findings.isEmpty()) {
            return desk.refuse(findings);
        }
        if (desk.find(tap.orThrow()).isEmpty()) {
            desk.refuse(List.of(Crib.unknown(tap.orThrow())));
            return Exit.NO_RECORD;
        }
        Answer<KeptJob> done = new Jobs(desk.store())
                .done(new Done(
                        new Done.Place(new JobNumber(job.state().number()), line.orThrow()),
                        tap.orThrow(),
                        number(count),
                        new Saying.Who(desk.by(), at.orThrow()),
                        desk.written().text("ticket").orElse(null)));
        return done instanceof Answer.Of<KeptJob> of ? JobKept.say(desk, of.value()) : desk.refuse(done.findings());
    }

    private static @Nullable Integer number(Optional<String> count) {
        return count.map(Integer::valueOf).orElse(null);
    }

    static Answer<Integer> line(CribDesk desk) {
        String line = desk.written().word(1).orElse("");
        return line.matches("[1-9]\\d{0,4}")
                ? Answer.of(Integer.valueOf(line))
                : Answer.refused(
                        new Finding("line", line, "is not the number of a line", "write it as the card has it"));
    }
}
