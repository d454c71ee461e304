// SPDX-License-Identifier: Apache-2.0
package landfall.app.spread;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import landfall.cards.spread.SpreadSetup;
import landfall.cards.spread.SpreadState;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * The runs of a server: one works at a time with all cores, the others wait. What a run has found is kept in a file
 * when it stands still, so that it is there when the server starts again.
 */
public final class Runs implements AutoCloseable {
    /** Runs that wait or work at once. */
    private static final int MOST_AT_ONCE = 20;
    /** Runs that are kept. */
    private static final int MOST_KEPT = 300;

    private static final int SHOWN = 30;
    private static final String ENDING = ".state";

    private final Path folder;
    private final Map<String, Going> going = new ConcurrentHashMap<>();
    private final ExecutorService work = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "what-if");
        thread.setDaemon(true);
        return thread;
    });

    /** @param folder where runs are kept; made when the first is */
    public Runs(Path folder) {
        this.folder = folder;
    }

    /** Starts one. */
    Answer<Going> start(SpreadSetup setup) {
        long busy = going.values().stream().filter(run -> !run.standsStill()).count();
        if (busy >= MOST_AT_ONCE) {
            return refused(busy + " runs", "wait or work already", "stop one of them, or come back later");
        }
        if (names().size() >= MOST_KEPT) {
            return refused(MOST_KEPT + " runs", "are kept already", "throw one away that nobody needs");
        }
        Going run = new Going(UUID.randomUUID().toString().substring(0, 13), setup, null);
        going.put(run.name(), run);
        submit(run);
        return Answer.of(run);
    }

    private static Answer<Going> refused(String given, String why, String mend) {
        return Answer.refused(new Finding("runs", given, why, mend));
    }

    /** Goes on with one that was stopped. */
    void goOn(Going run) {
        if (run.told().stand() == Going.Stand.STOPPED) {
            run.waits();
            submit(run);
        }
    }

    private void submit(Going run) {
        work.submit(() -> {
            try {
                run.work(Runtime.getRuntime().availableProcessors());
                keep(run);
            } catch (RuntimeException e) {
                System.err.println("landfall: the run " + run.name() + " failed");
                e.printStackTrace(System.err);
            }
        });
    }

    private void keep(Going run) {
        if (!run.hasFound()) {
            return;
        }
        try {
            Files.createDirectories(folder);
            Path written = folder.resolve(run.name() + ".new");
            Files.write(written, run.state().bytes());
            Files.move(written, file(run.name()), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A run by its name, from its file where the server was started since. */
    Optional<Going> find(String name) {
        if (!name.matches("[0-9a-f-]{13}")) {
            return Optional.empty();
        }
        Going run = going.get(name);
        return run == null ? kept(name) : Optional.of(run);
    }

    private Optional<Going> kept(String name) {
        try {
            Answer<SpreadState> state = SpreadState.of(Files.readAllBytes(file(name)), name);
            if (!(state instanceof Answer.Of<SpreadState> of)) {
                return Optional.empty();
            }
            Going read = new Going(name, of.value().setup(), of.value().summary());
            Going there = going.putIfAbsent(name, read);
            return Optional.of(there == null ? read : there);
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The latest, newest first. */
    List<Going> latest() {
        List<Going> busy =
                going.values().stream().filter(run -> !run.standsStill()).toList();
        return Stream.concat(
                        busy.stream(),
                        names().stream()
                                .limit(SHOWN)
                                .map(this::find)
                                .flatMap(Optional::stream)
                                .filter(Going::standsStill))
                .toList();
    }

    /** Names of those that are kept, newest first. */
    private List<String> names() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted(Comparator.comparing(Runs::age).reversed())
                    .map(file -> file.getFileName().toString().replace(ENDING, ""))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static FileTime age(Path file) {
        try {
            return Files.getLastModifiedTime(file);
        } catch (IOException e) {
            return FileTime.fromMillis(0);
        }
    }

    /** Stops it and forgets it. */
    void throwAway(Going run) {
        run.stop();
        if (run.standsStill()) {
            going.remove(run.name());
            try {
                Files.deleteIfExists(file(run.name()));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private Path file(String name) {
        return folder.resolve(name + ENDING);
    }

    /** Stops all of them and waits until what they found is kept. */
    @Override
    public void close() {
        going.values().forEach(Going::stop);
        work.shutdown();
        try {
            if (!work.awaitTermination(20, TimeUnit.SECONDS)) {
                work.shutdownNow();
            }
        } catch (InterruptedException e) {
            work.shutdownNow();
            Thread.currentThread().interrupt();
        }
    }
}
