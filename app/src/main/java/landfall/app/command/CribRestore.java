// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import landfall.app.crib.CribJson;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.backup.Backup;
import landfall.store.backup.Content;

/** {@code crib restore FILE}: a backup into an empty store. */
final class CribRestore implements CribPart {
    @Override
    public String word() {
        return "restore";
    }

    @Override
    public String usage() {
        return "restore FILE";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.word("FILE");
    }

    @Override
    public Exit run(CribDesk desk) {
        String name = desk.written().word(0).orElse("");
        if (name.isEmpty()) {
            return desk.refuse(List.of(new Finding("file", "", "is needed", "write landfall crib restore FILE")));
        }
        try {
            Answer<Content> restored = Backup.restore(desk.store(), Path.of(name));
            if (!(restored instanceof Answer.Of<Content> of)) {
                return desk.refuse(restored.findings());
            }
            boolean same = Backup.content(desk.store()).equals(of.value());
            return desk.say(
                    CribJson.facts(Map.of(
                            "things",
                            of.value().things(),
                            "events",
                            of.value().events(),
                            "jobs",
                            of.value().jobs(),
                            "people",
                            of.value().people(),
                            "verified",
                            same)),
                    Words.of(
                            "crib.restored",
                            of.value().things(),
                            of.value().events(),
                            of.value().jobs(),
                            of.value().people(),
                            same ? Words.of("text.yes") : Words.of("text.no")));
        } catch (InvalidPathException e) {
            return desk.refuse(List.of(new Finding("file", name, "cannot be the name of a file", "check the name")));
        }
    }
}
