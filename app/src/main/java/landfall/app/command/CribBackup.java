// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import landfall.app.crib.CribJson;
import landfall.cards.words.Words;
import landfall.fault.Finding;
import landfall.store.backup.Backup;
import landfall.store.backup.Content;

/** {@code crib backup FILE}: the whole crib in one file, read back and compared before it is called good. */
final class CribBackup implements CribPart {
    @Override
    public String word() {
        return "backup";
    }

    @Override
    public String usage() {
        return "backup FILE";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.word("FILE");
    }

    @Override
    public Exit run(CribDesk desk) {
        String name = desk.written().word(0).orElse("");
        if (name.isEmpty()) {
            return desk.refuse(List.of(new Finding("file", "", "is needed", "write landfall crib backup FILE")));
        }
        try {
            Content content = Backup.write(
                    desk.store(), Path.of(name).toAbsolutePath(), desk.now().toInstant());
            boolean proven = Backup.proves(Path.of(name).toAbsolutePath(), content, Clock.systemUTC());
            if (!proven) {
                throw new IllegalStateException("the backup " + name + " does not restore to what was written");
            }
            return desk.say(
                    CribJson.facts(Map.of(
                            "file",
                            name,
                            "things",
                            content.things(),
                            "events",
                            content.events(),
                            "jobs",
                            content.jobs(),
                            "people",
                            content.people(),
                            "verified",
                            true,
                            "sha256",
                            content.sha256())),
                    Words.of(
                            "crib.backedUp",
                            content.things(),
                            content.events(),
                            content.jobs(),
                            content.people(),
                            name));
        } catch (UncheckedIOException | InvalidPathException e) {
            return desk.refuse(List.of(
                    new Finding("file", name, "cannot be written", "name a file in a folder that can be written to")));
        }
    }
}
