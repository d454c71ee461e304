// SPDX-License-Identifier: Apache-2.0
package landfall.store.backup;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.crib.CribScan;
import landfall.store.job.JobRows;
import landfall.store.people.PeopleScan;
import org.jdbi.v3.core.Handle;

/** Writes a whole crib to a file and reads it back. */
public final class Backup {
    private Backup() {}

    /** What the store holds now. */
    public static Content content(Store store) {
        return store.read(handle -> {
            Digesting digesting = new Digesting();
            CribScan.things(handle, row -> digesting.thing(Records.thing(row)));
            CribScan.events(handle, event -> digesting.event(Records.event(event)));
            JobRows.jobs(handle, job -> digesting.job(Records.job(job)));
            JobRows.done(handle, done -> digesting.done(Records.done(done)));
            PeopleScan.each(handle, held -> digesting.person(Records.person(held)));
            return digesting.content();
        });
    }

    /**
     * Writes the file under another name first, so that an older backup of that name is there until the new one is.
     * Nobody but its owner may read it, where the folder knows owners: it holds the hashes of passwords.
     */
    public static Content write(Store store, Path file, Instant at) {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            Content content;
            try (BufferedWriter out = new BufferedWriter(
                    new OutputStreamWriter(new GZIPOutputStream(OwnersFile.create(part)), StandardCharsets.UTF_8))) {
                content = store.read(handle -> write(handle, out, at));
            }
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            return content;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Content write(Handle handle, BufferedWriter out, Instant at) {
        Digesting digesting = new Digesting();
        put(out, Records.head(at));
        CribScan.things(handle, row -> {
            String line = Records.thing(row);
            digesting.thing(line);
            put(out, line);
        });
        CribScan.events(handle, event -> {
            String line = Records.event(event);
            digesting.event(line);
            put(out, line);
        });
        jobsAndPeople(handle, out, digesting);
        Content content = digesting.content();
        put(out, Records.tail(content));
        return content;
    }

    /** Jobs after the events, which they point to; then people. */
    private static void jobsAndPeople(Handle handle, BufferedWriter out, Digesting digesting) {
        JobRows.jobs(handle, job -> {
            String line = Records.job(job);
            digesting.job(line);
            put(out, line);
        });
        JobRows.done(handle, done -> {
            String line = Records.done(done);
            digesting.done(line);
            put(out, line);
        });
        PeopleScan.each(handle, held -> {
            String line = Records.person(held);
            digesting.person(line);
            put(out, line);
        });
    }

    private static void put(BufferedWriter out, String line) {
        try {
            out.write(line);
            out.write('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads a backup into an empty store, in one transaction; a file that is not whole is refused and nothing kept. */
    public static Answer<Content> restore(Store store, Path file) {
        if (store.read(handle -> CribScan.count(handle) + JobRows.count(handle) + PeopleScan.count(handle)) > 0) {
            return Answer.refused(new Finding(
                    "store",
                    store.address().words(),
                    "holds a crib or people already",
                    "restore into a new one: --store NEW"));
        }
        Optional<Content> told = look(file);
        if (told.isEmpty()) {
            return Answer.refused(new Finding(
                    "file",
                    file.toString(),
                    "is no backup of a crib, or is not whole",
                    "take another backup; this one was cut short or changed"));
        }
        store.write(handle -> {
            Restoring restoring = new Restoring(handle);
            each(file, restoring);
            restoring.end();
            return handle;
        });
        return Answer.of(told.get());
    }

    /** Restores the file into a store of its own, which is thrown away, and says whether it holds what it should. */
    public static boolean proves(Path file, Content content, Clock clock) {
        try {
            Path folder = Files.createTempDirectory("landfall-proof");
            Path base = folder.resolve("crib.db");
            boolean same;
            try (Store proof = Store.open(new StoreAddress.InFile(base), clock)) {
                same = restore(proof, file).findings().isEmpty()
                        && content(proof).equals(content);
            }
            for (String end : List.of("", "-wal", "-shm")) {
                Files.deleteIfExists(folder.resolve("crib.db" + end));
            }
            Files.delete(folder);
            return same;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads to the end and compares; empty when the file is not what its last line says. */
    private static Optional<Content> look(Path file) {
        Looking looking = new Looking();
        return each(file, looking) ? looking.content() : Optional.empty();
    }

    /** Whether every line could be read. */
    private static boolean each(Path file, Lines lines) {
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                JsonNode node = Records.node(line);
                switch (node.path("record").asText()) {
                    case Records.THING -> lines.thing(line, node);
                    case Records.EVENT -> lines.event(line, node);
                    case Records.JOB -> lines.job(line, node);
                    case Records.DONE -> lines.done(line, node);
                    case Records.PERSON -> lines.person(line, node);
                    default -> lines.other(node);
                }
            }
            return true;
        } catch (IOException | UncheckedIOException e) {
            return false;
        }
    }
}
