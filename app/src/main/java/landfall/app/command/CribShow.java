// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import java.util.Optional;
import landfall.app.crib.CribJson;
import landfall.app.crib.CribText;
import landfall.app.crib.DueTaps;
import landfall.fault.Answer;
import landfall.history.Mark;
import landfall.store.crib.Kept;

/** {@code crib show MARK}: one thing with its card and all that happened to it. */
final class CribShow implements CribPart {
    @Override
    public String word() {
        return "show";
    }

    @Override
    public String usage() {
        return "show MARK";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.word("MARK");
    }

    @Override
    public Exit run(CribDesk desk) {
        Answer<Mark> mark = desk.mark(0);
        if (!(mark instanceof Answer.Of<Mark> of)) {
            return desk.refuse(mark.findings());
        }
        Optional<Kept> kept = desk.find(of.value());
        return kept.isEmpty()
                ? desk.unknown(of.value())
                : desk.say(
                        CribJson.kept(kept.get(), DueTaps.of(desk.crib(), kept.get())),
                        CribText.kept(kept.get(), desk.now().getZone()));
    }
}
