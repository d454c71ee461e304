// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import landfall.app.crib.CribJson;
import landfall.app.crib.CribText;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.table.Report;
import landfall.store.table.TableIn;
import landfall.store.table.Wish;

/** {@code crib import FILE.csv|.json}: things, events or jobs out of a table, or a whole crib that was written out. */
final class CribImport implements CribPart {
    @Override
    public String word() {
        return "import";
    }

    @Override
    public String usage() {
        return "import FILE.csv|.json [--bad FILE.csv]";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.word("FILE.csv")
                .flag("dry-run")
                .flag("all-or-none")
                .flag("replace")
                .text("map")
                .text("by")
                .text("bad");
    }

    @Override
    public Exit run(CribDesk desk) {
        Answer<Path> file = file(desk.written().word(0));
        Answer<Map<String, String>> map = map(desk.written().text("map").orElse(""));
        if (!(file instanceof Answer.Of<Path> path) || !(map instanceof Answer.Of<Map<String, String>> columns)) {
            return desk.refuse(file.findings().isEmpty() ? map.findings() : file.findings());
        }
        boolean json = isJson(path.value());
        if (json && desk.written().text("map").isPresent()) {
            return desk.refuse(List.of(new Finding(
                    "map",
                    desk.written().text("map").orElse(""),
                    "names columns, and JSON has none",
                    "leave it out, or import a table")));
        }
        Optional<String> badFile = desk.written().text("bad");
        try (BadRows bad = BadRows.to(badFile);
                ImportWatch watch = new ImportWatch(desk.terminal().err())) {
            Wish wish = new Wish(
                    columns.value(),
                    new Wish.How(
                            desk.written().has("dry-run"),
                            desk.written().has("all-or-none"),
                            desk.written().has("replace")),
                    desk.by(),
                    desk.now(),
                    bad);
            return told(desk, read(path.value(), desk, wish, watch));
        } catch (IOException | InvalidPathException e) {
            return desk.refuse(List.of(new Finding(
                    "bad", badFile.orElse(""), "cannot be written", "name a file in a folder that can be written to")));
        }
    }

    private static Exit told(CribDesk desk, Answer<Report> report) {
        if (!(report instanceof Answer.Of<Report> of)) {
            return desk.refuse(report.findings());
        }
        desk.say(CribJson.report(of.value()), CribText.report(of.value()));
        desk.terminal().out().flush();
        return of.value().badRows() > 0 ? Exit.REFUSED : Exit.DONE;
    }

    private static boolean isJson(Path path) {
        return path.toString().toLowerCase(Locale.ROOT).endsWith(".json");
    }

    private static Answer<Report> read(Path path, CribDesk desk, Wish wish, ImportWatch watch) {
        if (isJson(path)) {
            return json(path, desk, wish, watch);
        }
        try (Reader in = new InputStreamReader(
                Files.newInputStream(path),
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPLACE)
                        .onUnmappableCharacter(CodingErrorAction.REPLACE))) {
            return TableIn.read(desk.store(), in, wish, watch);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Answer<Report> json(Path path, CribDesk desk, Wish wish, ImportWatch watch) {
        try {
            return TableIn.json(desk.store(), path, wish, watch);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Answer<Path> file(Optional<String> name) {
        if (name.isEmpty()) {
            return Answer.refused(new Finding("file", "", "is needed", "write landfall crib import FILE.csv"));
        }
        try {
            Path path = Path.of(name.get());
            return Files.isReadable(path) && !Files.isDirectory(path)
                    ? Answer.of(path)
                    : Answer.refused(
                            new Finding("file", name.get(), "is not there, or cannot be read", "check the name"));
        } catch (InvalidPathException e) {
            return Answer.refused(new Finding("file", name.get(), "cannot be the name of a file", "check the name"));
        }
    }

    /** {@code their name=ours, another=}: what columns are called here; nothing after the sign passes one over. */
    private static Answer<Map<String, String>> map(String text) {
        Map<String, String> map = new HashMap<>();
        for (String pair : text.split(",")) {
            int sign = pair.indexOf('=');
            if (!pair.isBlank() && sign < 1) {
                return Answer.refused(new Finding(
                        "map",
                        pair,
                        "does not say what the column is",
                        "write --map \"their name=mark, other=thread\""));
            }
            if (sign > 0) {
                map.put(
                        pair.substring(0, sign).strip(),
                        pair.substring(sign + 1).strip());
            }
        }
        return Answer.of(map);
    }
}
