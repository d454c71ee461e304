// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import landfall.app.crib.CribJson;
import landfall.cards.words.Words;
import landfall.fault.Finding;
import landfall.store.table.JsonOut;
import landfall.store.table.TableOut;

/** {@code crib export FILE.csv|.json}: all of it, to leave with at any time. */
final class CribExport implements CribPart {
    @Override
    public String word() {
        return "export";
    }

    @Override
    public String usage() {
        return "export FILE.csv|.json";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.word("FILE");
    }

    @Override
    public Exit run(CribDesk desk) {
        String name = desk.written().word(0).orElse("");
        try {
            if (name.endsWith(".json")) {
                return json(desk, Path.of(name));
            }
            if (name.endsWith(".csv")) {
                return tables(desk, Path.of(name));
            }
        } catch (IOException | InvalidPathException e) {
            return desk.refuse(List.of(
                    new Finding("file", name, "cannot be written", "name a file in a folder that can be written to")));
        }
        return desk.refuse(
                List.of(new Finding("file", name, "is neither .csv nor .json", "write landfall crib export crib.csv")));
    }

    private static Exit tables(CribDesk desk, Path file) throws IOException {
        String stem = String.valueOf(file.getFileName()).replaceFirst("\\.csv$", "");
        Path events = file.resolveSibling(stem + ".events.csv");
        Path jobs = file.resolveSibling(stem + ".jobs.csv");
        long things;
        long told;
        long rows;
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            things = TableOut.things(desk.store(), out);
        }
        try (BufferedWriter out = Files.newBufferedWriter(events)) {
            told = TableOut.events(desk.store(), out);
        }
        try (BufferedWriter out = Files.newBufferedWriter(jobs)) {
            rows = TableOut.jobs(desk.store(), out);
        }
        return desk.say(
                CribJson.facts(Map.of(
                        "things",
                        things,
                        "events",
                        told,
                        "jobRows",
                        rows,
                        "files",
                        List.of(file.toString(), events.toString(), jobs.toString()))),
                Words.of("crib.exportedTables", things, file, told, events, rows, jobs));
    }

    private static Exit json(CribDesk desk, Path file) throws IOException {
        JsonOut.Counts counts;
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            counts = JsonOut.write(desk.store(), out);
        }
        return desk.say(
                CribJson.facts(
                        Map.of("things", counts.things(), "jobs", counts.jobs(), "files", List.of(file.toString()))),
                Words.of("crib.exported", counts.things(), counts.jobs(), file));
    }
}
