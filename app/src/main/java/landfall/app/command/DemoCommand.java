// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import landfall.app.example.Examples;
import landfall.app.folder.DataFolder;
import landfall.app.grind.GrindPaper;
import landfall.cards.answer.Document;
import landfall.cards.answer.TextAnswer;
import landfall.cards.ask.GrindAsk;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;

/** {@code landfall demo}: an invented shop's worn tap, from its card to a set-up sheet. */
final class DemoCommand implements Command {
    static final String TAP = "tap.json";
    static final String FIXTURE = "fixture.json";
    static final String TEXT = "setup.txt";
    static final String PDF = "setup.pdf";

    @Override
    public String noun() {
        return "demo";
    }

    @Override
    public String summary() {
        return Words.of("noun.demo");
    }

    @Override
    public String help() {
        StringBuilder text = new StringBuilder("landfall demo - " + summary() + "\n\n");
        HelpPage.row(text, "--into FOLDER", Words.of("command.demo.into"));
        HelpPage.examples(text, noun());
        return text.toString();
    }

    @Override
    public Map<String, Options> written() {
        return Map.of("", options());
    }

    private Options options() {
        return new Options(noun()).text("into");
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
        Path folder = of.value()
                .text("into")
                .map(Path::of)
                .orElseGet(() -> DataFolder.ofThisUser().path().resolve("demo"))
                .toAbsolutePath()
                .normalize();
        try {
            show(write(folder), folder, terminal);
            return Exit.DONE;
        } catch (IOException e) {
            return Refusals.say(
                    List.of(new Finding(
                            "--into",
                            folder.toString(),
                            "cannot be written to",
                            "give a folder that can: landfall demo --into FOLDER")),
                    json,
                    terminal);
        }
    }

    /** Cards, text and PDF into the folder; the text is also what is shown. */
    private static String write(Path folder) throws IOException {
        Examples.Example example = Examples.all().get(0);
        Map<String, String> typed = example.typed();
        Document document = new GrindAsk().answer(typed).orThrow();
        String text = TextAnswer.write(document);
        byte[] pdf = GrindPaper.pdf(typed, "a4").orThrow();
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(TAP), Examples.text(example.tapFile()));
        Files.writeString(folder.resolve(FIXTURE), Examples.text(example.fixtureFile()));
        Files.write(folder.resolve(TEXT), text.getBytes(StandardCharsets.UTF_8));
        Files.write(folder.resolve(PDF), pdf);
        return text;
    }

    private static void show(String text, Path folder, Terminal terminal) {
        var out = terminal.out();
        out.println(Words.of("command.demo.story"));
        out.println();
        out.println(text.stripTrailing());
        out.println();
        out.println(Words.of("command.demo.look"));
        out.println();
        out.println(Words.of("command.demo.files", folder));
        for (String file : List.of(TAP, FIXTURE, TEXT, PDF)) {
            out.println("  " + folder.resolve(file));
        }
        out.println();
        out.println(Words.of("command.demo.next", folder.resolve(TAP), folder.resolve(FIXTURE)));
    }
}
