// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import landfall.app.build.Build;
import landfall.app.folder.DataFolder;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.sheets.draw.Typeface;

/** {@code landfall check}: whether this machine has what the program needs. Nothing is asked of any other machine. */
final class CheckCommand implements Command {
    /** No build of this program is older, so a clock that says so is wrong. */
    private static final Instant FIRST_BUILD = Instant.parse("2026-11-25T00:00:00Z");

    /** One thing that was looked at. */
    record Looked(String what, boolean good, String found) {}

    @Override
    public String noun() {
        return "check";
    }

    @Override
    public String summary() {
        return Words.of("noun.check");
    }

    @Override
    public String help() {
        StringBuilder text = new StringBuilder("landfall " + noun() + " - " + summary() + "\n");
        HelpPage.examples(text, noun());
        return text.toString();
    }

    @Override
    public Map<String, Options> written() {
        return Map.of("", options());
    }

    private Options options() {
        return new Options(noun());
    }

    @Override
    public Exit run(List<String> args, Terminal terminal) {
        boolean json = args.contains("--json");
        Answer<Options.Written> read = options().read(args);
        if (!(read instanceof Answer.Of<Options.Written> of)) {
            return Refusals.say(read.findings(), json, terminal);
        }
        if (of.value().has("help")) {
            terminal.out().print(help());
            return Exit.DONE;
        }
        List<Looked> all = look();
        boolean good = all.stream().allMatch(Looked::good);
        if (json) {
            terminal.out().println(json(all, good));
        } else {
            all.forEach(looked -> terminal.out()
                    .printf("%-5s %-12s %s%n", looked.good() ? "good" : "BAD", looked.what(), looked.found()));
        }
        return good ? Exit.DONE : Exit.FAULT;
    }

    private static List<Looked> look() {
        List<Looked> all = new ArrayList<>();
        all.add(new Looked("program", true, Build.running().words()));
        all.add(new Looked(
                "java",
                Runtime.version().feature() >= 17,
                Runtime.version() + " of " + System.getProperty("java.vendor", "an unknown vendor")));
        all.add(folder(DataFolder.ofThisUser()));
        all.add(clock(Instant.now()));
        all.add(fonts());
        return all;
    }

    private static Looked folder(DataFolder folder) {
        try {
            Path trial = Files.createTempFile(folder.made(""), "check", ".txt");
            Files.delete(trial);
            long free = Files.getFileStore(folder.path()).getUsableSpace() / (1024 * 1024);
            return new Looked("data folder", free > 50, folder.path() + ", " + free + " MB free");
        } catch (IOException | SecurityException e) {
            return new Looked(
                    "data folder",
                    false,
                    folder.path() + " cannot be written to; set " + DataFolder.VARIABLE + " to a folder that can");
        }
    }

    static Looked clock(Instant now) {
        boolean good = !now.isBefore(FIRST_BUILD);
        return new Looked("clock", good, now + (good ? "" : ", which is before this program was made: set the clock"));
    }

    /** The letters and signs that a sheet needs, in both weights of the bundled font. */
    private static Looked fonts() {
        List<String> lacking = new ArrayList<>();
        for (Typeface face : Typeface.values()) {
            try {
                if (!face.holds("Aa0\u00d8\u00b0\u03b1\u2212")) {
                    lacking.add(face + " lacks signs");
                }
            } catch (RuntimeException e) {
                lacking.add(face + " cannot be read");
            }
        }
        return new Looked("fonts", lacking.isEmpty(), lacking.isEmpty() ? Typeface.FAMILY : String.join(", ", lacking));
    }

    private static String json(List<Looked> all, boolean good) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
            out.writeStartObject();
            out.writeBooleanField("good", good);
            out.writeArrayFieldStart("checks");
            for (Looked looked : all) {
                out.writeStartObject();
                out.writeStringField("what", looked.what());
                out.writeBooleanField("good", looked.good());
                out.writeStringField("found", looked.found());
                out.writeEndObject();
            }
            out.writeEndArray();
            out.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
