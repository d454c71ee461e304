// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.spread.SpreadDocument;
import landfall.cards.spread.SpreadFile;
import landfall.cards.spread.SpreadSetup;
import landfall.cards.spread.SpreadState;
import landfall.cards.spread.SpreadText;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.spread.Summary;
import org.jspecify.annotations.Nullable;

/** Runs many set-ups for somebody at a terminal: progress, a stop that loses nothing, files, the answer. */
final class SpreadGo {
    private static final String THREADS = "threads";
    private static final String KEEP = "keep";
    private static final String STATE = "state";
    private static final String CSV = "csv";
    private static final int MOST_THREADS = 256;

    private final Options.Written written;
    private final boolean json;
    private final Terminal terminal;

    SpreadGo(Options.Written written, boolean json, Terminal terminal) {
        this.written = written;
        this.json = json;
        this.terminal = terminal;
    }

    static Options on(Options options) {
        return options.text(CSV).text(KEEP).text(STATE).text(THREADS);
    }

    static void help(StringBuilder text) {
        HelpPage.row(text, "--csv FILE", Words.of("spread.help.csv"));
        HelpPage.row(text, "--keep FILE", Words.of("spread.help.keep"));
        HelpPage.row(text, "--state FILE", Words.of("spread.help.state"));
        HelpPage.row(text, "--threads", Words.of("spread.help.threads"));
        HelpPage.row(text, "--json", Words.of("command.json"));
    }

    Exit run(SpreadSetup setup) {
        return go(setup, null);
    }

    /** Goes on from the file of a run that was stopped. */
    Exit resume(String name) {
        Answer<SpreadState> state;
        try {
            state = SpreadState.of(Files.readAllBytes(Path.of(name)), name);
        } catch (IOException | InvalidPathException e) {
            return Refusals.say(
                    List.of(new Finding("state", name, "cannot be read", "check the name and the folder")),
                    json,
                    terminal);
        }
        return state instanceof Answer.Of<SpreadState> of
                ? go(of.value().setup(), of.value().summary())
                : Refusals.say(state.findings(), json, terminal);
    }

    private Exit go(SpreadSetup setup, @Nullable Summary from) {
        List<Finding> findings = new ArrayList<>();
        int threads = threads(findings);
        keep(setup, findings);
        if (!findings.isEmpty()) {
            return Refusals.say(findings, json, terminal);
        }
        SpreadProgress progress =
                new SpreadProgress(setup.plan().samples(), from == null ? 0 : from.samples(), terminal);
        Thread onStop = new Thread(progress::stopAndWait, "stop");
        Runtime.getRuntime().addShutdownHook(onStop);
        try {
            Answer<Summary> ran = SpreadRows.run(setup, from, written.text(CSV).orElse(""), threads, progress);
            if (!(ran instanceof Answer.Of<Summary> of)) {
                return Refusals.say(ran.findings(), json, terminal);
            }
            say(setup, of.value());
            terminal.out().flush();
            return Exit.DONE;
        } finally {
            progress.done();
            try {
                Runtime.getRuntime().removeShutdownHook(onStop);
            } catch (IllegalStateException e) {
                // the program is ending already, and the hook has been waiting for this
                progress.done();
            }
        }
    }

    private int threads(List<Finding> findings) {
        String typed = written.text(THREADS).orElse("");
        if (typed.isBlank()) {
            return Runtime.getRuntime().availableProcessors();
        }
        if (!typed.matches("[1-9]\\d{0,2}") || Integer.parseInt(typed) > MOST_THREADS) {
            findings.add(new Finding(
                    "--threads",
                    typed,
                    "is not a number of threads",
                    "write a whole number from 1 to " + MOST_THREADS));
            return 1;
        }
        return Integer.parseInt(typed);
    }

    private void keep(SpreadSetup setup, List<Finding> findings) {
        written.text(KEEP)
                .ifPresent(name -> write(
                                name, "--keep", SpreadFile.write(setup.wish()).getBytes(StandardCharsets.UTF_8))
                        .ifPresent(findings::add));
    }

    private static Optional<Finding> write(String name, String option, byte[] bytes) {
        try {
            Files.write(Path.of(name), bytes);
            return Optional.empty();
        } catch (IOException | InvalidPathException e) {
            return Optional.of(new Finding(
                    option, name, "cannot be written", "name a file in a folder that is there and can be written to"));
        }
    }

    private void say(SpreadSetup setup, Summary summary) {
        boolean isStopped = summary.samples() < setup.plan().samples();
        if (isStopped) {
            String name = written.text(STATE).orElse("spread.state");
            String said = write(name, "--state", new SpreadState(setup, summary).bytes())
                    .map(Finding::sentence)
                    .orElse(Words.of("spread.stopped", name));
            terminal.err().println(said);
        }
        terminal.out()
                .println(
                        json
                                ? JsonAnswer.write(SpreadDocument.of(setup, summary))
                                : SpreadText.write(setup, summary).stripTrailing());
    }
}
