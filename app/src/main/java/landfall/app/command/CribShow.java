// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import java.util.Optional;
import landfall.app.crib.CribJson;
import landfall.app.crib.CribText;
import landfall.app.crib.DueTaps;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.Mark;
import landfall.store.crib.Glance;
import landfall.store.crib.Window;

/** {@code crib show MARK}: one thing with its card and all that happened to it. */
final class CribShow implements CribPart {
    private static final int MOST = 200;

    @Override
    public String word() {
        return "show";
    }

    @Override
    public String usage() {
        return "show MARK [--before SEQ]";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.word("MARK").text("before");
    }

    @Override
    public Exit run(CribDesk desk) {
        Answer<Mark> mark = desk.mark(0);
        if (!(mark instanceof Answer.Of<Mark> of)) {
            return desk.refuse(mark.findings());
        }
        String before = desk.written().text("before").orElse("9".repeat(18));
        if (!before.matches("\\d{1,18}")) {
            return desk.refuse(List.of(new Finding(
                    "before", before, "is not the number of an event", "write the number that crib show tells")));
        }
        Optional<Glance> kept = desk.crib().look(of.value(), new Window(Long.parseLong(before), MOST));
        return kept.isEmpty()
                ? desk.unknown(of.value())
                : desk.say(
                        CribJson.kept(kept.get(), new DueTaps(desk.store()).of(of.value())),
                        CribText.kept(kept.get(), desk.now().getZone()));
    }
}
